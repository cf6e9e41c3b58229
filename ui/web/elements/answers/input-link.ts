/** An input by the name a person knows it by, and the way to its card. */
import { html, type TemplateResult } from 'lit';
import type { Scenario } from '../../../../sim/index.ts';
import { tell } from '../../app/events.ts';
import { inputLabel, partOf } from '../../app/input-label.ts';

export function inputLink(path: string, scenario: Scenario, from: EventTarget): TemplateResult {
  return html`<button
    type="button"
    class="quiet"
    @click=${() => tell(from, 'open-part', { path: partOf(path) })}
  >
    ${inputLabel(path, scenario)}
  </button>`;
}
