/** The Days panel: three charts over one time axis, one cursor through all of them, its values in words. */
import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Units } from '../../words/index.ts';
import { type DaysData, daysData } from '../app/days-data.ts';
import { firstSample, momentTitle, readout, sampleAfterKey, sampleAt } from '../app/moments.ts';
import type { Shown } from '../app/page-state.ts';
import { pageWords } from '../app/page-words.ts';
import { timeAt } from '../charts/frame.ts';
import { darkPalette, lightPalette } from '../charts/palette.ts';
import { daysTableView } from './days-table.ts';
import { LightElement } from './light-element.ts';
import { type DrawnPlots, drawPlots, plotsView } from './plots.ts';
import { readoutView } from './readout.ts';

/** A reader that is still moving the cursor is not spoken to. */
const announceAfter_ms = 500;

@customElement('tankful-days')
export class TankfulDays extends LightElement {
  @property({ attribute: false }) shown!: Shown;
  @property({ attribute: false }) units: Units = 'US';

  @query('.plots') private plots!: HTMLElement;
  @query('canvas') private canvas!: HTMLCanvasElement | null;

  @state() private sample = 0;
  @state() private width = 0;
  @state() private dark = false;
  @state() private tableOpen = false;
  @state() private announcement = '';

  private data: DaysData | null = null;
  private drawn: DrawnPlots | null = null;
  private painted: DrawnPlots | null = null;
  private announcing = 0;
  private readonly scheme = matchMedia('(prefers-color-scheme: dark)');
  private readonly size = new ResizeObserver(() => this.measure());

  override connectedCallback(): void {
    super.connectedCallback();
    this.scheme.addEventListener('change', this.onScheme);
    this.onScheme();
  }

  override disconnectedCallback(): void {
    this.scheme.removeEventListener('change', this.onScheme);
    this.size.disconnect();
    clearTimeout(this.announcing);
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('shown')) this.sample = firstSample(this.shown.result);
    if (changed.has('shown') || changed.has('units')) this.data = daysData(this.shown.result, this.units);
    const redraw = ['shown', 'units', 'width', 'dark'].some((name) => changed.has(name));
    if (redraw && this.data && this.width > 0) {
      this.drawn = drawPlots(this.data, this.shown, this.width, this.dark ? darkPalette : lightPalette);
    }
  }

  protected override firstUpdated(): void {
    this.size.observe(this.plots);
    this.measure();
  }

  protected override updated(): void {
    if (this.canvas && this.drawn && this.painted !== this.drawn) {
      const { width, height, rgba } = this.drawn.pixels;
      this.canvas.width = width;
      this.canvas.height = height;
      this.canvas.getContext('2d')?.putImageData(new ImageData(rgba, width, height), 0, 0);
      this.painted = this.drawn;
    }
  }

  override render(): TemplateResult {
    const { series } = this.shown.result;
    const moment = momentTitle(this.shown, this.sample);
    return html`
      <section class="panel days" aria-labelledby="days-title">
        <h2 id="days-title">${pageWords.daysPanel}</h2>
        <div>
        ${readoutView(moment, readout(this.shown, this.sample, this.units))}
        <div
          class="plots"
          @pointermove=${this.onPointer}
          @pointerdown=${this.onPointer}
        >
          ${this.drawn ? plotsView(this.drawn, series.time_s[this.sample]) : nothing}
          <div
            class="cursor"
            role="slider"
            tabindex="0"
            aria-label=${pageWords.cursorName}
            aria-describedby="cursor-help"
            aria-valuemin="0"
            aria-valuemax=${series.time_s.length - 1}
            aria-valuenow=${this.sample}
            aria-valuetext=${moment}
            @keydown=${this.onKey}
          ></div>
        </div>
        </div>
        <p id="cursor-help" class="help">${pageWords.cursorHelp}</p>
        <p class="unseen" aria-live="polite">${this.announcement}</p>
        <button
          type="button"
          class="table-switch"
          aria-expanded=${this.tableOpen}
          @click=${() => {
            this.tableOpen = !this.tableOpen;
          }}
        >
          ${this.tableOpen ? pageWords.hideTable : pageWords.showTable}
        </button>
        ${this.tableOpen ? daysTableView(this.shown, this.units) : nothing}
      </section>
    `;
  }

  private measure(): void {
    this.width = Math.floor(this.plots.clientWidth);
  }

  private readonly onScheme = (): void => {
    this.dark = this.scheme.matches;
  };

  private onPointer(event: PointerEvent): void {
    if (!this.drawn) return;
    const x = event.clientX - this.plots.getBoundingClientRect().left;
    const time_s = timeAt(x, this.drawn.frame, this.drawn.data.span);
    this.sample = sampleAt(this.shown.result.series, time_s);
  }

  private onKey(event: KeyboardEvent): void {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const next = sampleAfterKey(this.shown.result.series, this.sample, event.key);
    if (next === null) return;
    event.preventDefault();
    this.sample = next;
    clearTimeout(this.announcing);
    this.announcing = window.setTimeout(() => {
      const values = readout(this.shown, this.sample, this.units).flatMap(({ rows }) => rows);
      this.announcement = values.map(({ label, text }) => `${label} ${text}`).join(', ');
    }, announceAfter_ms);
  }
}
