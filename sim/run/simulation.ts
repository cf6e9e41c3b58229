/** One run: restarts at every known edge, finds every other event, fills series, tally and ledger. */

import { IntegrationError, Integrator, type Step } from '../numerics/integrator.ts';
import { findRoot } from '../numerics/root.ts';
import type { PlantDescription } from '../parts/description.ts';
import type { Opening } from '../parts/draw-calendar.ts';
import { fails } from '../parts/faults.ts';
import { edgesOfDay } from '../plant/edges.ts';
import { Plant } from '../plant/plant.ts';
import { type Watch, watches } from '../plant/watch.ts';
import { cautionsOf } from './cautions.ts';
import { figuresOf } from './figures.ts';
import { ledgerOf } from './ledger.ts';
import { type PartFigures, Parts } from './parts.ts';
import { playFaults } from './play-faults.ts';
import type { Result, RunEvent } from './result.ts';
import { Sampler } from './sampler.ts';
import { type ClosedDraw, Tally } from './tally.ts';

const DAY = 86_400;
/** First step to try in each kind of regime, before one has been seen [s]. */
const FIRST_STEP = 20;
/** Longest step while the top boils: steam follows its temperature within seconds [s]. */
const STEAMING_STEP = 60;
/** An event is located to within this [s]. */
const EVENT_TIME = 0.01;
/** More events than this a day end the run: something switches without a dead band. */
const MOST_EVENTS_A_DAY = 3000;
/** A run ends with less than this share of the water left. */
const LEAST_WATER = 0.02;
/** Evaluations allowed a day before a run is given up; a busy day takes about 5,000. */
const BUDGET_A_DAY = 400_000;

/**
 * A simulated stretch of days. Advance it as far as wanted, in one go or in parts (the parts make the same
 * whole, to the bit), then take the result.
 */
export class Simulation {
  readonly plant: Plant;
  readonly #y: number[];
  readonly #integrator: Integrator;
  readonly #sampler: Sampler;
  readonly #tally: Tally;
  readonly #parts: Parts;
  readonly #watches: Watch[];
  readonly #events: RunEvent[] = [];
  readonly #startEnergy_J: number;
  readonly #scratch: number[];
  readonly #state: number[];
  readonly #steps = new Map<number, number>();
  readonly #begins_s: number;
  #day = 0;
  #restarts = 0;
  #happened = 0;
  #nextOpening = 0;

  /**
   * @param parts days of the run on which a new part begins, of which `parts` tells the figures
   * @param sampledFrom_s the series begins here, as for a close look at a stretch
   * @param begins_s the start temperatures hold at this time of the first day, and nothing happens before
   * @throws IntegrationError, RangeError on a description that `readScenario` would not have let through
   */
  constructor(description: PlantDescription, parts: readonly number[] = [], sampledFrom_s = 0, begins_s = 0) {
    this.#begins_s = begins_s;
    this.plant = new Plant(description);
    const { layout } = this.plant;
    this.#y = layout.initial();
    const { tolerance, days } = description.run;
    this.#integrator = new Integrator(
      {
        size: layout.size,
        rates: (t, y, out) => this.plant.rates(t, y, out),
        nameOf: (i) => layout.nameOf(i),
        absoluteTolerance: layout.tolerances(tolerance),
        sharpness: layout.sharpness(),
      },
      tolerance,
      BUDGET_A_DAY * (days + 1),
    );
    this.#scratch = this.#y.slice();
    this.#state = this.#y.slice();
    this.#startEnergy_J = this.plant.energy(this.#y);
    this.#tally = new Tally(this.plant);
    this.#parts = new Parts(this.plant, parts, this.#y);
    this.#sampler = new Sampler(
      this.plant,
      this.#y,
      () => this.#tally.coldShower_s + this.#tally.coldDraw_s,
      sampledFrom_s,
    );
    this.#watches = watches(this.plant);
  }

  /** Days simulated so far. */
  get day(): number {
    return this.#day;
  }

  /**
   * Simulates on to midnight at the end of day `until` (counted from the start), at most to the end of the run.
   * @throws IntegrationError when the run cannot go on; what was sampled so far stays
   */
  advance(until: number): void {
    const last = Math.min(until, this.plant.description.run.days);
    for (; this.#day < last; this.#day++) {
      const edges = edgesOfDay(this.plant, this.#day).filter((edge) => edge > this.#begins_s);
      edges.unshift(Math.max(this.#begins_s, this.#day * DAY));
      for (let i = 1; i < edges.length; i++) this.#span(edges[i - 1], edges[i]);
      // As the next day would begin: what is told of this one has its last hour's level.
      this.#settle();
      this.#parts.midnight(this.#day + 1, this.#y);
    }
  }

  /** Figures of the parts that are over. */
  get parts(): readonly PartFigures[] {
    return this.#parts.done;
  }

  /** Draws that are over, in the order in which they closed. */
  get closedDraws(): readonly ClosedDraw[] {
    return this.#tally.closed;
  }

  /** Whether the water has left so far that it no longer covers half of a coil. */
  get dry(): boolean {
    return this.#tally.dry_s !== null;
  }

  /** The result of the days simulated so far. */
  result(): Result {
    const { plant } = this;
    const ledger = ledgerOf(this.#y, this.#startEnergy_J, plant.energy(this.#y));
    const figures = figuresOf(plant, this.#tally, this.#y);
    return {
      name: plant.description.name,
      first_day: plant.description.run.first_day,
      days: this.#day,
      figures,
      ledger,
      events: this.#events,
      cautions: cautionsOf(plant, this.#tally, figures),
      series: this.#sampler.filled(),
      run: {
        evaluations: this.#integrator.evaluations,
        steps: this.#integrator.steps,
        restarts: this.#restarts,
      },
    };
  }

  #span(from: number, to: number): void {
    let t = from;
    let due: Watch | null = null;
    while (t < to) {
      this.#restart(t, due);
      due = null;
      const front = this.plant.taps?.nextFront(this.#y) ?? Number.POSITIVE_INFINITY;
      const loop = this.#loopFront();
      const end = Math.min(to, t + front, t + loop);
      const regime = this.plant.regime();
      const first = this.#steps.get(regime) ?? FIRST_STEP;
      const longest = this.plant.store.steaming ? STEAMING_STEP : undefined;
      const armed = this.#watches.filter((w) => w.armed());
      const onStep = (step: Step) => {
        const found = this.#findEvent(step, armed);
        due = found?.watch ?? null;
        this.#pass(step, found?.time ?? step.t1);
        return found?.time;
      };
      const reached = this.#integrator.advance(t, this.#y, end > t ? end : to, first, onStep, longest);
      this.#steps.set(regime, reached.step);
      t = reached.time;
    }
  }

  /** Time until the front of the collectors' coil arrives, at its steady flow [s]. */
  #loopFront(): number {
    const { collector } = this.plant;
    if (!collector?.pumping || collector.coil.mode !== 'filling') return Number.POSITIVE_INFINITY;
    const speed = collector.coil.frontSpeed(collector.flow_kg_s, collector.coil_entry_C);
    return Math.max(0.05, (1 - collector.coil.front(this.#y)) / speed);
  }

  #restart(t: number, due: Watch | null): void {
    const { plant } = this;
    const y = this.#y;
    this.#restarts++;
    this.#settle();
    if (due) this.#happen(due, t);
    this.#events.push(...playFaults(plant, t, y));
    this.#draws(t);
    this.#timetable(t);
    if (plant.collector?.coil.mode === 'filling' && plant.collector.coil.front(y) > 0.99) {
      plant.collector.coil.mode = 'steady';
    }
    // What already holds happens at once; a cascade that does not end is a control without a dead band.
    for (let again = true, rounds = 0; again; rounds++) {
      again = false;
      plant.store.prepare(y);
      for (const watch of this.#watches) {
        if (!watch.armed() || watch.value(t, y) < 0) continue;
        this.#happen(watch, t);
        plant.store.prepare(y);
        again = rounds < 8;
      }
    }
    plant.store.settle(y);
    this.#evaluate(t, y);
    this.#tally.begin(t, y);
    this.#parts.tally?.begin(t, y);
    if (this.#sampler.next_s <= t) this.#sampler.take(t, y, () => {});
  }

  /** Orders the layers, and takes out of them the water that has left where the level is kept by hand. */
  #settle(): void {
    const { store, coils } = this.plant;
    store.settle(this.#y);
    if (!store.lowerLevel(this.#y)) return;
    this.#demandWater();
    for (const coil of coils) coil.layAnew(store.geometry);
    store.settle(this.#y);
  }

  /** A store that is all but empty heats and cools without end: the run would not come to one. */
  #demandWater(): void {
    const { depth_m, description } = this.plant.store;
    if (depth_m > LEAST_WATER * description.water_depth_m) return;
    throw new IntegrationError(
      `store on day ${this.#day + 1} - expected water in it - got a store run dry - keep its level ("make_up": "float"), shut the lid, or run fewer days`,
    );
  }

  /** Sets what flows at a state, and spares the step that begins there the same evaluation. */
  #evaluate(t: number, y: number[]): void {
    this.plant.rates(t, y, this.#scratch);
    this.#integrator.know(t, y, this.#scratch);
  }

  #happen(watch: Watch, t: number): void {
    this.plant.store.prepare(this.#y);
    const happening = watch.happen(t, this.#y);
    if (++this.#happened > MOST_EVENTS_A_DAY * (this.#day + 1)) {
      throw new IntegrationError(
        `run on day ${this.#day + 1} - expected at most ${MOST_EVENTS_A_DAY} switchings a day - got more` +
          `${happening ? ` (last: ${happening.name} of ${happening.part})` : ''} - ` +
          'widen the dead band between on and off',
      );
    }
    if (happening) this.#events.push({ time_s: t, ...happening });
    if (happening?.name === 'engine.start') this.#countStart();
  }

  #draws(t: number): void {
    const { taps, openings, air } = this.plant;
    if (!taps) return;
    taps.arrive(this.#y);
    const still = taps.open.filter((o) => o.to_s > t);
    for (const closed of taps.open.filter((o) => o.to_s <= t)) {
      this.#tally.close(closed);
      this.#parts.tally?.close(closed);
    }
    while (this.#nextOpening < openings.length && openings[this.#nextOpening].from_s <= t) {
      const opening: Opening = openings[this.#nextOpening++];
      if (opening.to_s > t) still.push(opening);
    }
    const same = still.length === taps.open.length && still.every((o, i) => o === taps.open[i]);
    if (same && !taps.drawing) return;
    this.plant.store.prepare(this.#y);
    taps.change(t, this.#y, still, { room: air.around_C(taps.description.pipe.surroundings, t) });
    this.plant.store.settle(this.#y);
  }

  #timetable(t: number): void {
    const { engine, store } = this.plant;
    if (!engine) return;
    engine.atRestart(t);
    if (fails(this.plant.description.run.faults, 'engine', t)) engine.mayRun = false;
    if (engine.running === engine.mayRun) return;
    store.prepare(this.#y);
    if (engine.running) {
      engine.stop(t, this.#y, store);
      this.#log(t, 'engine.stop');
    } else if (engine.description.runs.kind === 'timetable') {
      engine.start(t, this.#y, store);
      this.#log(t, 'engine.start');
      this.#countStart();
    }
  }

  #countStart(): void {
    this.#tally.engineStarts++;
    if (this.#parts.tally) this.#parts.tally.engineStarts++;
  }

  #log(time_s: number, name: string): void {
    this.#events.push({ time_s, part: this.plant.engine?.description.name ?? '', name });
  }

  /** The first armed watch that rises through zero in a step, and when. */
  #findEvent(step: Step, armed: Watch[]): { watch: Watch; time: number } | null {
    if (armed.length === 0) return null;
    const { store } = this.plant;
    const middle = (step.t0 + step.t1) / 2;
    let found: { watch: Watch; time: number } | null = null;
    store.prepare(step.y1);
    // One bit a watch: most steps pass without an event, and nothing is to be kept for them.
    let atEnd = 0;
    for (let i = 0; i < armed.length; i++) if (armed[i].value(step.t1, step.y1) >= 0) atEnd |= 1 << i;
    store.prepare(step.near(middle, this.#state));
    let atMiddle = 0;
    for (let i = 0; i < armed.length; i++) if (armed[i].value(middle, this.#state) >= 0) atMiddle |= 1 << i;
    if ((atEnd | atMiddle) === 0) return null;
    for (const [i, watch] of armed.entries()) {
      if (!((atEnd | atMiddle) & (1 << i))) continue;
      const value = (t: number) => {
        store.prepare(step.at(t, this.#state));
        return watch.value(t, this.#state);
      };
      const until = atMiddle & (1 << i) && value(middle) >= 0 ? middle : step.t1;
      if (value(until) < 0) continue;
      const time =
        value(step.t0) >= 0 || until - step.t0 < 2 * EVENT_TIME
          ? step.t0 + EVENT_TIME
          : findRoot(value, {
              low: step.t0,
              high: until,
              tolerance: EVENT_TIME,
              name: 'time of an event',
              unit: 's',
            });
      if (!found || time < found.time) found = { watch, time: Math.min(time, step.t1) };
    }
    return found;
  }

  /** Samples and counts what a step passed, up to `until`. */
  #pass(step: Step, until: number): void {
    const { plant } = this;
    while (this.#sampler.next_s < until) {
      const t = this.#sampler.next_s;
      const state = step.at(t, this.#state);
      this.#sampler.take(t, state, () => plant.rates(t, state, this.#scratch));
    }
    const end = until < step.t1 ? step.at(until, this.#state) : step.y1;
    if (plant.regime() > 0) this.#evaluate(until, end);
    else plant.store.prepare(end);
    this.#tally.goOn(until, end);
    this.#parts.tally?.goOn(until, end);
    if (this.#sampler.next_s <= until && until >= plant.description.run.days * DAY) {
      this.#sampler.take(until, end, () => plant.rates(until, end, this.#scratch));
    }
  }
}

/**
 * Simulates a plant over its days.
 *
 * @param description from `readScenario`
 * @param options `onProgress` is told the share done after each day; returning false stops the run there
 * @returns the result, of the days done
 * @throws IntegrationError when the run cannot go on
 */
export function simulate(
  description: PlantDescription,
  options: { onProgress?: (share: number) => unknown } = {},
): Result {
  const simulation = new Simulation(description);
  const { days } = description.run;
  while (simulation.day < days) {
    simulation.advance(simulation.day + 1);
    if (options.onProgress?.(simulation.day / days) === false) break;
  }
  return simulation.result();
}
