/** Why something could not be run, each in the house's form, announced when it appears. */
import { html, type TemplateResult } from 'lit';
import { type Trouble, troubleLine } from '../../words/index.ts';

/** The container always stands: a region that arrives together with its words is often not announced. */
export function troubleList(troubles: Trouble[]): TemplateResult {
  return html`<div class="troubles" role="alert">
    ${
      troubles.length > 0
        ? html`<ul>
          ${troubles.map((trouble) => html`<li>${troubleLine(trouble)}</li>`)}
        </ul>`
        : ''
    }
  </div>`;
}
