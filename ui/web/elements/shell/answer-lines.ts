/** The answers in a sentence each, and those that are still to be asked. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Answer } from '../../../../sim/index.ts';
import { answerTitles, errorText, shellWords, type Units } from '../../../words/index.ts';
import { grouped } from '../../app/answer-groups.ts';
import { answerKeys, canAsk } from '../../app/asking.ts';
import type { SaidAnswer } from '../../app/built-in.ts';
import type { Page } from '../../app/page.ts';
import { type AnswerKey, type AnswerState, isOutdated, type PageState } from '../../app/page-state.ts';
import { load } from '../later.ts';
import { workingView } from './working-view.ts';

export function answerLines(state: PageState, page: Page): TemplateResult {
  const { answers, facts } = state;
  const known = answerKeys.filter((key) => answers[key].at !== 'none' || answers[key].answer);
  const open = answerKeys.filter((key) => !known.includes(key) && facts && canAsk(key, facts));
  return html`<section class="panel answers" aria-labelledby="answers-title">
    <h2 id="answers-title">${shellWords.rooms.answers}</h2>
    ${grouped(known).map(
      ({ heading, keys }) =>
        html`${heading === '' ? nothing : html`<h3 class="group-head">${heading}</h3>`}
          <ul class="answer-lines">
            ${keys.map((key) => html`<li>${line(key, state, page)}</li>`)}
          </ul>`,
    )}
    ${
      open.length > 0
        ? html`<p class="to-ask">
          <span>${shellWords.toAsk}</span>
          ${open.map(
            (key) =>
              html`<button type="button" class="quiet" @click=${() => page.ask(key)}>
                ${answerTitles[key]}
              </button>`,
          )}
        </p>`
        : nothing
    }
  </section>`;
}

function line(key: AnswerKey, state: PageState, page: Page): TemplateResult {
  const own = state.answers[key];
  const { at, answer, problem } = own;
  const title = answerTitles[key];
  const outdated = isOutdated(own, state);
  const button = (text: string, press: () => void) =>
    html`<button type="button" class="quiet" @click=${press}>
      ${text}<span class="unseen">: ${title}</span>
    </button>`;
  const said = html`<strong>${title}.</strong>
    ${outdated ? html`<em>${shellWords.outdated}</em> ` : nothing}
    ${answer ? sentence(answer, state.units) : nothing}`;
  return html`${answer ? folded(said, answer, own, state) : html`<p class="unanswered">${said}</p>`}
    ${at === 'stopped' ? html`<em>${shellWords.stoppedAnswer}</em>` : nothing}
    ${at === 'failed' ? html`<span class="trouble">${shellWords.failedAnswer} ${errorText(problem ?? '')}</span>` : nothing}
    ${
      at === 'working'
        ? html`${workingView(own, page.now())}${button(shellWords.stopAnswer, () => page.stopAsking(key))}`
        : answer && !outdated && at === 'done'
          ? nothing
          : button(answer ? shellWords.askAgain : shellWords.ask, () => page.ask(key))
    }`;
}

/** The sentence, which unfolds into what stands behind it. */
function folded(
  said: TemplateResult,
  answer: Answer,
  { of }: AnswerState,
  { design, units, shown }: PageState,
): TemplateResult {
  return html`<details @toggle=${onToggle}>
    <summary>${said}</summary>
    <tankful-answer
      .answer=${answer}
      .scenario=${of ?? design.scenario}
      .filled=${shown?.filled ?? []}
      .units=${units}
    ></tankful-answer>
  </details>`;
}

function onToggle(event: Event): void {
  const { open, lastElementChild } = event.currentTarget as HTMLDetailsElement;
  if (open) void load('tankful-answer');
  Object.assign(lastElementChild ?? {}, { open });
}

function sentence(answer: Answer | SaidAnswer, units: Units): TemplateResult | string {
  if ('said' in answer) return answer.said[units];
  void load('tankful-said');
  return html`<tankful-said .answer=${answer} .units=${units}></tankful-said>`;
}
