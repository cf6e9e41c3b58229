/**
 * The page's side of the answer workers: each answer is worked out in one of them, and the runs it needs are shared
 * out among all, one to each at a time. Stopping an answer leaves its other runs undone; what is finished is kept.
 */
import type { Answer, Job, JobResult, RangeAnswer, Scenario, Series, Stretch } from '../../../sim/index.ts';
import { workWords } from '../../words/index.ts';
import type {
  AskOrder,
  AskQuestion,
  AskReport,
  Attached,
  Measured,
  Measurement,
  Report,
} from './protocol.ts';
import type { WorkerLike } from './runner.ts';

export interface Heard<Found> {
  progress(done: number, of: number): void;
  answered(answer: Found): void;
  failed(problem: string): void;
}

/** A thing under way; stopping it twice, or when it is over, does nothing. */
export interface UnderWay {
  stop(): void;
}

export interface Pool {
  /** Files that the scenarios of what is asked from now on name. */
  attach(files: Attached): void;
  answer(key: Answer['key'], scenario: Scenario, heard: Heard<Answer>): UnderWay;
  /** Runs the scenario with an input varied, as `store.water_depth=20 in:40 in:5`. */
  range(vary: string, scenario: Scenario, heard: Heard<RangeAnswer>): UnderWay;
  measure(measurement: Measurement, scenario: Scenario, heard: Heard<Measured>): UnderWay;
  detail(scenario: Scenario, stretch: Stretch, heard: (series: Series) => void): UnderWay;
  /**
   * Nobody waits for any answer any more, and a hand wants the processor: workers that are working one out, which
   * hear nothing meanwhile, are ended.
   */
  endAnswers(): void;
}

interface Seat {
  worker: WorkerLike;
  /** The run it does. */
  task: Task | null;
  answers: number;
}

interface Batch {
  scenario: Scenario;
  results: (JobResult | null)[];
  left: number;
  stopped: boolean;
  progress(done: number, of: number): void;
  done(results: (JobResult | null)[]): void;
}

interface Detail {
  seat: Seat;
  order: Extract<AskOrder, { kind: 'detail' }>;
  heard: (series: Series) => void;
}

interface Task {
  id: number;
  batch: Batch;
  index: number;
  job: Job;
}

type AnyAnswer = Extract<AskReport, { kind: 'answered' }>['answer'];

interface Asked {
  seat: Seat;
  heard: Heard<AnyAnswer>;
  stopped: boolean;
  batches: Batch[];
}

export function createPool(startWorker: () => WorkerLike, size: number): Pool {
  const seats: Seat[] = [];
  const queue: Task[] = [];
  const asked = new Map<number, Asked>();
  const details = new Map<number, Detail>();
  let attached: Attached | null = null;
  let lastId = 0;

  /** Workers start when there is something for them to do. */
  function seatFor(busy: (seat: Seat) => boolean): Seat | null {
    const free = seats.find((seat) => !busy(seat));
    if (free) return free;
    if (seats.length === size) return null;
    const seat: Seat = { worker: startWorker(), task: null, answers: 0 };
    seat.worker.onmessage = ({ data }: MessageEvent<Report>) => hear(seat, data as AskReport);
    seat.worker.onerror = (event) => {
      event.preventDefault?.();
      lose(seat, event.message || workWords.notStarted);
    };
    if (attached) seat.worker.postMessage({ kind: 'attach', files: attached });
    seats.push(seat);
    return seat;
  }

  function hear(seat: Seat, report: AskReport): void {
    switch (report.kind) {
      case 'asked':
        asked.get(report.id)?.heard.progress(report.done, report.of);
        return;
      case 'answered':
        close(report.id)?.heard.answered(report.answer);
        return;
      case 'unanswered':
        close(report.id)?.heard.failed(report.problem);
        return;
      case 'jobs': {
        const { id, batch, scenario, jobs } = report;
        const { worker } = seat;
        const made = enqueue(scenario, jobs, {
          progress: (done) => worker.postMessage({ kind: 'job-progress', batch, done }),
          done: (results) => worker.postMessage({ kind: 'jobs-done', batch, results }),
        });
        const asker = asked.get(id);
        asker?.batches.push(made);
        // An answer may ask for another round after it was stopped.
        if (!asker || asker.stopped) abandon(made);
        return;
      }
      case 'job-done': {
        const { task } = seat;
        if (task?.id !== report.id) return;
        seat.task = null;
        settle(task, report.result);
        next();
        return;
      }
      case 'detailed':
        details.get(report.id)?.heard(report.series);
        details.delete(report.id);
    }
  }

  function close(id: number): Asked | undefined {
    const found = asked.get(id);
    asked.delete(id);
    if (found) found.seat.answers--;
    return found;
  }

  function enqueue(scenario: Scenario, jobs: Job[], heard: Pick<Batch, 'progress' | 'done'>): Batch {
    const results = new Array<JobResult | null>(jobs.length).fill(null);
    const batch: Batch = { ...heard, scenario, results, left: jobs.length, stopped: false };
    for (const [index, job] of jobs.entries()) queue.push({ id: ++lastId, batch, index, job });
    if (jobs.length === 0) batch.done(results);
    next();
    return batch;
  }

  function settle({ batch, index }: Task, result: JobResult): void {
    if (batch.stopped) return;
    batch.results[index] = result;
    batch.left--;
    batch.progress(batch.results.length - batch.left, batch.results.length);
    if (batch.left === 0) batch.done(batch.results);
  }

  function abandon(batch: Batch): void {
    if (batch.stopped || batch.left === 0) return;
    batch.stopped = true;
    for (let i = queue.length - 1; i >= 0; i--) if (queue[i].batch === batch) queue.splice(i, 1);
    for (const seat of seats) {
      if (seat.task?.batch !== batch) continue;
      seat.worker.postMessage({ kind: 'drop-job', id: seat.task.id });
      seat.task = null;
    }
    batch.done(batch.results);
    next();
  }

  function next(): void {
    while (queue.length > 0) {
      const seat = seatFor(({ task }) => task !== null);
      const task = seat && queue.shift();
      if (!seat || !task) return;
      seat.task = task;
      const { id, job, batch } = task;
      seat.worker.postMessage({ kind: 'job', id, scenario: batch.scenario, job });
    }
  }

  /** A worker that broke: what it had in hand has failed, the others go on. */
  function lose(seat: Seat, problem: string): void {
    seat.worker.terminate();
    seats.splice(seats.indexOf(seat), 1);
    for (const [id, { seat: own, heard, batches }] of asked) {
      if (own !== seat) continue;
      asked.delete(id);
      for (const batch of batches) abandon(batch);
      heard.failed(problem);
    }
    if (seat.task) settle(seat.task, { ok: false, problem });
    next();
  }

  function ask(question: AskQuestion, scenario: Scenario, heard: Heard<AnyAnswer>): UnderWay {
    const seat = seatFor(({ answers }) => answers > 0) ?? leastAsked(seats);
    const id = ++lastId;
    seat.answers++;
    const entry: Asked = { seat, heard, stopped: false, batches: [] };
    asked.set(id, entry);
    seat.worker.postMessage({ kind: 'ask', id, question, scenario });
    return {
      stop() {
        entry.stopped = true;
        for (const batch of entry.batches) abandon(batch);
      },
    };
  }

  function look(order: Detail['order'], heard: Detail['heard']): void {
    const seat = seatFor(({ task, answers }) => task !== null || answers > 0) ?? leastAsked(seats);
    details.set(order.id, { seat, order, heard });
    seat.worker.postMessage(order);
  }

  return {
    attach(files) {
      attached = files;
      for (const { worker } of seats) worker.postMessage({ kind: 'attach', files });
    },
    // What comes back is what was asked for.
    answer: (key, scenario, heard) => ask({ key }, scenario, heard as Heard<AnyAnswer>),
    range: (vary, scenario, heard) => ask({ vary }, scenario, heard as Heard<AnyAnswer>),
    measure: (measurement, scenario, heard) => ask(measurement, scenario, heard as Heard<AnyAnswer>),
    detail(scenario, stretch, heard) {
      const id = ++lastId;
      look({ kind: 'detail', id, scenario, stretch }, heard);
      return { stop: () => void details.delete(id) };
    },
    endAnswers() {
      for (const { batches } of asked.values()) for (const batch of batches) abandon(batch);
      asked.clear();
      for (const seat of seats.filter(({ answers }) => answers > 0)) {
        seat.worker.terminate();
        seats.splice(seats.indexOf(seat), 1);
        for (const detail of details.values()) if (detail.seat === seat) look(detail.order, detail.heard);
      }
    },
  };
}

function leastAsked(seats: Seat[]): Seat {
  return seats.reduce((least, seat) => (seat.answers < least.answers ? seat : least));
}
