/** A caution as it stands beside its figure: how serious, what, what to do. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Caution } from '../../../sim/index.ts';
import {
  cautionWords,
  isCaution,
  licensedWords,
  severityWords,
  speakIn,
  type UnitSystem,
} from '../../words/index.ts';

export function cautionNote(caution: Caution, units: UnitSystem): TemplateResult {
  // A caution without words is still better shown by its bare name than dropped.
  if (!isCaution(caution.key)) {
    return html`<div class="caution ${caution.severity}">
      <strong>${severityWords[caution.severity]}:</strong> ${caution.key} (${caution.part})
    </div>`;
  }
  const words = cautionWords[caution.key];
  const speak = speakIn(units);
  return html`<div class="caution ${caution.severity}">
    <strong>${severityWords[caution.severity]}: ${words.title}.</strong>
    ${words.says(caution.value ?? null, speak)} ${words.todo(speak)}
    ${'licensed' in words ? licensedWords : nothing}
  </div>`;
}
