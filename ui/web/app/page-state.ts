/** What the page knows. All of it lives in the browser's memory; only the verbs of `page.ts` change it. */
import type {
  Answer,
  Edit,
  FilledDefault,
  Note,
  Problem,
  RangeAnswer,
  Result,
  Scenario,
  SectionFacts,
  Series,
  Stretch,
} from '../../../sim/index.ts';
import type { Units } from '../../words/index.ts';
import type { Attached } from '../worker/protocol.ts';
import type { Kept } from './shelf/kept.ts';

/** The design is a scenario file's content; `id` says which scenario of the catalogue it began as. */
export interface Design {
  id: string;
  name: string;
  scenario: Scenario;
  /** Texts of the weather files that the scenario names. */
  attached?: Attached;
}

/** A log of the real store: a file's name and text. */
export interface Log {
  name: string;
  text: string;
}

/** A result and what it is the result of. */
export interface Shown {
  scenario: Scenario;
  facts: SectionFacts;
  result: Result;
  /** Monday 0. */
  firstWeekday: number;
  /** Values that the scenario left to their defaults. */
  filled: FilledDefault[];
  notes: Note[];
}

/** A quick estimate; while a hand moves on it may reach over the first days only. */
export interface Estimate extends Shown {
  /** Days asked for; `result.days` are done. */
  ofDays: number;
}

export type AnswerKey = Answer['key'];

export interface AnswerState {
  at: 'none' | 'working' | 'done' | 'stopped' | 'failed';
  /** Runs done and planned, while working. */
  progress?: readonly [done: number, of: number];
  /** Since when it works [ms of the page's clock], to tell how long it may still take. */
  since_ms?: number;
  /** The last answer, also while a new one is worked out. */
  answer?: Answer;
  /** What `answer` is the answer for: not always the design as it stands. */
  of?: Scenario;
  /** What was wrong, when failed. */
  problem?: string;
}

export type Answers = Record<AnswerKey, AnswerState>;

export interface Pinned {
  name: string;
  scenario: Scenario;
  shown: Shown;
  answers: Answers;
}

/** An input varied over values, as a part card asks for it. */
export interface RangeSpec {
  path: string;
  from: string;
  to: string;
  n: number;
}

export interface RangeState extends Omit<AnswerState, 'answer'> {
  spec: RangeSpec;
  answer?: RangeAnswer;
}

/** The rooms of the page, and the anchors that lead to them. */
export const rooms = ['answers', 'section', 'days', 'heat'] as const;
export type Room = (typeof rooms)[number];

export interface PageState {
  /** As committed. */
  design: Design;
  /** What a hand is just moving, on top of the design; null when it is not. */
  preview: Edit[] | null;
  units: Units;
  /** By path: text that could not be read, as it was typed. */
  typed: Record<string, string>;
  /** Of the design with its preview; empty when it can be run. */
  problems: Problem[];
  /** Of the design with its preview, to be drawn also where it cannot be run. */
  facts: SectionFacts | null;
  /** The last full run that worked, also while another is running or has failed. */
  shown: Shown | null;
  /** Quicker and coarser than `shown`, and newer; null once the full run is there. */
  estimate: Estimate | null;
  /** Share of the full run that is done; null when none runs. */
  progress: number | null;
  answers: Answers;
  range: RangeState | null;
  pinned: Pinned | null;
  /** A log that was opened, to be held against the run. */
  log: Log | null;
  cursor_s: number;
  window_s: readonly [from_s: number, to_s: number];
  /** A stretch sampled more finely than the run, where the window is short. */
  detail: Detail | null;
  /** Path of the part whose card is open. */
  part: string | null;
  /** The build sheet stands in place of the rooms. */
  sheet: boolean;
  /** The shelf; null until it is awake. */
  kept: Kept | null;
  /** The design is open in another tab and may not be changed here. */
  readOnly: boolean;
}

/** A stretch of the run in fine samples. */
export interface Detail {
  of: Scenario;
  stretch: Stretch;
  series: Series;
}

/** What the rooms show: the newest there is. */
export function newest({ estimate, shown }: PageState): Estimate | Shown | null {
  return estimate ?? shown;
}

/** Whether what is shown is no longer of the design that stands in the page. */
export function isStale({ shown, estimate, design, preview }: PageState): boolean {
  if (estimate) return false;
  return shown !== null && (shown.scenario !== design.scenario || preview !== null);
}

/** Whether an answer is of another design than the one that stands in the page. */
export function isOutdated({ of }: AnswerState, { design }: PageState): boolean {
  return of !== undefined && of !== design.scenario;
}

/** The answers that were worked out, whole, of what is shown. */
export function answersOf({ scenario }: Shown, answers: Answers): Answer[] {
  return Object.values(answers).flatMap(({ at, answer, of }) =>
    at === 'done' && answer && of === scenario ? [answer] : [],
  );
}
