/**
 * Days: panels over one time axis, one cursor through all of them, its values in words, the whole run in a strip
 * beneath. Tells the page by events where cursor and window are, and when it needs samples closer than the run's.
 */
import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Series } from '../../../sim/index.ts';
import { daysWords, type Units } from '../../words/index.ts';
import { type DaysData, type DaysShown, daysData } from '../app/days-data.ts';
import { type PanelKey, readingsOf } from '../app/days-panels.ts';
import { tell } from '../app/events.ts';
import { firstMoment, momentAfterKey, momentTitle, nextTurn, readout } from '../app/moments.ts';
import type { Detail, Pinned } from '../app/page-state.ts';
import { closeInterval, holding, inView, isClose, moved, within, zoomed } from '../app/window.ts';
import { type TimeSpan, timeScale } from '../charts/frame.ts';
import { overview } from '../charts/overview.ts';
import { darkPalette, lightPalette } from '../charts/palette.ts';
import { sampleAt } from '../charts/thin.ts';
import { DaysGestures } from './days-gestures.ts';
import { overview_px, overviewView, type ToolsOf, toolsView, zoomStep } from './days-tools.ts';
import { load } from './later.ts';
import { LightElement } from './light-element.ts';
import { type DrawnPlots, drawPlots, plotsView } from './plots.ts';
import { readoutView } from './readout.ts';

/** A reader that is still moving the cursor is not spoken to. */
const announceAfter_ms = 400;
/** A window that is still moving is not sampled closely. */
const closeLookAfter_ms = 250;
/** The cursor stays behind while the window moves: to read it anew at each step would hold the window up. */
const cursorAfter_ms = 150;

@customElement('tankful-days')
export class TankfulDays extends LightElement {
  @property({ attribute: false }) shown!: DaysShown;
  @property({ attribute: false }) units: Units = 'US';
  /** Where the cursor stands and what is in view; null until somebody said so. */
  @property({ attribute: false }) cursor_s: number | null = null;
  @property({ attribute: false }) window_s: readonly [from_s: number, to_s: number] | null = null;
  @property({ attribute: false }) detail: Detail | null = null;
  @property({ attribute: false }) pinned: Pinned | null = null;

  @query('.plots') private plots!: HTMLElement;
  @query('canvas') private canvas!: HTMLCanvasElement | null;

  @state() private width = 0;
  @state() private dark = false;
  @state() private tableOpen = false;
  @state() private announcement = '';
  @state() private chosen: Partial<Record<PanelKey, string>> = {};

  data!: DaysData;
  private drawn: DrawnPlots | null = null;
  private strip = '';
  private painted: DrawnPlots['pixels'] = null;
  private announcing = 0;
  private looking = 0;
  private following = 0;
  private readonly scheme = matchMedia('(prefers-color-scheme: dark)');
  private readonly size = new ResizeObserver(() => this.measure());
  /** Panels out of sight. */
  private readonly unseen = new Set<PanelKey>();
  private readonly sight = new IntersectionObserver((seen) => {
    for (const { isIntersecting, target } of seen) {
      const key = (target as HTMLElement).dataset.panel as PanelKey;
      if (isIntersecting) this.unseen.delete(key);
      else this.unseen.add(key);
    }
  });
  private readonly gestures = new DaysGestures({
    frame: () => this.drawn?.frame ?? null,
    window: () => this.window,
    whole: () => this.whole,
    moveCursor: (time_s) => this.moveCursor(time_s),
    zoom: (window) => this.zoom(window),
  });

  override connectedCallback(): void {
    super.connectedCallback();
    this.scheme.addEventListener('change', this.onScheme);
    this.onScheme();
  }

  override disconnectedCallback(): void {
    this.scheme.removeEventListener('change', this.onScheme);
    this.size.disconnect();
    this.sight.disconnect();
    clearTimeout(this.announcing);
    clearTimeout(this.looking);
    clearTimeout(this.following);
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues): void {
    const any = (...names: string[]) => names.some((name) => changed.has(name));
    if (any('shown', 'units', 'detail', 'pinned', 'window_s')) {
      const closer = this.closer();
      if (any('shown', 'units', 'pinned') || this.data.series !== (closer ?? this.shown.result.series)) {
        const pinned = this.pinned?.shown.result;
        this.data = daysData(this.shown, this.units, { closer, ...(pinned ? { pinned } : {}) });
      }
    }
    if (any('shown', 'detail', 'window_s')) this.lookCloser();
    if (this.width === 0 || !any('shown', 'units', 'detail', 'pinned', 'window_s', 'width', 'dark', 'chosen'))
      return;
    this.drawn = drawPlots(this.data, {
      shown: this.shown,
      units: this.units,
      window: this.window,
      width: this.width,
      palette: this.dark ? darkPalette : lightPalette,
      chosen: this.chosen,
      pinned: this.pinned?.name ?? null,
      ...(this.drawn && this.shown.ofDays !== undefined && !any('units', 'window_s', 'width', 'dark')
        ? { unseen: { keys: this.unread, before: this.drawn } }
        : {}),
    });
    if (any('shown', 'width') && (this.shown.ofDays === undefined || this.strip === '')) {
      const { time_s } = this.shown.result.series;
      const [{ values }] = this.data.temperatures.lines;
      const { cold } = this.data.temperatures;
      this.strip = overview(
        { time_s, values, cold },
        { ...this.drawn.frame, top: 4, bottom: 4, height: overview_px },
        this.whole,
      );
    }
  }

  protected override firstUpdated(): void {
    this.size.observe(this.plots);
    this.measure();
    if (!this.cursor_s) this.moveCursor(firstMoment(this.shown.result));
  }

  protected override updated(): void {
    for (const stage of this.querySelectorAll('.plots .stage')) this.sight.observe(stage);
    const pixels = this.drawn?.pixels;
    if (!this.canvas || !pixels || this.painted === pixels) return;
    const { width, height, rgba } = pixels;
    this.canvas.width = width;
    this.canvas.height = height;
    this.canvas.getContext('2d')?.putImageData(new ImageData(rgba, width, height), 0, 0);
    this.painted = pixels;
  }

  override render(): TemplateResult {
    const { sample, data } = this;
    const at_s = data.series.time_s[sample];
    const cursor_px = this.drawn ? timeScale(this.drawn.frame, this.window)(at_s) : 0;
    const { gestures } = this;
    const tools: ToolsOf = {
      window: this.window,
      whole: this.whole,
      cursor_s: this.cursorTime,
      words: this.windowWords,
      zoom: (window) => this.zoom(window),
    };
    return html`
      <section class="panel days" aria-labelledby="days-title">
        ${toolsView(tools)}
        <div>
          ${readoutView(momentTitle(this.shown, at_s), readout(data, sample, this.units))}
          <div
            class="plots"
            @pointerdown=${gestures.down}
            @pointermove=${gestures.move}
            @pointerup=${gestures.up}
            @pointercancel=${gestures.up}
            @wheel=${gestures.wheel}
            @keydown=${this.onKey}
          >
            ${this.drawn ? plotsView(this.drawn, cursor_px) : nothing}
          </div>
          ${this.drawn ? overviewView(this.strip, this.drawn.frame, tools, gestures, this.onKey) : nothing}
        </div>
        ${this.closeness()}
        <p id="days-help" class="help">${daysWords.help}</p>
        <p class="unseen" aria-live="polite">${this.announcement}</p>
        <button type="button" class="table-switch" aria-expanded=${this.tableOpen} @click=${this.onTable}>
          ${this.tableOpen ? daysWords.hideTable : daysWords.showTable}
        </button>
        ${
          this.tableOpen
            ? html`<tankful-days-table
              .data=${data}
              .shown=${this.shown}
              .window=${this.window}
              .units=${this.units}
            ></tankful-days-table>`
            : nothing
        }
      </section>
    `;
  }

  /** What stands in the way of seeing a single shower. */
  private closeness(): TemplateResult | typeof nothing {
    if (!this.data.tap) return nothing;
    const waiting = this.wantsCloser && !this.closer() ? daysWords.closeLook : '';
    const words = isClose(this.window) ? waiting : daysWords.tapHint;
    return html`<p class="help" role="status">${words}</p>`;
  }

  /**
   * Panels that a moving hand can do without: those out of sight, and all but the first in sight until the estimate
   * reaches over all days, which it does as soon as the hand rests.
   */
  private get unread(): ReadonlySet<PanelKey> {
    const { result, ofDays } = this.shown;
    if (result.days === ofDays) return this.unseen;
    const keys = Object.keys(daysWords.panels) as PanelKey[];
    const followed = keys.find((key) => this.drawn?.panels[key] && !this.unseen.has(key));
    return new Set(keys.filter((key) => key !== followed));
  }

  private get whole(): TimeSpan {
    const { result, ofDays } = this.shown;
    return { from_s: 0, to_s: (ofDays ?? result.days) * 86_400 };
  }

  get window(): TimeSpan {
    const [from_s, to_s] = this.window_s ?? [0, Number.POSITIVE_INFINITY];
    return within({ from_s, to_s }, this.whole);
  }

  private get windowWords(): string {
    const { from_s, to_s } = this.window;
    return `${momentTitle(this.shown, from_s)} – ${momentTitle(this.shown, to_s)}`;
  }

  private get cursorTime(): number {
    return this.cursor_s ?? firstMoment(this.shown.result);
  }

  private get sample(): number {
    return sampleAt(this.data.series.time_s, this.cursorTime);
  }

  /** Whether the run's own samples are too far apart for so short a window. */
  private get wantsCloser(): boolean {
    return isClose(this.window) && this.shown.result.series.interval_s > closeInterval(this.window);
  }

  /** Closer samples of what is in view, if there are any. */
  private closer(): Series | null {
    const { detail, shown, window } = this;
    if (!detail || detail.of !== shown.scenario || !this.wantsCloser) return null;
    const { time_s } = detail.series;
    const end_s = time_s[time_s.length - 1] + detail.series.interval_s;
    return time_s[0] <= window.from_s && end_s >= window.to_s ? detail.series : null;
  }

  /** Asks for closer samples once the window rests, with room to move it. */
  private lookCloser(): void {
    clearTimeout(this.looking);
    if (!this.wantsCloser || this.closer() || this.shown.ofDays !== undefined) return;
    this.looking = window.setTimeout(() => {
      const { from_s, to_s } = this.window;
      const room_s = (to_s - from_s) / 2;
      tell(this, 'need-detail', {
        from_s: Math.max(0, from_s - room_s),
        to_s: Math.min(this.whole.to_s, to_s + room_s),
        interval_s: closeInterval(this.window),
      });
    }, closeLookAfter_ms);
  }

  private moveCursor(time_s: number): void {
    this.cursor_s = time_s;
    tell(this, 'move-cursor', { time_s });
  }

  private zoom({ from_s, to_s }: TimeSpan): void {
    this.window_s = [from_s, to_s];
    tell(this, 'zoom', { window_s: this.window_s });
    clearTimeout(this.following);
    this.following = window.setTimeout(() => this.bringCursor(), cursorAfter_ms);
  }

  /** A cursor that was left behind comes into the window. */
  private bringCursor(): void {
    const at_s = inView(this.window, this.data.series.time_s, this.cursorTime);
    if (at_s !== this.cursorTime) this.moveCursor(at_s);
  }

  private measure(): void {
    this.width = Math.floor(this.plots.clientWidth);
  }

  private readonly onScheme = (): void => {
    this.dark = this.scheme.matches;
  };

  private onTable(): void {
    this.tableOpen = !this.tableOpen;
    if (this.tableOpen) void load('tankful-days-table');
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    const { panel } = (event.target as HTMLElement).dataset;
    if (!panel || event.altKey || event.ctrlKey || event.metaKey) return;
    const said = this.act(panel as PanelKey | 'overview', event);
    if (said === null) return;
    event.preventDefault();
    clearTimeout(this.announcing);
    this.announcing = window.setTimeout(() => {
      this.announcement = said();
    }, announceAfter_ms);
  };

  /** What a key does, and what is to be said of it; null for a key that is not for the panels. */
  private act(panel: PanelKey | 'overview', { key, shiftKey }: KeyboardEvent): (() => string) | null {
    const { window, whole } = this;
    const length_s = window.to_s - window.from_s;
    const sayWindow = () => this.windowWords;
    const factor = { '+': 1 / zoomStep, '=': 1 / zoomStep, '-': zoomStep, '0': Number.POSITIVE_INFINITY }[
      key
    ];
    if (factor !== undefined) {
      const middle_s = (window.from_s + window.to_s) / 2;
      this.zoom(zoomed(window, whole, panel === 'overview' ? middle_s : this.cursorTime, factor));
      return sayWindow;
    }
    if (panel === 'overview') {
      const share = { ArrowLeft: -0.1, ArrowRight: 0.1, PageDown: -1, PageUp: 1, Home: -1e9, End: 1e9 }[key];
      if (share === undefined) return null;
      this.zoom(moved(window, whole, share * length_s));
      return sayWindow;
    }
    if (key === 'ArrowUp' || key === 'ArrowDown') {
      const readings = readingsOf(this.data, panel, this.units);
      const at = readings.findIndex((reading) => reading.key === this.chosen[panel]);
      const next = (at + (key === 'ArrowDown' ? 1 : at < 0 ? 0 : -1) + readings.length) % readings.length;
      this.chosen = { ...this.chosen, [panel]: readings[next].key };
      return () => this.reading(panel);
    }
    if (key.toLowerCase() === 'e') {
      const turn = nextTurn(this.data.rows, this.cursorTime, !shiftKey);
      if (!turn) return () => daysWords.noEvent;
      this.stepTo(turn.time_s);
      return () => `${turn.words}, ${momentTitle(this.shown, turn.time_s)}`;
    }
    const time_s = momentAfterKey(this.data.series, this.cursorTime, key);
    if (time_s === null) return null;
    this.stepTo(time_s);
    return () => this.reading(panel);
  }

  private stepTo(time_s: number): void {
    this.moveCursor(time_s);
    const held = holding(this.window, this.whole, time_s);
    if (held !== this.window) this.zoom(held);
  }

  /** The chosen line of a panel at the cursor, or the first. */
  private reading(panel: PanelKey): string {
    const readings = readingsOf(this.data, panel, this.units);
    const { label, text } = readings.find(({ key }) => key === this.chosen[panel]) ?? readings[0];
    const { sample, data } = this;
    return `${label} ${text(sample)}, ${momentTitle(this.shown, data.series.time_s[sample])}`;
  }
}
