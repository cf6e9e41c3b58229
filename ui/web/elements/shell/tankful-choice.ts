/** What to run: which design, from what day, for how many days; and the units to show it in. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { shelfTitles, shellWords, type Units } from '../../../words/index.ts';
import type { Page } from '../../app/page.ts';
import type { Design, PageState } from '../../app/page-state.ts';
import { daysRange, type Span, spanEdits, spanOf } from '../../app/span.ts';
import { eitherName } from '../either-name.ts';
import { filesTools } from '../files/file-buttons.ts';
import { LightElement } from '../light-element.ts';

@customElement('tankful-choice')
export class TankfulChoice extends LightElement {
  @property({ attribute: false }) page!: Page;
  @property({ attribute: false }) design!: Design;
  @property({ attribute: false }) units: Units = 'US';
  @property({ attribute: false }) kept: PageState['kept'] = null;
  @property({ attribute: false }) readOnly = false;

  override render(): TemplateResult {
    const { design, units, kept, readOnly } = this;
    const span = spanOf(design.scenario);
    return html`
      <form class="choice" @submit=${(event: Event) => event.preventDefault()}>
        <label class="wide">
          <span>${shellWords.design}</span>
          <select name="scenario" @change=${this.onScenario}>
            ${this.designs()}
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
      <div class="bar">
        <tankful-kept .kept=${kept} .design=${design} .readOnly=${readOnly}></tankful-kept>
        ${filesTools()}
        <button
          type="button"
          class="plain open-sheet"
          aria-label=${shellWords.buildSheet}
          @click=${() => this.page.showSheet(true)}
        >
          ${eitherName(shellWords.buildSheet, shellWords.shortSheet)}
        </button>
      </div>
    `;
  }

  /** Own designs, and the examples that new ones are made from. */
  private designs(): TemplateResult {
    const { design, kept } = this;
    const here = kept?.id ?? design.id;
    const option = (id: string, name: string) =>
      html`<option value=${id} .selected=${live(id === here)}>${name}</option>`;
    const shelf = kept?.shelf.filter(({ removed }) => !removed) ?? [];
    return html`${
      shelf.length === 0
        ? nothing
        : html`<optgroup label=${shelfTitles.shelf}>${shelf.map(({ id, name }) => option(id, name))}</optgroup>`
    }
      <optgroup label=${shelfTitles.examples}>
        ${this.page.catalogue.map(({ id, name }) => option(id, name))}
      </optgroup>`;
  }

  private onScenario(event: Event): void {
    const id = (event.target as HTMLSelectElement).value;
    if (this.kept?.shelf.some((item) => item.id === id)) this.page.keep({ verb: 'open', id });
    else void this.page.chooseScenario(id);
  }

  private onFrom(event: Event): void {
    this.span({ from: (event.target as HTMLInputElement).value }, shellWords.gestures.from);
  }

  private onDays(event: Event): void {
    this.span({ days: (event.target as HTMLInputElement).valueAsNumber }, shellWords.gestures.days);
  }

  private onUnits(event: Event): void {
    this.page.chooseUnits((event.target as HTMLSelectElement).value as Units);
  }

  private span(span: Partial<Span>, gesture: string): void {
    this.page.commit(spanEdits(span), gesture);
  }
}
