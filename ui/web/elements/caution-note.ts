/** A caution as it stands beside its figure: how serious, what, what to do. Dangers stand open; the rest by name. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Caution } from '../../../sim/index.ts';
import {
  cautionWords,
  isCaution,
  licensedWords,
  severityWords,
  speakIn,
  type Units,
} from '../../words/index.ts';

/** `place` keeps apart the ids of a caution that stands on the page more than once. */
export function cautionNote(caution: Caution, units: Units, place = ''): TemplateResult {
  const id = place + cautionId(caution);
  // A caution without words is still better shown by its bare name than dropped.
  if (!isCaution(caution.key)) {
    return html`<div id=${id} class="caution ${caution.severity}">
      <strong>${severityWords[caution.severity]}:</strong> ${caution.key} (${caution.part})
    </div>`;
  }
  const words = cautionWords[caution.key];
  const speak = speakIn(units);
  return html`<details
    id=${id}
    class="caution ${caution.severity}"
    ?open=${caution.severity === 'danger'}
  >
    <summary>${severityWords[caution.severity]}: ${words.title}</summary>
    ${words.says(caution.value ?? null, speak)} ${words.todo(speak)}
    ${'licensed' in words ? licensedWords : nothing}
  </details>`;
}

/** Dangers by name at the head of the results, each a way to the figure that it stands beside. */
export function dangerList(cautions: Caution[]): TemplateResult | typeof nothing {
  const dangers = cautions.filter(({ severity }) => severity === 'danger');
  if (dangers.length === 0) return nothing;
  const links = dangers.map((caution, i) => {
    const words = isCaution(caution.key) ? cautionWords[caution.key].title : caution.key;
    return html`${i > 0 ? '; ' : ''}<a href="#${cautionId(caution)}">${words}</a>`;
  });
  return html`<p class="dangers"><strong>${severityWords.danger}:</strong> ${links}.</p>`;
}

function cautionId({ key, part }: Caution): string {
  return `caution-${key}-${part}`.replaceAll(/[^\w-]/g, '-');
}
