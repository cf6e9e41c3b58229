/** What page and workers say to each other. One file serves as every worker; what it is asked makes it which. */
import type {
  Answer,
  FigureBands,
  FilledDefault,
  FitAnswer,
  Job,
  JobResult,
  Note,
  Problem,
  RangeAnswer,
  Recipe,
  RecipeAnswer,
  Result,
  Scenario,
  SectionFacts,
  Series,
  Stretch,
} from '../../../sim/index.ts';

/** Texts of the files that a scenario names, by the names it calls them. */
export type Attached = Readonly<Record<string, string>>;

/** Holds for every order after it: a file is megabytes long, and goes to a worker once. */
export interface AttachOrder {
  kind: 'attach';
  files: Attached;
}

/** A full run, or a quick estimate, coarser and in parts. */
export type RunOrder =
  | { kind: 'run'; id: number; scenario: Scenario; how: 'full' | 'estimate' }
  | { kind: 'stop' };

/** What came of an order to run; `id` is the order's. */
export type RunReport = { id: number } & (
  | { kind: 'read'; facts: SectionFacts; firstWeekday: number; filled: FilledDefault[]; notes: Note[] }
  /** `sketch`: what can be drawn all the same. */
  | { kind: 'refused'; problems: Problem[]; sketch: Pick<SectionFacts, 'store' | 'coils'> | null }
  | { kind: 'progress'; share: number }
  /** `result.days` of `ofDays` are done; an estimate comes in parts. */
  | { kind: 'result'; result: Result; ofDays: number }
  | { kind: 'failed'; problem: Problem }
);

/** Answers are worked out in one worker, which hands their runs out through the page to all. */
export type AskOrder =
  | { kind: 'ask'; id: number; question: AskQuestion; scenario: Scenario }
  | { kind: 'job'; id: number; scenario: Scenario; job: Job }
  | { kind: 'drop-job'; id: number }
  | { kind: 'detail'; id: number; scenario: Scenario; stretch: Stretch }
  /** Results of the jobs asked for by `jobs`, in their order; null for those left undone. */
  | { kind: 'jobs-done'; batch: number; results: (JobResult | null)[] }
  | { kind: 'job-progress'; batch: number; done: number };

/** An answer by its key, or an input varied, as `store.water_depth=20 in:40 in:5`. */
export type AskQuestion = { key: Answer['key'] } | { vary: string } | Measurement;

/** A log of the real store to hold against the run, a small measurement made at it, or how sure the run's figures are. */
export type Measurement = { log: string; coolDown: boolean } | { recipe: Recipe } | { bands: true };
export type Measured = FitAnswer | RecipeAnswer | FigureBands;

export type AskReport =
  | { kind: 'answered'; id: number; answer: Answer | RangeAnswer | Measured }
  | { kind: 'asked'; id: number; done: number; of: number }
  | { kind: 'unanswered'; id: number; problem: string }
  | { kind: 'jobs'; id: number; batch: number; scenario: Scenario; jobs: Job[] }
  | { kind: 'job-done'; id: number; result: JobResult }
  | { kind: 'detailed'; id: number; series: Series };

export type Order = AttachOrder | RunOrder | AskOrder;
export type Report = RunReport | AskReport;
