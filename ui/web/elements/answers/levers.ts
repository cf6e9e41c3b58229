/** What would change an answer most: each input at both ends of what is believed, a way to its card. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Answer, FilledDefault, Scenario } from '../../../../sim/index.ts';
import { type AnswerWords, answerViewWords, fromSim, inputInUnits, type Say } from '../../../words/index.ts';
import { titledTable } from './answer-table.ts';
import { inputLink } from './input-link.ts';

const mostLevers = 4;

export interface LeversOf {
  answer: Answer;
  words: AnswerWords;
  scenario: Scenario;
  filled: readonly FilledDefault[];
  say: Say;
  from: EventTarget;
}

export function leversView({
  answer,
  words,
  scenario,
  filled,
  say,
  from,
}: LeversOf): TemplateResult | typeof nothing {
  const fact = answer.facts[answer.headline];
  const top = answer.levers.slice(0, mostLevers);
  if (!fact || top.length === 0) return nothing;
  const title = answerViewWords.levers(words.headline[answer.headline] ?? answer.headline);
  const end = (path: string, { text, value }: { text: string; value: number }) =>
    html`<td>${answerViewWords.at(say.value({ ...fact, value }), inputInUnits(path, text, say.units))}</td>`;
  const measure = filled.find(({ path }) => path === top[0].path)?.measure;
  return html`${titledTable(
    title,
    html`<table class="levers" aria-label=${title}>
        <thead>
          <tr>
            <th scope="col">${answerViewWords.input}</th>
            ${answerViewWords.ends.map((head) => html`<th scope="col">${head}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${top.map(
            ({ path, low, high }) =>
              html`<tr>
                <th scope="row">
                  ${inputLink(path, scenario, from)}
                </th>
                ${end(path, low)} ${end(path, high)}
              </tr>`,
          )}
        </tbody>
      </table>`,
  )}
    ${measure ? html`<p>${answerViewWords.measureFirst} ${fromSim(measure)}</p>` : nothing}`;
}
