/** The answers in a sentence each. */
import { html, nothing, type TemplateResult } from 'lit';
import { answerWords, sayIn, shellWords } from '../../../words/index.ts';
import { answerKeys } from '../../app/asking.ts';
import { isOutdated, type PageState } from '../../app/page-state.ts';

export function answerLines(state: PageState): TemplateResult {
  const say = sayIn(state.units);
  return html`<section class="panel answers" aria-labelledby="answers-title">
    <h2 id="answers-title">${shellWords.rooms.answers}</h2>
    <ul class="answer-lines">
      ${answerKeys.map((key) => {
        const own = state.answers[key];
        const { answer } = own;
        if (!answer) return nothing;
        const words = answerWords[key];
        return html`<li>
          <strong>${words.title}.</strong>
          ${isOutdated(own, state) ? html`<em>${shellWords.outdated}</em> ` : nothing}
          ${words.sentence(answer, say)}
        </li>`;
      })}
    </ul>
  </section>`;
}
