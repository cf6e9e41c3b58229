/** "Try a range": one input at several values, and the main figures of a run at each. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { pathSteps, type RangeAnswer, valueAt } from '../../../../sim/index.ts';
import { type FigureKey, figureWords, shellWords, type Units } from '../../../words/index.ts';
import { tell } from '../../app/events.ts';
import { figureText } from '../../app/figure-text.ts';
import type { RangeState } from '../../app/page-state.ts';
import { LightElement } from '../light-element.ts';
import { workingView } from './answer-lines.ts';

@customElement('tankful-range')
export class TankfulRange extends LightElement {
  @property({ attribute: false }) range!: RangeState;
  /** The design has changed since. */
  @property({ attribute: false }) outdated = false;
  @property({ attribute: false }) units: Units = 'US';
  @property({ attribute: false }) now_ms = 0;

  override render(): TemplateResult {
    const { spec, at, answer, problem } = this.range;
    const label = answer?.axes[0]?.label ?? spec.path;
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
      ${at === 'failed' ? html`<p class="trouble" role="alert">${problem}</p>` : nothing}
      ${answer ? this.table(answer, label) : nothing}
    </section>`;
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
                  ${String(point.values[0])} ${point.values[0] === present ? shellWords.rangePresent : nothing}
                </th>
                ${
                  point.figures
                    ? figures.map((key) => html`<td>${this.cell(key, point.figures?.[key] ?? null)}</td>`)
                    : html`<td colspan=${figures.length || 1}>${point.problem ?? shellWords.rangeUndone}</td>`
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
