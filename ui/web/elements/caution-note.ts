/** A caution as it stands beside its figure: how serious, what, what to do. Dangers stand open; the rest by name. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Caution } from '../../../sim/index.ts';
import {
  cautionWords,
  isCaution,
  licensedWords,
  severityWords,
  speakIn,
  titleOf,
  type Units,
} from '../../words/index.ts';
import { cautionId } from './danger-list.ts';

/** `place` keeps apart the ids of a caution that stands on the page more than once; `parts` are those it is about, if several. */
export function cautionNote(
  caution: Caution,
  units: Units,
  { place = '', parts = [] }: { place?: string; parts?: readonly string[] } = {},
): TemplateResult {
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
    <summary>${severityWords[caution.severity]}: ${titleOf(words.title, parts)}</summary>
    ${words.says(caution.value ?? null, speak)} ${words.todo(speak)}
    ${'licensed' in words ? licensedWords : nothing}
  </details>`;
}
