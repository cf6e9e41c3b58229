/** A small measurement as a form: what was read, what it says, what it settles. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { RECIPES, type RecipeAnswer, type RecipeField, type RecipeKind } from '../../../../sim/index.ts';
import { measuredWords, recipeWords, sayIn, withDecimalSign, withPoint } from '../../../words/index.ts';
import { inputLabel } from '../../app/input-label.ts';
import { Measuring } from './measuring.ts';

@customElement('tankful-recipe')
export class TankfulRecipe extends Measuring<RecipeAnswer> {
  @property({ attribute: false }) kind: RecipeKind = 'bucket';
  /** By field, as it was typed. */
  @state() private typed: Record<string, string> = {};

  override render(): TemplateResult {
    const words = recipeWords[this.kind];
    const { found } = this.asked;
    return html`<details class="recipe">
      <summary>${words.title}</summary>
      <p class="help">${words.how}</p>
      <form @submit=${this.onAsk}>
        <div class="recipe-fields">${RECIPES[this.kind].map((field) => this.field(field))}</div>
        ${this.askRow(measuredWords.work)}
      </form>
      ${found ? this.told(found) : nothing}
    </details>`;
  }

  private field({ key, example }: RecipeField): TemplateResult {
    const shown = this.units === 'SI' ? example.SI : example.US;
    return html`<label>
      <span>${recipeWords[this.kind].fields[key] ?? key}</span>
      <input
        type="text"
        name=${key}
        required
        autocomplete="off"
        placeholder=${measuredWords.example_of(withDecimalSign(shown))}
        .value=${this.typed[key] ?? ''}
        @input=${(event: Event) => {
          this.typed = { ...this.typed, [key]: (event.target as HTMLInputElement).value };
        }}
      />
    </label>`;
  }

  private onAsk(event: Event): void {
    event.preventDefault();
    const typed = Object.entries(this.typed).map(([key, text]) => [key, withPoint(text)]);
    this.ask({ recipe: { kind: this.kind, typed: Object.fromEntries(typed) } });
  }

  private told({ facts, inputs, edits }: RecipeAnswer): TemplateResult {
    const say = sayIn(this.units);
    return html`<div class="measured-told" role="status">
      <dl class="recipe-facts">
        ${Object.entries(facts).map(
          ([key, fact]) =>
            html`<dt>${measuredWords.facts[key] ?? key}</dt>
              <dd>${say.banded(fact)}</dd>`,
        )}
        ${inputs.map(
          ({ path, value }) =>
            html`<dt>${measuredWords.settles} ${inputLabel(path, this.scenario)}</dt>
              <dd>${say.banded(value)}</dd>`,
        )}
      </dl>
      ${inputs.length === 0 ? html`<p>${measuredWords.nothingSettled}</p>` : this.putRow(edits)}
    </div>`;
  }
}
