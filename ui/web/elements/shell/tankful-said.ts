/** An answer's sentence, for answers that did not come with the page. */
import { customElement, property } from 'lit/decorators.js';
import type { Answer } from '../../../../sim/index.ts';
import { answerWords, sayIn, type Units } from '../../../words/index.ts';
import { LightElement } from '../light-element.ts';

@customElement('tankful-said')
export class TankfulSaid extends LightElement {
  @property({ attribute: false }) answer!: Answer;
  @property({ attribute: false }) units: Units = 'US';

  override render(): string {
    return answerWords[this.answer.key].sentence(this.answer, sayIn(this.units));
  }
}
