/** What a person can do on the page. Every change of the design goes through `commit`. */
import {
  type Edit,
  edited,
  type Problem,
  type Refusal,
  type Scenario,
  type Stretch,
} from '../../../sim/index.ts';
import type { Units } from '../../words/index.ts';
import type { Heard, Pool, UnderWay } from '../worker/pool.ts';
import type { Attached, Measured, Measurement } from '../worker/protocol.ts';
import type { Runner } from '../worker/runner.ts';
import { createAsking, noAnswers } from './asking.ts';
import type { BuiltIn } from './built-in.ts';
import type { CatalogueEntry } from './catalogue.ts';
import { createHappenings, type Happenings } from './happenings.ts';
import { createLive } from './live.ts';
import type { AnswerKey, Answers, Design, Log, PageState, RangeSpec } from './page-state.ts';
import type { PartVerb } from './part-verbs.ts';
import type { KeepVerb } from './shelf/kept.ts';
import { spanOf } from './span.ts';
import { createStore, type Store } from './store.ts';

export interface PageDoors {
  catalogue: CatalogueEntry[];
  /** What the page opens with, of the catalogue. */
  opening: { id: string; scenario: Scenario };
  runner: Runner;
  pool: Pool;
  /** Milliseconds. */
  now(): number;
  /** Acts after a while, unless the function given back is called. */
  later(act: () => void, ms: number): () => void;
  builtIn: BuiltIn | null;
}

/** What came of opening a scenario. */
export interface Opened {
  taken: boolean;
  problems: readonly Problem[];
}

export interface Page {
  store: Store<PageState>;
  catalogue: CatalogueEntry[];
  /** Milliseconds of the clock that answers are timed by. */
  now(): number;
  /**
   * Changes the design; a value of undefined takes an input out of it. `gesture` says in words what was done;
   * `attached` are all files of the design, where they are others than before.
   */
  commit(edits: Edit[], gesture: string, attached?: Attached): void;
  /** Shows what edits would do while a hand still holds them. */
  preview(edits: Edit[]): void;
  cancelPreview(): void;
  /** Keeps text that could not be read, or forgets it. */
  keepTyped(path: string, text: string | null): void;
  /** Adds, doubles or removes a part; gives back why it cannot be done, or null. */
  changePart(asked: PartVerb): Promise<Refusal | null>;
  openPart(path: string | null): void;
  showSheet(open: boolean): void;
  pin(): void;
  unpin(): void;
  ask(key: AnswerKey): void;
  stopAsking(key: AnswerKey | 'range'): void;
  /** Works out what a measurement says of the design; whoever asks keeps what comes. */
  measure(measurement: Measurement, heard: Heard<Measured>): UnderWay;
  /** Runs the design with an input at several values. */
  tryRange(spec: RangeSpec): void;
  chooseUnits(units: Units): void;
  moveCursor(time_s: number): void;
  zoom(window_s: readonly [from_s: number, to_s: number]): void;
  /** Samples a stretch more finely than the run. */
  lookCloser(stretch: Stretch): void;
  /** Begins a new design from an example. */
  chooseScenario(id: string): Promise<void>;
  /**
   * Begins a new design from a scenario that was read from a file or a link, called `name` if it has no name of its
   * own, with the weather files it names. Gives back what is wrong with it; one that cannot even be drawn is not taken,
   * and the page stays as it was.
   */
  openScenario(json: unknown, also?: { name?: string; attached?: Attached }): Promise<Opened>;
  /** Keeps a log of the real store, to be held against the run. */
  openLog(log: Log): void;
  /** Puts a design in the page that is kept elsewhere, in place of the one before. */
  show(design: Design): void;
  /** Puts another state of the same design in the page, as undoing does. */
  put(scenario: Scenario, attached?: Attached): void;
  /** Asks something of the shelf. */
  keep(asked: KeepVerb): void;
  /** Tells what designs go through, and what is asked of the shelf. */
  hear: Happenings['hear'];
  /** Runs the design anew; the page does so by itself after every change. */
  run(): void;
  /** Has the worker do the design once unseen, so that it is warm when a hand moves something. */
  wake(): void;
  stop(): void;
}

/** No files, always the same. */
const none: Attached = {};

export function openPage(doors: PageDoors): Page {
  const { catalogue, opening, runner, pool, now, builtIn } = doors;
  const design: Design = { ...opening, name: nameOf(opening.scenario) };
  const shown = builtIn && { ...builtIn.shown, scenario: design.scenario };
  const store = createStore<PageState>({
    design,
    preview: null,
    units: 'US',
    typed: {},
    problems: [],
    facts: shown?.facts ?? null,
    shown,
    estimate: null,
    progress: null,
    answers: { ...noAnswers, ...builtInAnswers(builtIn?.answers ?? {}, design.scenario) },
    range: null,
    pinned: null,
    log: null,
    cursor_s: 0,
    window_s: [0, secondsOf(design.scenario)],
    detail: null,
    part: null,
    sheet: false,
    kept: null,
    readOnly: false,
  });
  const asking = createAsking(store, pool, doors);
  const live = createLive(store, runner, doors.later, () => asking.askQuick());
  const happenings = createHappenings();
  let detail: UnderWay | null = null;
  let chosen = 0;
  let atHand = none;
  /** What the worker was last woken with. */
  let woken: Scenario | null = null;

  /** The one door through which the design changes. */
  function commit(edits: Edit[], gesture: string, attached?: Attached): void {
    const { design, typed, readOnly } = store.get();
    if (readOnly) {
      cancelPreview();
      happenings.tell({ kind: 'refused', edits, gesture, ...(attached && { attached }) });
      return;
    }
    const scenario = withEdits(design.scenario, edits);
    const kept = Object.entries(typed).filter(([path]) => !edits.some((edit) => edit.path === path));
    const next = { ...design, name: nameOf(scenario), scenario, ...(attached && { attached }) };
    take(next, { typed: Object.fromEntries(kept) });
    happenings.tell({ kind: 'committed', before: design.scenario, design: next, gesture });
  }

  function take(next: Design, also: Partial<PageState>): void {
    const { window_s, design } = store.get();
    const whole = secondsOf(next.scenario);
    asking.stopAll();
    detail?.stop();
    attach(next.attached);
    store.set({
      ...also,
      design: next,
      preview: null,
      detail: null,
      // A window on other days than there are shows nothing.
      window_s: secondsOf(design.scenario) === whole ? window_s : [0, whole],
    });
    live.full();
  }

  /** Files go to the workers when they are others than before: they are megabytes long. */
  function attach(files: Attached = none): void {
    if (files === atHand) return;
    atHand = files;
    runner.attach(files);
    pool.attach(files);
  }

  /** Another design: nothing of the one before is left. */
  function show(next: Design): void {
    chosen++;
    take(next, { typed: {}, part: null, answers: noAnswers, range: null, readOnly: false });
  }

  /** The one door through which new designs come. */
  function begin(design: Design, own: boolean): void {
    show(design);
    happenings.tell({ kind: 'begun', design, own });
  }

  function cancelPreview(): void {
    if (store.get().preview === null) return;
    store.set({ preview: null });
    live.settle();
    if (store.get().progress === null) asking.askQuick();
  }

  if (!shown) live.full();
  return {
    store,
    catalogue,
    now,
    commit,
    preview(edits) {
      // The processor is the hand's; answers to a design that is just being changed are of no use.
      if (store.get().preview === null) asking.stopAll();
      store.set({ preview: edits });
      live.estimate(withEdits(store.get().design.scenario, edits));
    },
    cancelPreview,
    keepTyped(path, text) {
      const { [path]: _, ...others } = store.get().typed;
      store.set({ typed: text === null ? others : { ...others, [path]: text } });
    },
    async changePart(asked) {
      const { gestureOf, partChange } = await import('./part-verbs.ts');
      const found = partChange(asked, store.get());
      if (found === null) return null;
      if ('no' in found) return found;
      commit(found.edits, gestureOf(asked, store.get().design.scenario));
      if (!store.get().readOnly) store.set({ part: found.opens });
      return null;
    },
    openPart: (path) => store.set({ part: path }),
    // Without a run there is nothing to pin up.
    showSheet: (open) => store.set({ sheet: open && store.get().shown !== null }),
    pin() {
      const { design, shown, answers } = store.get();
      if (shown) store.set({ pinned: { name: design.name, scenario: shown.scenario, shown, answers } });
    },
    unpin: () => store.set({ pinned: null }),
    ask: asking.ask,
    stopAsking: asking.stop,
    measure: (measurement, heard) => pool.measure(measurement, store.get().design.scenario, heard),
    tryRange: asking.tryRange,
    chooseUnits: (units) => store.set({ units }),
    moveCursor: (time_s) => store.set({ cursor_s: time_s }),
    zoom: (window_s) => store.set({ window_s }),
    lookCloser(stretch) {
      const { scenario } = store.get().design;
      detail?.stop();
      detail = pool.detail(scenario, stretch, (series) =>
        store.set({ detail: { of: scenario, stretch, series } }),
      );
    },
    async chooseScenario(id) {
      const entry = catalogue.find((each) => each.id === id);
      if (!entry) return;
      const asked = ++chosen;
      const scenario = id === opening.id ? opening.scenario : await entry.load();
      // Of two choices in quick succession the later one counts.
      if (asked === chosen) begin({ id, name: entry.name, scenario }, false);
    },
    openScenario(json, { name = '', attached = none } = {}) {
      const asked = ++chosen;
      const scenario = named(json, name);
      attach(attached);
      // It is under way: what would wake the worker would make it forget.
      store.set({ progress: 0 });
      return new Promise((done) => {
        // Refused by the worker, it never becomes the design: the rooms rely on its shape.
        runner.run(scenario, 'full', (report) => {
          if (report.kind !== 'read' && report.kind !== 'refused' && report.kind !== 'failed') return;
          const problems =
            report.kind === 'read' ? [] : report.kind === 'failed' ? [report.problem] : report.problems;
          const taken = report.kind === 'read' || (report.kind === 'refused' && report.sketch !== null);
          if (taken && asked === chosen)
            begin({ id: 'own', name: nameOf(scenario), scenario, attached }, true);
          else {
            attach(store.get().design.attached);
            live.settle();
          }
          done({ taken, problems });
        });
      });
    },
    openLog: (log) => store.set({ log }),
    show,
    put(scenario, attached) {
      const { design } = store.get();
      take({ ...design, name: nameOf(scenario), scenario, ...(attached && { attached }) }, {});
    },
    keep: (asked) => happenings.tell({ kind: 'asked', asked }),
    hear: happenings.hear,
    run: live.full,
    wake() {
      // What runs at that moment wakes it too.
      const { shown, design, progress, preview } = store.get();
      const { scenario } = design;
      if (woken === scenario || shown?.scenario !== scenario || progress !== null || preview !== null) return;
      woken = scenario;
      live.wake();
    },
    stop: live.stop,
  };
}

function nameOf({ name }: Scenario): string {
  return typeof name === 'string' ? name : '';
}

/** What is no scenario at all is left as it is, for its reader to refuse. */
function named(json: unknown, name: string): Scenario {
  const has = typeof json !== 'object' || json === null || nameOf(json as Scenario) !== '' || name === '';
  return (has ? json : { ...json, name }) as Scenario;
}

function secondsOf(scenario: Scenario): number {
  return spanOf(scenario).days * 86_400;
}

/** A copy with edits made, as a file would hold it: what is undefined is not there. */
function withEdits(scenario: Scenario, edits: Edit[]): Scenario {
  return JSON.parse(JSON.stringify(edited(scenario, edits))) as Scenario;
}

function builtInAnswers(answers: Partial<Answers>, of: Scenario): Partial<Answers> {
  return Object.fromEntries(Object.entries(answers).map(([key, state]) => [key, { ...state, of }]));
}
