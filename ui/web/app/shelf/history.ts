/** What was done to a design, gesture by gesture, so that it can be undone and done again. */
import type { Scenario } from '../../../../sim/index.ts';

/** Sections of a scenario file, each whole; one that is not there is not among them. */
type Sections = Partial<Scenario>;

/** One gesture: the sections it changed, as they were and as they are. */
export interface Entry {
  /** Counts on from 1 over the life of a design. */
  n: number;
  gesture: string;
  at_ms: number;
  was: Sections;
  is: Sections;
}

export interface History {
  /** Oldest first, without gaps in `n`. */
  entries: readonly Entry[];
  /** `n` of the last one in effect: those after it have been undone. */
  done: number;
}

/** Gestures that are kept. */
export const deepest = 200;

export const nothingDone: History = { entries: [], done: 0 };

/** With a gesture that led from `before` to `after`: what had been undone is given up. The same if nothing changed. */
export function recorded(
  { entries, done }: History,
  before: Scenario,
  after: Scenario,
  gesture: string,
  at_ms: number,
): History {
  const keys = differing(before, after);
  if (keys.length === 0) return { entries, done };
  const n = done + 1;
  const entry: Entry = { n, gesture, at_ms, was: sections(before, keys), is: sections(after, keys) };
  return { entries: [...entries.filter((each) => each.n < n), entry].slice(-deepest), done: n };
}

/** The gesture that can be undone. */
export function undoable({ entries, done }: History): Entry | undefined {
  return entries.find(({ n }) => n === done);
}

/** The gesture that can be done again. */
export function redoable({ entries, done }: History): Entry | undefined {
  return entries.find(({ n }) => n === done + 1);
}

export interface Step {
  history: History;
  scenario: Scenario;
  gesture: string;
}

/** One gesture back; null where there is none. */
export function undone(history: History, scenario: Scenario): Step | null {
  const entry = undoable(history);
  if (!entry) return null;
  const { n, gesture, was, is } = entry;
  return { history: { ...history, done: n - 1 }, scenario: replaced(scenario, is, was), gesture };
}

/** One gesture forward; null where there is none. */
export function redone(history: History, scenario: Scenario): Step | null {
  const entry = redoable(history);
  if (!entry) return null;
  const { n, gesture, was, is } = entry;
  return { history: { ...history, done: n }, scenario: replaced(scenario, was, is), gesture };
}

function differing(a: Scenario, b: Scenario): (keyof Scenario)[] {
  const keys = new Set(Object.keys({ ...a, ...b }) as (keyof Scenario)[]);
  return [...keys].filter((key) => JSON.stringify(a[key]) !== JSON.stringify(b[key]));
}

function sections(of: Scenario, keys: (keyof Scenario)[]): Sections {
  return Object.fromEntries(keys.filter((key) => key in of).map((key) => [key, of[key]]));
}

function replaced(scenario: Scenario, old: Sections, by: Sections): Scenario {
  const left = Object.entries(scenario).filter(([key]) => !(key in old) || key in by);
  return { ...Object.fromEntries(left), ...by } as Scenario;
}
