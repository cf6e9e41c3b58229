/** Where the heat goes: a drawing of its flows over the span shown in Days, or the whole run, and the same as a table. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { bothEnergies, chartWords, heatWords, type Units } from '../../words/index.ts';
import type { DaysShown } from '../app/days-data.ts';
import { fileStem } from '../app/files/file-names.ts';
import { heatSheet } from '../app/files/heat-sheet.ts';
import { type HeatBalance, type HeatFlow, type HeatPlace, heatBalance } from '../app/heat-flows.ts';
import { momentTitle } from '../app/moments.ts';
import { flowsChart } from '../charts/flows-chart.ts';
import { drawn } from './drawn.ts';
import { saveButton } from './files/file-buttons.ts';
import { pictureFrom, type Savable, saved_px } from './files/savable.ts';
import { heatTable, leastShare } from './heat-table.ts';
import { LightElement } from './light-element.ts';

/** Columns from left to right, and from the top down in an order in which flows cross little. */
const columns: HeatPlace[][] = [
  ['fuel', 'held', 'make_up', 'around', 'crept', 'sunshine'],
  ['engine', 'collector'],
  ['store', 'heater'],
  ['water'],
  ['radiator', 'engine_air', 'taps', 'pipe', 'kept', 'walls', 'vapour', 'creeping', 'collector_air'],
];
const ranks: HeatPlace[] = [
  'radiator',
  'engine_air',
  'fuel',
  'engine',
  'held',
  'make_up',
  'around',
  'store',
  'heater',
  'water',
  'taps',
  'pipe',
  'kept',
  'walls',
  'vapour',
  'creeping',
  'crept',
  'sunshine',
  'collector',
  'collector_air',
];
const places = columns.flatMap((keys, column) =>
  keys.map((key) => ({ key, column, rank: ranks.indexOf(key), name: heatWords.short[key] })),
);
/** Names and both units of the last column. */
const right_px = 146;
const narrow_px = 560;

@customElement('tankful-heat')
export class TankfulHeat extends LightElement {
  @property({ attribute: false }) shown!: DaysShown;
  @property({ attribute: false }) units: Units = 'US';
  /** The span shown in Days; null for the whole run. */
  @property({ attribute: false }) window_s: readonly [from_s: number, to_s: number] | null = null;

  @query('.flows') private box!: HTMLElement;
  @state() private width = 0;
  @state() private whole = false;
  private readonly size = new ResizeObserver(() => this.measure());

  override disconnectedCallback(): void {
    this.size.disconnect();
    super.disconnectedCallback();
  }

  protected override firstUpdated(): void {
    this.size.observe(this.box);
    this.measure();
  }

  override render(): TemplateResult {
    const { balance, from_s, to_s, end_s } = this.balance();
    const zoomed = this.window_s !== null && this.window_s[1] - this.window_s[0] < end_s;
    return html`
      <section class="panel heat-flows" aria-labelledby="heat-title">
        <h2 id="heat-title">${heatWords.title}</h2>
        ${zoomed ? this.spans() : nothing}
        <p class="days-window">${momentTitle(this.shown, from_s)} – ${momentTitle(this.shown, to_s)}</p>
        <div class="flows">${this.width > 0 ? this.drawing(balance) : nothing}</div>
        ${balance.spent_J > 0 ? saveButton('flows', heatWords.title) : nothing}
        ${balance.spent_J > 0 ? heatTable(balance, this.units) : html`<p>${heatWords.nothing}</p>`}
      </section>
    `;
  }

  private balance() {
    const { result } = this.shown;
    const end_s = result.days * 86_400;
    const [from_s, to_s] = (!this.whole && this.window_s) || [0, end_s];
    return { balance: heatBalance(result.series, { from_s, to_s }), from_s, to_s, end_s };
  }

  savable(): Savable {
    const { balance, from_s, to_s } = this.balance();
    return {
      stem: fileStem(this.shown.result.name, heatWords.title),
      title: heatWords.title,
      about: `${this.shown.result.name}, ${momentTitle(this.shown, from_s)} – ${momentTitle(this.shown, to_s)}`,
      sheets: [{ words: chartWords.csv, sheet: () => heatSheet(balance, this.units, leastShare) }],
      picture: () => pictureFrom(this.drawing(balance, saved_px), 'flows'),
    };
  }

  private spans(): TemplateResult {
    return html`<fieldset class="heat-span">
      <legend class="unseen">${heatWords.span}</legend>
      ${[false, true].map(
        (whole) =>
          html`<label>
            <input
              type="radio"
              name="heat-span"
              .checked=${this.whole === whole}
              @change=${() => {
                this.whole = whole;
              }}
            />
            <span>${whole ? heatWords.whole : heatWords.window}</span>
          </label>`,
      )}
    </fieldset>`;
  }

  private drawing({ flows, spent_J }: HeatBalance, width = this.width): TemplateResult {
    const seen = flows.filter(({ energy_J }) => energy_J >= leastShare * spent_J);
    const words = ({ from, to, energy_J }: HeatFlow) =>
      `${heatWords.short[from]} – ${heatWords.short[to]} ${bothEnergies(energy_J, this.units)}`;
    const { drawing, height } = flowsChart(
      places,
      seen.map((flow) => ({
        from: flow.from,
        to: flow.to,
        amount: flow.energy_J,
        kind: kindOf(flow),
        words: words(flow),
      })),
      {
        width,
        right: right_px,
        thick: width < narrow_px ? 150 : 220,
        amountWords: (energy_J) => bothEnergies(energy_J, this.units),
      },
    );
    return html`<svg
      width=${width}
      height=${height}
      role="img"
      aria-label=${heatWords.sentence(seen.map(words).join('; '))}
      ${drawn(drawing)}
    ></svg>`;
  }

  private measure(): void {
    this.width = Math.floor(this.box.clientWidth);
  }
}

/** Fuel's, sun's and the household's heat keep the looks they have in Days; what is lost or held has the losses'. */
function kindOf({ from, to, side }: HeatFlow): string {
  if (from === 'fuel' || from === 'engine') return side === 'out' ? 'losses' : 'engine';
  if (from === 'sunshine' || from === 'collector') return side === 'out' ? 'losses' : 'sun';
  return to === 'water' || to === 'taps' ? 'household' : 'losses';
}
