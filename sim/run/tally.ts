/**
 * Counts what a run's figures need while it goes: extremes, and the time a value spends past a limit. Between
 * two observed instants every value is taken as a straight line, so a crossing is not rounded to a step.
 */
import type { Opening } from '../parts/draw-calendar.ts';
import type { Plant } from '../plant/plant.ts';

/** A tap counts as warm enough to within this [K]. */
export const WARM_ENOUGH = 1;
/** Hotter than this can scald an adult in minutes [C] (120 F; see the words on scalds). */
export const SCALD_FROM = 49;
/** A stopped collector hotter than this stands in steam [C] (common practice). */
const STAGNANT_FROM = 120;
/** A shower ran cold if it was short for longer than this [s]. */
export const COLD_SHOWER_FROM = 20;

/** A draw that is over: when it opened, and for how long it ran cold once the pipe's plug was through [s]. */
export interface ClosedDraw {
  from_s: number;
  cold_s: number;
  shower: boolean;
}

export interface Extreme {
  value: number;
  time_s: number;
}

const lowest = (): Extreme => ({ value: Number.POSITIVE_INFINITY, time_s: 0 });
const highest = (): Extreme => ({ value: Number.NEGATIVE_INFINITY, time_s: 0 });

interface Instant {
  time_s: number;
  top_C: number;
  mean_C: number;
  collector_C: number;
  return_C: number;
  hot_line_C: number;
  limits_C: number[];
}

export class Tally {
  readonly topLow = lowest();
  readonly topHigh = highest();
  readonly collectorLow = lowest();
  readonly collectorHigh = highest();
  readonly returnLow = lowest();
  readonly coldLow = lowest();
  readonly hotLineHigh = highest();
  readonly pressureLow = lowest();
  readonly flowLow = lowest();
  readonly speedHigh = highest();
  readonly loopSpeedHigh = highest();
  /** Hottest and time over, by sheet of `store.walls.limits`. */
  readonly sheets: { hottest_C: number; over_s: number }[];
  /** Time counted [s], and the store's mean temperature over it [C s]. */
  counted_s = 0;
  store_Cs = 0;
  wanted_m3 = 0;
  given_m3 = 0;
  warm_m3 = 0;
  cold_m3 = 0;
  waiting_m3 = 0;
  coldShower_s = 0;
  coldDraw_s = 0;
  scald_s = 0;
  pumpAtLimit_s = 0;
  engine_s = 0;
  engineCold_s = 0;
  engineStarts = 0;
  pump_s = 0;
  stagnant_s = 0;
  freezing_s = 0;
  firstCold_s: number | null = null;
  /** When the water no longer covered half of a coil that is used, or a tenth of its depth was left [s]. */
  dry_s: number | null = null;
  showers = 0;
  showersCold = 0;
  /** Draws that have closed, in that order. */
  readonly closed: ClosedDraw[] = [];
  readonly #plant: Plant;
  readonly #dryBelow_m: number;
  readonly #coldOf = new Map<Opening, number>();
  #last: Instant;

  constructor(plant: Plant) {
    this.#plant = plant;
    this.#dryBelow_m = dryBelow_m(plant);
    this.sheets = plant.store.walls.limits.map(() => ({ hottest_C: Number.NEGATIVE_INFINITY, over_s: 0 }));
    this.#last = { time_s: 0, top_C: 0, mean_C: 0, collector_C: 0, return_C: 0, hot_line_C: 0, limits_C: [] };
  }

  /** Starts a span: the plant has been evaluated at (t, y) in its new modes. */
  begin(t: number, y: ArrayLike<number>): void {
    this.#last = this.#look(t, y);
    this.#extremes(this.#last, y);
  }

  /** Goes on to (t, y), where the plant has been evaluated. */
  goOn(t: number, y: ArrayLike<number>): void {
    const a = this.#last;
    const b = this.#look(t, y);
    const dt = t - a.time_s;
    const { engine, collector, taps } = this.#plant;
    this.#extremes(b, y);
    this.counted_s += dt;
    this.store_Cs += (dt * (a.mean_C + b.mean_C)) / 2;
    for (const [i, sheet] of this.sheets.entries()) {
      const limit = this.#plant.store.walls.limits[i].max_C;
      sheet.over_s += dt * shareAbove(a.limits_C[i], b.limits_C[i], limit);
    }
    if (engine?.running) {
      this.engine_s += dt;
      const limit = engine.description.coldest_return_C;
      if (engine.flow_kg_s > 0) this.engineCold_s += dt * (1 - shareAbove(a.return_C, b.return_C, limit));
    }
    if (collector) {
      if (collector.pumping) this.pump_s += dt;
      else this.stagnant_s += dt * shareAbove(a.collector_C, b.collector_C, STAGNANT_FROM);
      if (collector.description.loop === 'filled') {
        this.freezing_s += dt * (1 - shareAbove(a.collector_C, b.collector_C, collector.freezing_C));
      }
    }
    if (taps && taps.open.length > 0) this.#draws(a, b, dt);
    this.#last = b;
  }

  #draws(a: Instant, b: Instant, dt: number): void {
    const taps = this.#plant.taps;
    if (!taps) return;
    let given = 0;
    let wanted = 0;
    for (const opening of taps.open) {
      const { draw } = opening;
      const flow = taps.flowOf(draw);
      given += flow;
      wanted += draw.flow_m3_s;
      const warm = flow > 0 ? shareAbove(a.hot_line_C, b.hot_line_C, draw.wanted_C - WARM_ENOUGH) : 0;
      this.wanted_m3 += draw.flow_m3_s * dt;
      this.given_m3 += flow * dt;
      this.warm_m3 += flow * dt * warm;
      const cold = dt * (1 - warm);
      if (cold <= 0) continue;
      if (taps.plug && flow > 0) {
        this.waiting_m3 += flow * cold;
        continue;
      }
      this.cold_m3 += draw.flow_m3_s * cold;
      this.firstCold_s ??= b.time_s - cold;
      if (draw.shower) this.coldShower_s += cold;
      else this.coldDraw_s += cold;
      this.#coldOf.set(opening, (this.#coldOf.get(opening) ?? 0) + cold);
    }
    this.scald_s += dt * shareAbove(a.hot_line_C, b.hot_line_C, SCALD_FROM);
    if (given < 0.95 * wanted) this.pumpAtLimit_s += dt;
  }

  /** A draw has closed. */
  close(opening: Opening): void {
    const cold_s = this.#coldOf.get(opening) ?? 0;
    this.closed.push({ from_s: opening.from_s, cold_s, shower: opening.draw.shower });
    if (!opening.draw.shower) return;
    this.showers++;
    if (cold_s > COLD_SHOWER_FROM) this.showersCold++;
  }

  #look(t: number, y: ArrayLike<number>): Instant {
    const { store, engine, collector, taps, air } = this.#plant;
    if (store.depth_m < this.#dryBelow_m) this.dry_s ??= t;
    const top_C = store.layer_C[store.layers - 1];
    const around = air.around_C(store.description.surroundings, t);
    return {
      time_s: t,
      top_C,
      mean_C: store.mean_C,
      collector_C: collector?.outlet_C(y) ?? 0,
      return_C: engine?.return_C ?? 0,
      hot_line_C: taps?.hot_line_C ?? 0,
      limits_C: store.walls.limits.map((limit) => top_C - limit.drop_share * (top_C - around)),
    };
  }

  #extremes(at: Instant, y: ArrayLike<number>): void {
    const { engine, collector, taps, supply } = this.#plant;
    lower(this.topLow, at.top_C, at.time_s);
    higher(this.topHigh, at.top_C, at.time_s);
    for (const [i, sheet] of this.sheets.entries())
      sheet.hottest_C = Math.max(sheet.hottest_C, at.limits_C[i]);
    if (engine?.running && engine.flow_kg_s > 0.01) {
      lower(this.returnLow, at.return_C, at.time_s);
      higher(this.loopSpeedHigh, engine.coil.velocity(engine.flow_kg_s, at.return_C), at.time_s);
    }
    if (collector) {
      lower(this.collectorLow, at.collector_C, at.time_s);
      higher(this.collectorHigh, at.collector_C, at.time_s);
    }
    const cold = supply.cold_C(at.time_s, y);
    lower(this.coldLow, cold, at.time_s);
    if (!taps?.drawing) return;
    higher(this.hotLineHigh, at.hot_line_C, at.time_s);
    lower(this.pressureLow, taps.pressure_Pa, at.time_s);
    for (const { draw } of taps.open) lower(this.flowLow, taps.flowOf(draw), at.time_s);
    higher(this.speedHigh, taps.coil.velocity(taps.coil_kg_s, (cold + at.hot_line_C) / 2), at.time_s);
  }
}

const DRY_SHARE = 0.1;

/** Depth below which the store counts as run dry [m]. */
function dryBelow_m({ engine, collector, taps, store }: Plant): number {
  const used = [engine, collector, taps].flatMap((part) => (part ? [part.coil.description] : []));
  const halves = used.map(({ bottom_m, top_m }) => (bottom_m + top_m) / 2);
  return Math.max(DRY_SHARE * store.description.water_depth_m, ...halves);
}

function lower(extreme: Extreme, value: number, time_s: number): void {
  if (value < extreme.value) Object.assign(extreme, { value, time_s });
}

function higher(extreme: Extreme, value: number, time_s: number): void {
  if (value > extreme.value) Object.assign(extreme, { value, time_s });
}

/** Share of a straight line from a to b that lies at or above a limit. */
function shareAbove(a: number, b: number, limit: number): number {
  if (a >= limit && b >= limit) return 1;
  if (a < limit && b < limit) return 0;
  return b > a ? (b - limit) / (b - a) : (a - limit) / (a - b);
}
