/** The values at the cursor. */
import { html, type TemplateResult } from 'lit';
import type { ReadoutGroup } from '../app/moments.ts';
import { unbroken } from '../app/screen-units.ts';
import { swatch } from './swatch.ts';

export function readoutView(moment: string, groups: ReadoutGroup[]): TemplateResult {
  return html`<div class="readout">
    <p class="moment">${moment}</p>
    ${groups.map(
      ({ title, rows }) =>
        html`<dl aria-label=${title}>
          ${rows.map(
            (row) =>
              html`<div>
                <dt>${row.swatch ? swatch(row.swatch) : ''}${row.label}</dt>
                <dd>${unbroken(row.text)}</dd>
              </div>`,
          )}
        </dl>`,
    )}
  </div>`;
}
