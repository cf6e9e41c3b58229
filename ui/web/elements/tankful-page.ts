/** The whole page: its rooms one under the other. Listens to the store and hands plain values down. */
import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import { shellWords } from '../../words/index.ts';
import { listen } from '../app/listen.ts';
import { momentTitle } from '../app/moments.ts';
import type { Page } from '../app/page.ts';
import {
  answersOf,
  isStale,
  newest,
  type PageState,
  type Room,
  rooms,
  type Shown,
} from '../app/page-state.ts';
import { type WaterAt, waterAt, waterRange } from '../app/water-at.ts';
import type { FieldScale } from '../charts/palette.ts';
import { dangerList } from './danger-list.ts';
import { hearFiles, loadFiles } from './files/hear-files.ts';
import { load, loadAll, loadWhenNear } from './later.ts';
import { LightElement } from './light-element.ts';
import './section/tankful-section.ts';
import { answerLines } from './shell/answer-lines.ts';
import { roomLinks } from './shell/room-links.ts';
import { runLine } from './shell/run-line.ts';
import './shell/tankful-choice.ts';
import './tankful-days.ts';
import { troubleList } from './trouble-list.ts';

/** So high at most that drawing and first panel of the days fit under the answers on a laptop's screen [px]. */
const drawingHeight = 560;

@customElement('tankful-page')
export class TankfulPage extends LightElement {
  @property({ attribute: false }) page!: Page;

  @state() private inSight: Room | null = null;
  /** Rooms that begin above the line which decides where one is. */
  private readonly begun = new Set<Room>();

  private leave = () => {};
  private openedPart: string | null = null;
  /** Where the page was before the build sheet took its place [px]; null while the rooms are seen. */
  private leftAt_px: number | null = null;
  /** What stands still while a hand moves: the drawing follows the hand by itself, the rest is not looked at. */
  private rest: { facts: PageState['facts']; seen: Shown | null } = { facts: null, seen: null };
  private water: { of: Shown; at: WaterAt; scale: FieldScale } | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    const ends = [
      this.page.store.subscribe(() => this.requestUpdate()),
      listen(this, this.page),
      hearFiles(this),
    ];
    this.leave = () => {
      for (const end of ends) end();
    };
  }

  override disconnectedCallback(): void {
    this.leave();
    super.disconnectedCallback();
  }

  protected override firstUpdated(): void {
    const sight = new IntersectionObserver(
      (seen) => {
        for (const { isIntersecting, target } of seen) {
          if (isIntersecting) this.begun.add(target.id as Room);
          else this.begun.delete(target.id as Room);
        }
        this.inSight = this.roomAtLine();
      },
      // All that begins above the line a fifth down the window, however far above.
      { rootMargin: '1000000px 0px -79% 0px' },
    );
    for (const room of rooms) {
      const place = this.querySelector(`#${room}`);
      if (place) sight.observe(place);
    }
    const leave = this.leave;
    const stop = loadWhenNear(this);
    this.leave = () => {
      leave();
      stop();
      sight.disconnect();
    };
    this.addEventListener('click', (event) => void this.onLink(event));
  }

  /** The room that began last; above them all, the first. Two may stand side by side: the one asked for is meant. */
  private roomAtLine(): Room {
    const begun = rooms.filter((room) => this.begun.has(room));
    const last = begun[begun.length - 1] ?? rooms[0];
    const edges = (room: Room) => this.querySelector(`#${room}`)?.getBoundingClientRect() ?? new DOMRect();
    const beside = begun.filter((room) => edges(room).bottom > edges(last).top);
    return beside.find((room) => room === this.inSight) ?? beside[0] ?? last;
  }

  protected override updated(_changed: PropertyValues): void {
    const { part } = this.page.store.get();
    this.turnSheet();
    if (part === this.openedPart) return;
    this.openedPart = part;
    // Opened from a list further up: the card comes into sight and has the keyboard.
    if (part !== null) void this.showCard();
  }

  override render(): TemplateResult {
    const state = this.page.store.get();
    const seen = newest(state);
    if (state.preview === null) this.rest = { facts: state.facts, seen };
    const atRest = this.rest.seen;
    const sheet = this.sheet(state);
    return html`${sheet}
      <div class="desk" ?hidden=${sheet !== nothing}>
      <header class="masthead">
        <h1>${shellWords.title}</h1>
        <p>${shellWords.sentence}</p>
        ${roomLinks(this.inSight)}
      </header>
      <main>
        <tankful-choice
          .page=${this.page}
          .design=${state.design}
          .units=${state.units}
          .kept=${state.kept}
          .readOnly=${state.readOnly}
        ></tankful-choice>
        ${this.files(state)}
        <div id="answers" class="room">${guard([state.answers, state.units, state.design, state.facts === null], () => answerLines(state, this.page))}</div>
        ${troubleList(state.problems, state.design.scenario)}
        ${runLine(state, this.page)} ${atRest ? dangerList(atRest.result.cautions) : nothing}
        ${this.compare(state)}
        <div class="bench">
          <div id="section" class="room">${this.section(state)}</div>
          <div id="days" class="room">${seen ? this.days(state, seen) : nothing}</div>
        </div>
        <div class="bench ${state.part === null ? 'alone' : ''}">${this.parts(state, atRest)}</div>
        ${this.range(state)}
        <div id="heat" class="room">${atRest ? this.heat(state, atRest) : nothing}</div>
        ${
          atRest
            ? html`<tankful-figures
                .page=${this.page}
                .scenario=${atRest.scenario}
                .settled=${atRest === state.shown && !isStale(state)}
                .result=${atRest.result}
                .units=${state.units}
              ></tankful-figures>`
            : nothing
        }
        ${this.measured(state)}
      </main>
      <footer><p>${shellWords.honesty}</p></footer>
      </div>
    `;
  }

  private files({ design, problems }: PageState): TemplateResult {
    // A weather file that is not at hand: there is a way out.
    if (problems.some(({ path }) => path === 'weather.file')) void loadFiles();
    return html`<tankful-files .page=${this.page} .design=${design}></tankful-files>`;
  }

  private section({ design, units, cursor_s, pinned }: PageState): TemplateResult {
    const { facts, seen } = this.rest;
    const water = seen && this.waterOf(seen, cursor_s);
    // A run of another filling says nothing of this one's level.
    const filled = (of: Shown['facts'] | null) => of?.store.water_depth_m;
    const level_m = seen && water && filled(seen.facts) === filled(facts) ? water.at.level_m : null;
    return html`<tankful-section
      .facts=${facts}
      .scenario=${design.scenario}
      .units=${units}
      .layer_C=${water?.at.layer_C ?? []}
      .level_m=${level_m}
      .scale=${water?.scale ?? null}
      .moment=${seen && water ? momentTitle(seen, water.at.time_s) : ''}
      .ghost=${pinned?.shown.facts ?? null}
      .height=${drawingHeight}
    ></tankful-section>`;
  }

  /** The same objects for the same moment: the drawing is drawn anew for others. */
  private waterOf(seen: Shown, cursor_s: number): { at: WaterAt; scale: FieldScale } {
    const at = waterAt(seen.result, cursor_s);
    if (this.water?.of === seen && this.water.at.time_s === at.time_s) return this.water;
    if (this.water?.of === seen) this.water = { ...this.water, at };
    else {
      const [low, high] = waterRange(seen.result);
      this.water = { of: seen, at, scale: { low, high, pivot: wantedOf(seen) } };
    }
    return this.water;
  }

  private parts(state: PageState, seen: Shown | null): TemplateResult {
    const { design, units, problems, part, typed, readOnly } = state;
    if (part !== null) void load('tankful-card');
    return html`<tankful-parts-list
        .scenario=${design.scenario}
        .facts=${this.rest.facts}
        .units=${units}
        .problems=${problems}
        .openedPart=${part}
      ></tankful-parts-list>
      ${
        part === null
          ? nothing
          : html`<tankful-card
            path=${part}
            .scenario=${design.scenario}
            .filled=${seen?.filled ?? []}
            .notes=${seen?.notes ?? []}
            .problems=${problems}
            .typed=${typed}
            .cautions=${seen?.result.cautions ?? []}
            .units=${units}
            .readOnly=${readOnly}
          ></tankful-card>`
      }`;
  }

  private days({ units, cursor_s, window_s, detail, pinned }: PageState, seen: Shown): TemplateResult {
    return html`<tankful-days
      .shown=${seen}
      .units=${units}
      .cursor_s=${cursor_s}
      .window_s=${window_s}
      .detail=${detail}
      .pinned=${pinned}
    ></tankful-days>`;
  }

  private heat({ units, window_s }: PageState, seen: Shown): TemplateResult {
    return html`<tankful-heat .shown=${seen} .units=${units} .window_s=${window_s}></tankful-heat>`;
  }

  /** In place of the rooms, and before them: its drawing shares its hatchings with theirs. */
  private sheet(state: PageState): TemplateResult | typeof nothing {
    const { sheet, shown, answers } = state;
    if (!sheet || !shown) return nothing;
    void load('tankful-sheet');
    return html`<tankful-sheet
      .shown=${shown}
      .answers=${answersOf(shown, answers)}
      ?stale=${isStale(state)}
    ></tankful-sheet>`;
  }

  /** The sheet begins at its head; whoever leaves it is back where they were. */
  private turnSheet(): void {
    const turned = this.querySelector('tankful-sheet') !== null;
    if (turned === (this.leftAt_px !== null)) return;
    const at_px = this.leftAt_px ?? 0;
    this.leftAt_px = turned ? window.scrollY : null;
    window.scrollTo(0, at_px);
    if (!turned) this.querySelector<HTMLElement>('.open-sheet')?.focus({ preventScroll: true });
  }

  private measured({ design, units, log, shown }: PageState): TemplateResult {
    if (log) void load('tankful-measured');
    return html`<tankful-measured
      .page=${this.page}
      .scenario=${design.scenario}
      .units=${units}
      .log=${log}
      .filled=${shown?.filled ?? []}
    ></tankful-measured>`;
  }

  private range({ range, design, units }: PageState): TemplateResult | typeof nothing {
    if (!range) return nothing;
    void load('tankful-range');
    return html`<tankful-range
      .range=${range}
      .scenario=${design.scenario}
      .outdated=${range.of !== undefined && range.of !== design.scenario}
      .units=${units}
      .now_ms=${this.page.now()}
    ></tankful-range>`;
  }

  private compare(state: PageState): TemplateResult | typeof nothing {
    const { pinned, shown, answers, units } = state;
    if (!pinned || !shown) return nothing;
    void load('tankful-compare');
    return html`<tankful-compare
      class=${isStale(state) ? 'stale' : ''}
      .pinned=${pinned}
      .shown=${shown}
      .answers=${answers}
      .units=${units}
    ></tankful-compare>`;
  }

  /** A link into a room whose code is still to come. */
  private async onLink({ target }: Event): Promise<void> {
    const hash = (target as Element).closest('a')?.hash.slice(1);
    if (rooms.includes(hash as Room)) this.inSight = hash as Room;
    if (!hash || document.getElementById(hash)) return;
    await loadAll();
    for (const part of this.querySelectorAll<LightElement>('tankful-figures')) await part.updateComplete;
    document.getElementById(hash)?.scrollIntoView();
  }

  private async showCard(): Promise<void> {
    await load('tankful-card');
    const card = this.querySelector<LightElement>('tankful-card');
    await card?.updateComplete;
    card?.scrollIntoView({ block: 'nearest' });
    card?.querySelector<HTMLElement>('input, select, button')?.focus({ preventScroll: true });
  }
}

/** Comfortable at a tap: where the colours turn when nobody draws. */
const comfortable_C = 40;

/** The warmest water wanted at the tap in a run. */
function wantedOf({ result }: Shown): number {
  let most = Number.NEGATIVE_INFINITY;
  for (const value of result.series.channels.wanted_C ?? []) if (value > most) most = value;
  return Number.isFinite(most) ? most : comfortable_C;
}
