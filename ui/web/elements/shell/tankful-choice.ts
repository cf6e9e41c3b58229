/** What to run: which design, from what day, for how many days; and the units to show it in. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { shellWords, type Units } from '../../../words/index.ts';
import type { Page } from '../../app/page.ts';
import type { Design } from '../../app/page-state.ts';
import { daysRange, type Span, spanEdits, spanOf } from '../../app/span.ts';
import { LightElement } from '../light-element.ts';

@customElement('tankful-choice')
export class TankfulChoice extends LightElement {
  @property({ attribute: false }) page!: Page;
  @property({ attribute: false }) design!: Design;
  @property({ attribute: false }) units: Units = 'US';

  override render(): TemplateResult {
    const { design, units } = this;
    const { catalogue } = this.page;
    const span = spanOf(design.scenario);
    const known = catalogue.find(({ id }) => id === design.id);
    return html`
      <form class="choice" @submit=${(event: Event) => event.preventDefault()}>
        <label class="wide">
          <span>${shellWords.design}</span>
          <select name="scenario" @change=${this.onScenario}>
            ${
              known
                ? nothing
                : html`<option value=${design.id} selected>${design.name}, ${shellWords.own}</option>`
            }
            ${catalogue.map(
              ({ id, name }) => html`<option value=${id} ?selected=${id === design.id}>${name}</option>`,
            )}
          </select>
        </label>
        <label>
          <span>${shellWords.from}</span>
          <input name="from" type="date" required .value=${span.from} @change=${this.onFrom} />
        </label>
        <label>
          <span>${shellWords.days}</span>
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
        <label>
          <span>${shellWords.units}</span>
          <select name="units" @change=${this.onUnits}>
            ${(['US', 'SI', 'mixed'] as const).map(
              (each) =>
                html`<option value=${each} .selected=${live(each === units)}>
                  ${shellWords.unitNames[each]}
                </option>`,
            )}
          </select>
        </label>
      </form>
    `;
  }

  private onScenario(event: Event): void {
    void this.page.chooseScenario((event.target as HTMLSelectElement).value);
  }

  private onFrom(event: Event): void {
    this.span({ from: (event.target as HTMLInputElement).value }, shellWords.from);
  }

  private onDays(event: Event): void {
    this.span({ days: (event.target as HTMLInputElement).valueAsNumber }, shellWords.days);
  }

  private onUnits(event: Event): void {
    this.page.chooseUnits((event.target as HTMLSelectElement).value as Units);
  }

  private span(span: Partial<Span>, gesture: string): void {
    this.page.commit(spanEdits(span), gesture);
  }
}
