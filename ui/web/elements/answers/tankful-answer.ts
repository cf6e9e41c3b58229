/** What stands behind an answer's sentence: reason, curve, tables, what would change it, what to mind. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Answer, FilledDefault, Scenario } from '../../../../sim/index.ts';
import {
  type AnswerWords,
  answerCaution,
  answerViewWords,
  answerWords,
  type Say,
  sayIn,
  severityWords,
  takenWords,
  type Units,
} from '../../../words/index.ts';
import { answerCurve } from '../../app/answer-curve.ts';
import { LightElement } from '../light-element.ts';
import { answerTable, columnName } from './answer-table.ts';
import { inputLink } from './input-link.ts';
import { leversView } from './levers.ts';
import './tankful-curve.ts';

@customElement('tankful-answer')
export class TankfulAnswer extends LightElement {
  @property({ attribute: false }) answer!: Answer;
  /** What it is the answer for. */
  @property({ attribute: false }) scenario!: Scenario;
  @property({ attribute: false }) filled: readonly FilledDefault[] = [];
  @property({ attribute: false }) units: Units = 'US';
  /** Nothing is drawn while it is folded away. */
  @property({ attribute: false }) open = false;

  override render(): TemplateResult | typeof nothing {
    if (!this.open) return nothing;
    const { answer, scenario, filled } = this;
    const words = answerWords[answer.key];
    const say = sayIn(this.units);
    const more = words.more(answer, say);
    return html`<div class="answer-view">
      <div class="answer-told">
        <p>${words.reason(answer, say)}</p>
        ${more.length > 0 ? html`<ul>${more.map((sentence) => html`<li>${sentence}</li>`)}</ul>` : nothing}
        ${this.minds(words, say)}
      </div>
      <div class="answer-curves">${this.curves(words, say)}</div>
      ${words.tables.map((table) =>
        answerTable(answer, table, say, (path) => inputLink(path, scenario, this)),
      )}
      ${leversView({ answer, words, scenario, filled, say, from: this })} ${this.taken()}
    </div>`;
  }

  private curves(words: AnswerWords, say: Say): TemplateResult[] {
    const { answer } = this;
    return words.curves.flatMap((own) => {
      const { key, title } = own;
      const curve = answer.curves[key];
      const shown = curve ? answerCurve(curve, own, say) : null;
      if (!shown) return [];
      return [
        html`<tankful-curve
          .curve=${shown}
          .title=${title(answer, say)}
          .name=${columnName(curve.x)}
        ></tankful-curve>`,
      ];
    });
  }

  private minds(words: AnswerWords, say: Say): TemplateResult | typeof nothing {
    const { answer } = this;
    if (answer.cautions.length === 0) return nothing;
    const told = answer.cautions.map((caution) => ({
      ...answerCaution(caution, answer, words, say),
      severity: caution.severity,
    }));
    return html`<div class="minds">
      <h3>${answerViewWords.mind}</h3>
      ${told.map(
        ({ severity, title, text }) =>
          html`<p class="caution ${severity}">
            <strong>${severityWords[severity]}:</strong> ${title === null ? '' : `${title}. `}${text}
          </p>`,
      )}
      ${told.find(({ licensed }) => licensed !== null)?.licensed ?? nothing}
    </div>`;
  }

  private taken(): TemplateResult | typeof nothing {
    const { taken = [] } = this.answer;
    if (taken.length === 0) return nothing;
    return html`<div class="taken">
      <h3>${answerViewWords.taken}</h3>
      <ul>
        ${taken.map((key) => html`<li>${takenWords[key] ?? key}</li>`)}
      </ul>
    </div>`;
  }
}
