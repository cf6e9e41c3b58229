/** The pinned design beside the one that stands in the page: changed inputs first, then what came of them. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { answerWords, sayIn, shellWords, type Units } from '../../../words/index.ts';
import { changedAnswers, changedFigures, changedInputs } from '../../app/compare.ts';
import type { Answers, Pinned, Shown } from '../../app/page-state.ts';
import { LightElement } from '../light-element.ts';

@customElement('tankful-compare')
export class TankfulCompare extends LightElement {
  @property({ attribute: false }) pinned!: Pinned;
  @property({ attribute: false }) shown!: Shown;
  @property({ attribute: false }) answers!: Answers;
  @property({ attribute: false }) units: Units = 'US';

  override render(): TemplateResult {
    const { pinned, shown } = this;
    const inputs = changedInputs(pinned.scenario, shown.scenario);
    return html`<section class="panel compare" aria-labelledby="compare-title">
      <h2 id="compare-title">${shellWords.compareTitle}</h2>
      <p class="help">${shellWords.compareIntro(pinned.name)}</p>
      ${
        inputs.length === 0
          ? html`<p>${shellWords.noChange}</p>`
          : html`${table(
              shellWords.changedInputs,
              [shellWords.input, shellWords.was, shellWords.is],
              inputs.map(({ label, was, is }) => [
                label,
                was ?? shellWords.nothing,
                is ?? shellWords.nothing,
              ]),
            )}
            ${this.answersTable()} ${this.figuresTable()}`
      }
    </section>`;
  }

  private answersTable(): TemplateResult | typeof nothing {
    const say = sayIn(this.units);
    const rows = changedAnswers(this.pinned.answers, this.answers, this.shown.scenario, say);
    if (rows.length === 0) return nothing;
    return table(
      shellWords.changedAnswers,
      [shellWords.answer, shellWords.was, shellWords.is, shellWords.by],
      rows.map(({ key, headline, was, is, by }) => [
        `${answerWords[key].title}: ${headline}`,
        was,
        is,
        by ?? '',
      ]),
    );
  }

  private figuresTable(): TemplateResult {
    const { pinned, shown } = this;
    const other =
      pinned.shown.result.days === shown.result.days &&
      pinned.shown.result.first_day === shown.result.first_day
        ? nothing
        : html`<p>${shellWords.otherDays}</p>`;
    const rows = changedFigures(pinned.shown.result.figures, shown.result.figures, this.units);
    if (rows.length === 0) return html`${other}<p>${shellWords.sameFigures}</p>`;
    return html`${other}${table(
      shellWords.changedFigures,
      [shellWords.figure, shellWords.was, shellWords.is, shellWords.by],
      rows.map(({ label, was, is, by }) => [label, was, is, by ?? '']),
    )}`;
  }
}

function table(title: string, heads: string[], rows: string[][]): TemplateResult {
  return html`<div class="scrolls" tabindex="0" role="group" aria-label=${title}>
    <table>
      <caption>
        ${title}
      </caption>
      <thead>
        <tr>
          ${heads.map((head) => html`<th scope="col">${head}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ([first, ...others]) =>
            html`<tr>
              <th scope="row">${first}</th>
              ${others.map((cell) => html`<td>${cell}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
