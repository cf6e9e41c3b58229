/** Why the design cannot be run, each in the house's form, with the way to the card where it can be put right. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Problem, Scenario } from '../../../../sim/index.ts';
import { problemText, shellWords } from '../../../words/index.ts';
import { tell } from '../../app/events.ts';
import { inputLabel, partOf } from '../../app/input-label.ts';
import { LightElement } from '../light-element.ts';

/** The others are a press away: a design that was opened may have a hundred. */
const shownAtOnce = 4;

@customElement('tankful-troubles')
export class TankfulTroubles extends LightElement {
  @property({ attribute: false }) problems: readonly Problem[] = [];
  @property({ attribute: false }) scenario!: Scenario;

  override render(): TemplateResult {
    const { problems } = this;
    const others = problems.slice(shownAtOnce);
    return html`<ul>
        ${problems.slice(0, shownAtOnce).map((problem) => this.item(problem))}
      </ul>
      ${
        others.length > 0
          ? html`<details>
            <summary>${shellWords.moreTroubles(others.length)}</summary>
            <ul>
              ${others.map((problem) => this.item(problem))}
            </ul>
          </details>`
          : nothing
      }`;
  }

  private item(problem: Problem): TemplateResult {
    const { path } = problem;
    return html`<li>
      ${
        path === ''
          ? nothing
          : html`<button
            type="button"
            class="quiet"
            @click=${() => tell(this, 'open-part', { path: partOf(path) })}
          >
            ${inputLabel(path, this.scenario)}</button
          >`
      }
      ${problemText(problem)}
    </li>`;
  }
}
