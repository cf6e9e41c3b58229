/** Dangers by name at the head of the results, each a way to the figure that it stands beside. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Caution } from '../../../sim/index.ts';
import { cautionTitles, isCaution, severityWords, titleOf, together } from '../../words/index.ts';

export function dangerList(cautions: Caution[]): TemplateResult | typeof nothing {
  const dangers = cautions.filter(({ severity }) => severity === 'danger');
  if (dangers.length === 0) return nothing;
  const links = together(dangers).map(({ caution, parts }, i) => {
    const words = titleOf(isCaution(caution.key) ? cautionTitles[caution.key] : caution.key, parts);
    return html`${i > 0 ? '; ' : ''}<a href="#${cautionId(caution)}">${words}</a>`;
  });
  return html`<p class="dangers"><strong>${severityWords.danger}:</strong> ${links}.</p>`;
}

/** Where on the page a caution stands beside its figure. */
export function cautionId({ key, part }: Caution): string {
  return `caution-${key}-${part}`.replaceAll(/[^\w-]/g, '-');
}
