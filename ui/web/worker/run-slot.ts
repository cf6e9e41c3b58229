/**
 * One slot for one run: the latest order wins. A run goes on day by day and lets other messages in between, so that
 * a newer order is heard without ending the worker, whose compiled code stays warm.
 */
import {
  forEstimate,
  type ReadContext,
  type Result,
  readScenario,
  Simulation,
  sectionFacts,
} from '../../../sim/index.ts';
import { failure } from './failure.ts';
import type { RunOrder, RunReport } from './protocol.ts';
import { buffersOf, upTo } from './slices.ts';

export interface SlotDoors {
  /** Files at hand. */
  context(): ReadContext;
  say(report: RunReport, transfer?: Transferable[]): void;
  /** Milliseconds. */
  now(): number;
  /** Lets waiting messages in. */
  nextTurn(): Promise<void>;
}

type Run = Extract<RunOrder, { kind: 'run' }>;

/** A bar moves visibly by this much; more messages would only slow the run. */
const reportEvery = 0.01;
/** By then an estimate shows the days it has: a picture that follows the hand. */
const firstPicture_ms = 16;
/** The next picture comes when the estimate is so many times older: copies cost time too. */
const nextPicture = 3;

export function createRunSlot({ context, say, now, nextTurn }: SlotDoors): (order: RunOrder) => void {
  let wanted: Run | null = null;
  let stopped = false;
  let busy = false;

  async function work(): Promise<void> {
    busy = true;
    while (wanted) {
      const order: Run = wanted;
      wanted = null;
      stopped = false;
      try {
        await run(order);
      } catch (error) {
        say({ id: order.id, kind: 'failed', problem: failure(error) });
      }
    }
    busy = false;
  }

  async function run({ id, scenario, how }: Run): Promise<void> {
    const began_ms = now();
    const read = readScenario(scenario, context());
    if (!read.ok) {
      say({ id, kind: 'refused', problems: read.problems, sketch: read.sketch ?? null });
      return;
    }
    const { plant, sketch, filled, notes } = read;
    const firstWeekday = plant.run.first_weekday;
    say({ id, kind: 'read', facts: sectionFacts(plant, sketch), firstWeekday, filled, notes });
    const estimate = how === 'estimate';
    const simulation = new Simulation(estimate ? forEstimate(plant, plant.run.days) : plant);
    const { days } = plant.run;
    let reported = 0;
    let pictures = 0;
    let picture_ms = firstPicture_ms;
    while (simulation.day < days) {
      simulation.advance(simulation.day + 1);
      if (simulation.day === days) break;
      const age_ms = now() - began_ms;
      if (estimate && age_ms >= picture_ms) {
        tell(id, upTo(simulation.result()), days);
        picture_ms = nextPicture * age_ms;
        pictures++;
      } else if (!estimate && simulation.day / days >= reported + reportEvery) {
        reported = simulation.day / days;
        say({ id, kind: 'progress', share: reported });
      }
      await nextTurn();
      // An estimate gives way only after a first picture: a hand that never rests would never see one.
      if (stopped || (wanted && (!estimate || pictures > 0))) return;
    }
    tell(id, simulation.result(), days);
  }

  function tell(id: number, result: Result, ofDays: number): void {
    say({ id, kind: 'result', result, ofDays }, buffersOf(result.series));
  }

  return (order) => {
    wanted = order.kind === 'run' ? order : null;
    stopped = order.kind === 'stop';
    if (wanted && !busy) void work();
  };
}
