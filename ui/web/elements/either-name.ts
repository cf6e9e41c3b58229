/** A name in two lengths, of which only the one that has room is there, to eyes and ears alike. */
import { html, type TemplateResult } from 'lit';

export function eitherName(long: string, short: string): TemplateResult {
  return html`<span class="if-wide">${long}</span><span class="if-narrow">${short}</span>`;
}
