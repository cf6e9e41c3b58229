/** What to run: scenario, first day, number of days; and the units to show it in. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { Page } from '../app/page.ts';
import type { PageState } from '../app/page-state.ts';
import { pageWords } from '../app/page-words.ts';
import { daysRange, type Span, spanEdits, spanOf } from '../app/span.ts';
import { LightElement } from './light-element.ts';

@customElement('tankful-choice')
export class TankfulChoice extends LightElement {
  @property({ attribute: false }) page!: Page;
  @property({ attribute: false }) state!: PageState;

  // Fields are set only when the choice changes: a run that reports must not undo what is being typed.
  override render(): TemplateResult {
    const { design, progress } = this.state;
    const span = spanOf(design.scenario);
    const { catalogue } = this.page;
    const note = catalogue.find(({ id }) => id === design.id)?.note;
    return html`
      <form class="choice" @submit=${(event: Event) => event.preventDefault()}>
        <label class="wide">
          <span>${pageWords.scenario}</span>
          <select name="scenario" @change=${this.onScenario}>
            ${catalogue.map(
              ({ id, name }) => html`<option value=${id} ?selected=${id === design.id}>${name}</option>`,
            )}
          </select>
        </label>
        <label>
          <span>${pageWords.from}</span>
          <input name="from" type="date" required .value=${span.from} @change=${this.onFrom} />
        </label>
        <label>
          <span>${pageWords.days}</span>
          <input
            name="days"
            type="number"
            required
            min=${daysRange.least}
            max=${daysRange.most}
            step="1"
            .value=${String(span.days)}
            @change=${this.onDays}
          />
        </label>
        ${this.units()}
        <div class="running" aria-live="polite">
          ${
            progress === null
              ? nothing
              : html`<progress max="1" .value=${progress} aria-label=${pageWords.running}></progress>
                <button type="button" @click=${() => this.page.stop()}>${pageWords.stop}</button>`
          }
        </div>
      </form>
      ${note ? html`<p class="about">${note}</p>` : nothing}
    `;
  }

  private units(): TemplateResult {
    return html`<fieldset class="units">
      <legend>${pageWords.units}</legend>
      ${(['US', 'SI', 'mixed'] as const).map(
        (units) =>
          html`<label>
            <input
              type="radio"
              name="units"
              value=${units}
              .checked=${live(units === this.state.units)}
              @change=${() => this.page.chooseUnits(units)}
            />
            <span>${pageWords.unitNames[units]}</span>
          </label>`,
      )}
    </fieldset>`;
  }

  private onScenario(event: Event): void {
    this.page.chooseScenario((event.target as HTMLSelectElement).value);
  }

  private onFrom(event: Event): void {
    this.span({ from: (event.target as HTMLInputElement).value }, pageWords.from);
  }

  private onDays(event: Event): void {
    this.span({ days: (event.target as HTMLInputElement).valueAsNumber }, pageWords.days);
  }

  private span(span: Partial<Span>, gesture: string): void {
    this.page.commit(spanEdits(span), gesture);
  }
}
