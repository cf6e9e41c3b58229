/** Collectors of other sizes than the scenario's, and what they cost. */
import type { CollectorDescription, PlantDescription, Prices } from '../../parts/description.ts';
import type { Scenario } from '../../scenario/index.ts';
import type { Edit } from '../edit.ts';

/** Sizes as multiples of the present one. */
const FACTORS = [0, 0.5, 1, 1.5, 2, 3];
/** Most that a scenario may have. */
const MOST_TUBES = 2000;
const MOST_AREA_M2 = 2000;

export interface Size {
  area_m2: number;
  /** Null where the scenario gives an area. */
  tubes: number | null;
  present: boolean;
  edits: Edit[];
}

/** From no collector to three times the present one; in whole tubes where tubes are counted. */
export function sizesAround(collector: CollectorDescription, scenario: Scenario): Size[] {
  const { area_m2, tubes } = collector;
  if (tubes !== null) {
    const counts = FACTORS.map((factor) => Math.min(MOST_TUBES, Math.round(factor * tubes)));
    return [...new Set(counts)].map((count) => {
      const edits = sizeEdits(collector, scenario, count / tubes, {
        path: 'collector.size.tubes',
        value: count,
      });
      return { area_m2: (area_m2 * count) / tubes, tubes: count, present: count === tubes, edits };
    });
  }
  const areas = FACTORS.map((factor) => Math.min(MOST_AREA_M2, factor * area_m2));
  return [...new Set(areas)].map((area) => {
    const size = { path: 'collector.size.area', value: `${area} m2` };
    const edits = sizeEdits(collector, scenario, area / area_m2, size);
    return { area_m2: area, tubes: null, present: area === area_m2, edits };
  });
}

/** Edits for a size so many times the present one: a flow that the file gives goes with it, as one it leaves out does. */
export function sizeEdits(
  collector: CollectorDescription,
  scenario: Scenario,
  factor: number,
  size: Edit,
): Edit[] {
  if (factor === 0) return [{ path: 'collector', value: undefined }];
  if (factor === 1) return [];
  const flow = { path: 'collector.pump_flow', value: `${60_000 * factor * collector.pump_flow_m3_s} L/min` };
  return scenario.collector?.pump_flow === undefined ? [size] : [size, flow];
}

/** What a size costs with its mounting. */
export function sizePrice({ area_m2, tubes }: Size, prices: Prices): number {
  const { collector_per_tube, collector_per_m2 } = prices;
  return tubes !== null && collector_per_tube !== null
    ? tubes * collector_per_tube
    : area_m2 * collector_per_m2;
}

/**
 * Area above which another square metre brings less than half of what the first brought; null where none does
 * (a rule of this tool: judgement). Between sizes, what a square metre brings changes evenly.
 *
 * @param areas [m2] ascending; @param heat_J over the year at each, null where not known
 */
export function stopsPaying(areas: readonly number[], heat_J: readonly (number | null)[]): number | null {
  const known = areas.flatMap((area, i) => {
    const heat = heat_J[i];
    return heat === null ? [] : [{ area, heat }];
  });
  const gains = known.slice(1).map(({ area, heat }, i) => ({
    at: (area + known[i].area) / 2,
    per_m2: (heat - known[i].heat) / (area - known[i].area),
  }));
  const half = gains.length > 0 ? gains[0].per_m2 / 2 : 0;
  const past = gains.findIndex(({ per_m2 }) => per_m2 < half);
  if (past < 1 || half <= 0) return null;
  const [before, after] = [gains[past - 1], gains[past]];
  return before.at + ((before.per_m2 - half) / (before.per_m2 - after.per_m2)) * (after.at - before.at);
}

/** First day of the seven in a row on which the collector's glass takes in least [day of the year]. */
export function dullestWeek(absorbed_W_m2: ArrayLike<number>): number {
  const days = absorbed_W_m2.length / 24;
  const sumOf = (day: number) => {
    let sum = 0;
    for (let hour = 24 * day; hour < 24 * (day + 7); hour++)
      sum += absorbed_W_m2[hour % absorbed_W_m2.length];
    return sum;
  };
  let [dullest, least] = [0, Number.POSITIVE_INFINITY];
  for (let day = 0; day < days; day++) {
    const sum = sumOf(day);
    if (sum < least) [dullest, least] = [day, sum];
  }
  return dullest;
}

/** @throws RangeError without a collector */
export function collectorOf({ collector }: PlantDescription): CollectorDescription {
  if (collector) return collector;
  throw new RangeError(
    'collector - expected a collector to ask of - got none - add "collector", of any size, to the scenario',
  );
}
