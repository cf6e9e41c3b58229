/**
 * Fit of a scenario to its owner's log: the multipliers that a log can tell, with bands, and what it cannot.
 * Every trial is a whole run of the simulation, through the same jobs as every other answer.
 */
import type { ReadContext, Scenario } from '../../scenario/index.ts';
import { type Edit, edited } from '../edit.ts';
import type { DoJobs, Job } from '../job.ts';
import { refusal } from '../refusal.ts';
import { type OnProgress, Sweep } from '../sweep.ts';
import { readQuestion } from '../vary.ts';
import { deviationsAt, type FitInput, fitInputs, valueAt, vapourInput } from './inputs.ts';
import { information, inverse, type LeastSquares, type Solution, slopesAt, solve } from './least-squares.ts';
import { celsius, logEdits } from './log-edits.ts';
import { measuredEdits } from './measured.ts';
import { alikeness, driftOf, READING_DOUBT_K, rms } from './misfit.ts';
import { differenceText, mostMoved } from './moved.ts';
import { type Log, readLog } from './read-log.ts';
import { type Start, startOf } from './start.ts';

export interface FitQuestion {
  scenario: Scenario;
  context: ReadContext;
  doJobs: DoJobs;
  onProgress?: OnProgress;
  /** Text of the log. */
  log: string;
  /** Nothing was drawn and the engine stood: the overnight cool-down test. */
  coolDown?: boolean;
}

export interface FittedInput {
  path: string;
  form: FitInput['form'];
  /** As the scenario has it, with the band it is believed in; both bands hold 95 in 100. */
  before: { value: number; low: number; high: number };
  value: number;
  low: number;
  high: number;
  /** What is left of the prior's band (of its logarithm), 0..1. */
  left: number;
  /** Whether the log tells it, with what it cannot part from it taken as it stands: less than `TOLD` is left then. */
  told: boolean;
  /** Between what it usually lies. */
  usual: readonly [low: number, high: number];
}

export interface FitAnswer {
  inputs: FittedInput[];
  /** Inputs that a log cannot part from those: not fitted, their doubt is in the bands. */
  beside: FittedInput[];
  /** Pairs that the log tells only together: one can be traded for the other. */
  together: { paths: [string, string]; correlation: number }[];
  probes: {
    name: string;
    offset_K: number;
    offsetDoubt_K: number;
    drift_K_day: number | null;
    rms_K: number;
  }[];
  /** Measured less simulated, root of the mean square, as the scenario stands and as fitted. */
  rms_K: { before: number; after: number };
  compared: { time_s: number; probe: number; measured_C: number; simulated_C: number }[];
  /** What puts the told values into the scenario. */
  edits: Edit[];
  ignored: string[];
  /** False where the search ran out of rounds. */
  settled: boolean;
}

/** Less than this of a prior's band left counts as told. */
const TOLD = 0.7;
const TOGETHER = 0.9;
/** The least that the doubt of a reading is taken to be [K]. */
const LEAST_DOUBT_K = 0.05;
/** Cheap digital probes: half a kelvin nine times in ten [K]. */
const OFFSET_K = 0.3;
/** How far the store may have been from the line through the first readings [K]. */
const START_K = 1;
const SPREAD = 1.96;

/** @throws RangeError for a scenario or a log that cannot be read, and for a log that tells nothing */
export async function fitAnswer(question: FitQuestion): Promise<FitAnswer> {
  const { scenario, context, doJobs, onProgress, coolDown = false } = question;
  const { plant, filled, marks } = readQuestion({ scenario, context });
  const depth_m = plant.store.water_depth_m;
  const log = readLog(question.log, depth_m, plant.site.time_zone_s);
  const trials = new Trials(log, startOf(log, depth_m), logEdits(log, plant, coolDown));
  const sweep = new Sweep(doJobs, 30, onProgress);

  const all = fitInputs(plant);
  const unmeasured = [...filled, ...marks].some(({ path }) => path === 'store.vapour_escape');
  const vapour = unmeasured ? vapourInput(plant) : null;
  const inputs = await felt(all, trials, sweep);
  const unknowns = inputs.length + trials.others;
  const zero = new Array<number>(unknowns).fill(0);
  const first = await solve(trials.problem(inputs, sweep, READING_DOUBT_K), zero);
  if (!first) throw failed(sweep);
  // How far the readings stray, and how much neighbours stray alike, says what one of them is worth.
  const errors_K = first.residuals.map((r) => r * READING_DOUBT_K);
  const doubt_K = Math.max(LEAST_DOUBT_K, rms(errors_K)) * alikeness(errors_K, trials.readings);
  const problem = trials.problem(inputs, sweep, doubt_K);
  const solution = await solve(problem, first.u);
  const start = (await problem.residuals([zero]))[0];
  if (!solution || !start) throw failed(sweep);
  const before_K = rms(start) * doubt_K;
  const ends =
    vapour && (await heldAt(vapour, (more) => trials.problem(inputs, sweep, doubt_K, more), solution.u));
  return answerOf(scenario, all, inputs, trials, solution, {
    doubt_K,
    before_K,
    beside: ends && vapour,
    ends,
  });
}

/** What the inputs are fitted to with another one held at its low and at its high end; null if a run failed. */
async function heldAt(
  held: FitInput,
  problem: (more: Edit[]) => LeastSquares,
  u: readonly number[],
): Promise<number[][] | null> {
  const found: number[][] = [];
  for (const deviations of [-SPREAD, SPREAD]) {
    const value = Math.min(held.greatest, Math.max(held.least, valueAt(held, deviations)));
    const solution = await solve(problem(held.edits(value)), [...u]);
    if (!solution) return null;
    found.push(solution.u);
  }
  return found;
}

/** Inputs that the readings feel at all: the others would only cost runs. */
async function felt(all: FitInput[], trials: Trials, sweep: Sweep): Promise<FitInput[]> {
  const problem = trials.problem(all, sweep, LEAST_DOUBT_K);
  const zero = new Array<number>(problem.size).fill(0);
  const base = (await problem.residuals([zero]))[0];
  const slopes = base && (await slopesAt(problem, zero, base));
  if (!slopes) throw failed(sweep);
  const squares = (i: number) => slopes.reduce((sum, row) => sum + row[i] ** 2, 0);
  return all.filter((_, i) => squares(i) > 1 / TOLD ** 2 - 1);
}

function failed({ stopped, problems }: Sweep): RangeError {
  if (problems.size > 0) return new RangeError([...problems].join('\n'));
  const got = stopped ? 'a stop' : 'a run without readings';
  return refusal('the fit', 'to finish its runs', got, 'start it again');
}

interface Beside {
  doubt_K: number;
  before_K: number;
  /** An input that is not fitted, and what the fitted ones are with it at either end. */
  beside: FitInput | null;
  ends: number[][] | null;
}

function answerOf(
  scenario: Scenario,
  all: FitInput[],
  inputs: FitInput[],
  trials: Trials,
  { u, residuals, slopes, settled }: Solution,
  { doubt_K, before_K, beside, ends }: Beside,
): FitAnswer {
  const covariance = inverse(information(slopes, u.length));
  const sd = (i: number) => Math.sqrt(covariance[i][i]);
  // Independent doubts: the readings' own, and how far the held input's either end moves the value.
  const reach = (i: number, way: -1 | 1) =>
    Math.hypot(SPREAD * sd(i), ...(ends ?? []).map((end) => Math.max(0, way * (end[i] - u[i]))));
  const fitted = all.map((input) => {
    const i = inputs.indexOf(input);
    return i < 0 ? untoldInput(input) : fittedInput(input, u[i], [reach(i, -1), reach(i, 1)], sd(i));
  });
  const told = fitted.filter((each) => each.told);
  const errors_K = residuals.map((r) => r * doubt_K);
  const { log, readings } = trials;
  if (told.length === 0) {
    throw untold(
      log,
      inputs.some((_, i) => sd(i) < TOLD),
    );
  }
  const together = inputs.flatMap((a, i) =>
    inputs.slice(0, i).flatMap((b, k) => {
      const correlation = covariance[i][k] / (sd(i) * sd(k));
      return Math.abs(correlation) > TOGETHER
        ? [{ paths: [b.path, a.path] as [string, string], correlation }]
        : [];
    }),
  );
  const probes = log.probes.map(({ name }, probe) => {
    const at = u.length - log.probes.length + probe;
    const own = readings.flatMap((reading, m) => (reading.probe === probe ? [m] : []));
    const own_K = own.map((m) => errors_K[m]);
    const times_s = own.map((m) => readings[m].time_s);
    // Residuals are simulated less measured.
    const drift = driftOf(own_K, times_s);
    return {
      name,
      offset_K: u[at] * OFFSET_K,
      offsetDoubt_K: SPREAD * sd(at) * OFFSET_K,
      drift_K_day: drift === null ? null : -drift,
      rms_K: rms(own_K),
    };
  });
  const compared = readings.map(({ time_s, probe, value_C }, m) => ({
    time_s,
    probe,
    measured_C: value_C,
    simulated_C: value_C + errors_K[m],
  }));
  const edits = editsOf(scenario, all, told);
  const rms_K = { before: before_K, after: rms(errors_K) };
  return {
    inputs: fitted,
    beside: beside ? [untoldInput(beside)] : [],
    together,
    probes,
    rms_K,
    compared,
    edits,
    ignored: log.ignored,
    settled,
  };
}

/** An input as it was before. */
function untoldInput(input: FitInput): FittedInput {
  return fittedInput(input, 0, [SPREAD, SPREAD], 1);
}

/** An input at `u` deviations, its band reaching so far down and up from there; `sd` is what the readings alone leave. */
function fittedInput(
  input: FitInput,
  u: number,
  [down, up]: readonly [number, number],
  sd: number,
): FittedInput {
  const within = (value: number) => Math.min(input.greatest, Math.max(input.least, value));
  const band = (at: number, below: number, above: number) => ({
    value: valueAt(input, at),
    low: within(valueAt(input, at - below)),
    high: within(valueAt(input, at + above)),
  });
  const { path, form, usual } = input;
  const left = (down + up) / (2 * SPREAD);
  const before = band(0, SPREAD, SPREAD);
  return {
    path,
    form,
    usual,
    before,
    ...band(u, down, up),
    left: Math.min(1, left),
    told: sd < TOLD && left < 1,
  };
}

/** Told values as a file has them, marked with the bands they were told with. */
function editsOf(scenario: Scenario, all: readonly FitInput[], told: readonly FittedInput[]): Edit[] {
  const written = told.flatMap(({ path, ...band }) => {
    const input = all.find((each) => each.path === path);
    if (!input) return [];
    const [value, low, high] = [band.value, band.low, band.high].map((at) => input.edits(at));
    const [{ value: own }, ...others] = value as { path: string; value: string | number }[];
    return [{ measured: { path, value: own, low: `${low[0].value}`, high: `${high[0].value}` }, others }];
  });
  const values = measuredEdits(
    scenario,
    written.map(({ measured }) => measured),
  );
  return [...values, ...written.flatMap(({ others }) => others)];
}

function untold({ readings }: Log, behindVapour: boolean): RangeError {
  const hours = (readings[readings.length - 1].time_s - readings[0].time_s) / 3600;
  return refusal(
    'the log',
    'one that narrows at least one input',
    `${readings.length} readings over ${hours.toFixed(1)} h in which no probe moves by more than ${differenceText(mostMoved(readings))}`,
    behindVapour
      ? 'tape the lid shut all round, leave the vent open, and log a night of 8 to 12 hours: what gets past the lid hides the rest'
      : `log a night of 8 to 12 hours in which the store cools by ${differenceText(2)} or more, or a day with draws and the engine`,
  );
}

/** Runs of the log with unknowns put in; a run is done once for what it depends on. */
class Trials {
  readonly log: Log;
  readonly #start: Start;
  readonly #edits: Edit[];
  readonly #known = new Map<string, (number | null)[]>();
  /** Readings at which the run has something to hold against them. */
  readings: Log['readings'];

  constructor(log: Log, start: Start, edits: Edit[]) {
    this.log = log;
    this.#start = start;
    this.#edits = edits;
    this.readings = log.readings;
  }

  /** Unknowns beside the inputs: bottom and top at the start (one of them if not told apart), an offset by probe. */
  get others(): number {
    return this.#starts + this.log.probes.length;
  }

  get #starts(): number {
    return this.#start.layered ? 2 : 1;
  }

  /** @param more edits that stay the same in all trials of this problem */
  problem(inputs: readonly FitInput[], sweep: Sweep, doubt_K: number, more: Edit[] = []): LeastSquares {
    const size = inputs.length + this.others;
    const free = new Array<number>(this.others).fill(4);
    return {
      size,
      least: [...inputs.map((input) => deviationsAt(input, input.least)), ...free.map((x) => -x)],
      greatest: [...inputs.map((input) => deviationsAt(input, input.greatest)), ...free],
      residuals: async (trials) => {
        const modelled = await this.#run(
          trials.map((u) => this.#job(inputs, u, more)),
          sweep,
        );
        return trials.map((u, i) => {
          const values = modelled[i];
          return values && this.#residuals(values, u.slice(inputs.length + this.#starts), doubt_K);
        });
      },
    };
  }

  #residuals(modelled: (number | null)[], offsets: number[], doubt_K: number): number[] {
    return this.log.readings.flatMap(({ probe, value_C }, m) => {
      const value = modelled[m];
      return value === null ? [] : [(value + offsets[probe] * OFFSET_K - value_C) / doubt_K];
    });
  }

  #job(inputs: readonly FitInput[], u: readonly number[], more: Edit[]): Job {
    const { bottom_C, top_C } = this.#start;
    const bottom = u[inputs.length] * START_K;
    const top = (this.#start.layered ? u[inputs.length + 1] : u[inputs.length]) * START_K;
    const water = (value: number) => celsius(Math.min(99.9, Math.max(0, value)));
    const start = { bottom: water(bottom_C + bottom), top: water(top_C + top) };
    const { readings } = this.log;
    return {
      edits: [
        ...this.#edits,
        ...more,
        { path: 'run.start', value: start },
        ...inputs.flatMap((input, i) => input.edits(valueAt(input, u[i]))),
      ],
      log: {
        begins_s: readings[0].time_s,
        points: readings.map(({ time_s, place }) => ({ time_s, place })),
      },
    };
  }

  async #run(jobs: Job[], sweep: Sweep): Promise<((number | null)[] | null)[]> {
    const keys = jobs.map(({ edits }) => JSON.stringify(edits));
    const fresh = jobs.filter((_, i) => !this.#known.has(keys[i]) && keys.indexOf(keys[i]) === i);
    const done = await sweep.run(fresh);
    done.forEach((result, i) => {
      if (result?.modelled_C) this.#known.set(JSON.stringify(fresh[i].edits), result.modelled_C);
    });
    const [any] = this.#known.values();
    if (any) this.readings = this.log.readings.filter((_, m) => any[m] !== null);
    return keys.map((key) => this.#known.get(key) ?? null);
  }
}

/** The scenario with what the log told put in. */
export function fittedScenario(scenario: Scenario, { edits }: FitAnswer): Scenario {
  return edited(scenario, edits);
}
