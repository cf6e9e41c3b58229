/** A piece of a line or an area of the charts, as a key: same class, same colour, dash and pattern. */
import { html, svg, type TemplateResult } from 'lit';

export function swatch(drawnAs: string): TemplateResult {
  const shape = drawnAs.startsWith('line')
    ? svg`<path class=${drawnAs} d="M0,6H22" />`
    : svg`<rect class=${drawnAs} x="0.5" y="0.5" width="21" height="11" />`;
  return html`<svg class="swatch" width="22" height="12" aria-hidden="true">${shape}</svg>`;
}
