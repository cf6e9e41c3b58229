/** How far something under way is. */
import { html, nothing, type TemplateResult } from 'lit';
import { shellWords } from '../../../words/index.ts';
import type { AnswerState } from '../../app/page-state.ts';

/** How far something is, and about how long it may still take. */
export function workingView(
  { progress: [done, of] = [0, 0], since_ms = 0 }: Pick<AnswerState, 'progress' | 'since_ms'>,
  now_ms: number,
): TemplateResult {
  const seconds = done > 0 ? Math.ceil((((now_ms - since_ms) / done) * (of - done)) / 1000) : null;
  return html`<span class="working"
    ><progress max=${of || 1} .value=${done} aria-label=${shellWords.working}></progress>
    ${of > 0 ? shellWords.worked(done, of) : shellWords.working}${
      seconds === null ? nothing : `, ${shellWords.left(seconds)}`
    }</span
  >`;
}
