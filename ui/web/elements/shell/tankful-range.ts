/** "Try a range": one input at several values, and the main figures of a run at each. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { pathSteps, type RangeAnswer, type Scenario, valueAt } from '../../../../sim/index.ts';
import {
  answerViewWords,
  chartWords,
  errorText,
  type FigureKey,
  figureWords,
  fromSim,
  inputInUnits,
  sayIn,
  shellWords,
  type Units,
} from '../../../words/index.ts';
import { tell } from '../../app/events.ts';
import { figureText } from '../../app/figure-text.ts';
import { rangeSheet } from '../../app/files/curve-sheet.ts';
import { fileStem } from '../../app/files/file-names.ts';
import { inputLabel } from '../../app/input-label.ts';
import type { RangeState } from '../../app/page-state.ts';
import { rangeCurve, rangeTitle } from '../../app/range-curve.ts';
import '../answers/tankful-curve.ts';
import { saveButton } from '../files/file-buttons.ts';
import type { Savable } from '../files/savable.ts';
import { LightElement } from '../light-element.ts';
import { workingView } from './working-view.ts';

@customElement('tankful-range')
export class TankfulRange extends LightElement {
  @property({ attribute: false }) range!: RangeState;
  /** The design as it stands. */
  @property({ attribute: false }) scenario!: Scenario;
  /** The design has changed since. */
  @property({ attribute: false }) outdated = false;
  @property({ attribute: false }) units: Units = 'US';
  @property({ attribute: false }) now_ms = 0;

  /** Which figure the curve is of; null for the first. */
  @state() private figure: string | null = null;

  override render(): TemplateResult {
    const { spec, at, answer, problem, of } = this.range;
    const label = inputLabel(spec.path, of ?? this.scenario);
    return html`<section class="panel range-result" aria-labelledby="range-title">
      <h2 id="range-title">${shellWords.rangeTitle(label)}</h2>
      ${this.outdated ? html`<p class="help">${shellWords.rangeOutdated}</p>` : nothing}
      ${
        at === 'working'
          ? html`<p>
            ${workingView(this.range, this.now_ms)}
            <button type="button" class="quiet" @click=${() => tell(this, 'stop-asking', { key: 'range' })}>
              ${shellWords.stopAnswer}
            </button>
          </p>`
          : nothing
      }
      ${at === 'stopped' ? html`<p class="help">${shellWords.stoppedAnswer}</p>` : nothing}
      ${at === 'failed' ? html`<p class="trouble" role="alert">${errorText(problem ?? '')}</p>` : nothing}
      ${
        answer
          ? html`${this.curve(answer, label)} ${this.table(answer, label)}
            ${saveButton('range', shellWords.rangeTitle(label))}`
          : nothing
      }
    </section>`;
  }

  private curve(answer: RangeAnswer, label: string): TemplateResult | typeof nothing {
    const { of } = this.range;
    const drawn = answer.figures.flatMap((key) => {
      const curve = of ? rangeCurve(answer, key, of, sayIn(this.units)) : null;
      return curve ? [{ key, curve }] : [];
    });
    const shown = drawn.find(({ key }) => key === this.figure) ?? drawn[0];
    if (!shown) return nothing;
    return html`<label class="curve-choice">
        <span>${answerViewWords.curveOf}</span>
        <select @change=${this.onFigure}>
          ${drawn.map(
            ({ key }) =>
              html`<option value=${key} ?selected=${key === shown.key}>
                ${figureWords[key as FigureKey].label}
              </option>`,
          )}
        </select>
      </label>
      <tankful-curve
        .curve=${shown.curve}
        .title=${rangeTitle(shown.key, label)}
        .name=${label}
      ></tankful-curve>`;
  }

  /** All of its figures; each curve is saved by itself. */
  savable(): Savable {
    const { answer, spec } = this.range;
    const title = shellWords.rangeTitle(fromSim(answer?.axes[0]?.label ?? spec.path));
    const sheet = () => (answer ? rangeSheet(answer, this.units) : { head: [], rows: [] });
    return {
      stem: fileStem(title),
      title,
      about: '',
      sheets: [{ words: chartWords.csv, sheet }],
      picture: null,
    };
  }

  private onFigure(event: Event): void {
    this.figure = (event.target as HTMLSelectElement).value;
  }

  private table({ axes: [axis], figures, points }: RangeAnswer, label: string): TemplateResult {
    const present = this.range.of && valueAt(this.range.of, pathSteps(axis.path));
    const heads = figures.map((key) => figureWords[key as FigureKey].label);
    return html`<div class="scrolls" tabindex="0" role="group" aria-labelledby="range-title">
      <table>
        <thead>
          <tr>
            <th scope="col">${label}</th>
            ${heads.map((head) => html`<th scope="col">${head}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${points.map(
            (point) =>
              html`<tr>
                <th scope="row">
                  ${inputInUnits(axis.path, String(point.values[0]), this.units)}
                  ${point.values[0] === present ? shellWords.rangePresent : nothing}
                </th>
                ${
                  point.figures
                    ? figures.map((key) => html`<td>${this.cell(key, point.figures?.[key] ?? null)}</td>`)
                    : html`<td class="words" colspan=${figures.length || 1}>${point.problem === null ? shellWords.rangeUndone : errorText(point.problem)}</td>`
                }
              </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }

  private cell(key: string, value: number | null): string {
    if (value === null) return figureWords[key as FigureKey].none;
    return figureText(key, value, this.units);
  }
}
