/**
 * The quick look for a hand that drags: the first days of the run with few layers and a loose tolerance, the same
 * equations all the same. Measured on the examples against the full run over the same days (tests, bench): the top
 * of the store within 1 K rms, household heat within 2 %, solar heat within 5 %.
 */
import type { PlantDescription } from '../parts/description.ts';
import type { Result } from '../run/result.ts';
import { simulate } from '../run/simulation.ts';

const MOST_DAYS = 3;
const MOST_LAYERS = 8;
const LOOSEST = 1e-3;
const SELDOM_S = 600;

/** The plant as the quick look runs it, over so many days at most. */
export function forEstimate(plant: PlantDescription, mostDays = MOST_DAYS): PlantDescription {
  const { days, layers, tolerance, interval_s } = plant.run;
  return {
    ...plant,
    run: {
      ...plant.run,
      days: Math.min(days, mostDays),
      layers: Math.min(layers, MOST_LAYERS),
      tolerance: Math.max(tolerance, LOOSEST),
      interval_s: Math.max(interval_s, SELDOM_S),
    },
  };
}

/** The quick look; `result.days` says how far it reaches. @throws IntegrationError when the run cannot go on */
export function estimate(plant: PlantDescription): Result {
  return simulate(forEstimate(plant));
}

export interface EstimateError {
  /** Store top against the full run's, over the samples that both have [K]. */
  top_rms_K: number;
  /** Heats over the same days, as shares of the full run's; null where it has none. */
  household: number | null;
  solar: number | null;
}

/** How far a quick look is off. `full` has run as many days, and was sampled at least as often. */
export function estimateError(quick: Result, full: Result): EstimateError {
  const off = (key: string) => {
    const [a, b] = [quick, full].map(({ figures }) => figures[key] ?? 0);
    return b > 0 ? a / b - 1 : null;
  };
  let squares = 0;
  let many = 0;
  const times = new Map(Array.from(full.series.time_s, (time_s, i) => [time_s, i]));
  quick.series.time_s.forEach((time_s, i) => {
    const same = times.get(time_s);
    if (same === undefined) return;
    squares += (topOf(quick, i) - topOf(full, same)) ** 2;
    many++;
  });
  return {
    top_rms_K: many > 0 ? Math.sqrt(squares / many) : 0,
    household: off('household_heat_J'),
    solar: off('solar_heat_J'),
  };
}

function topOf({ series: { layer_C, layers } }: Result, sample: number): number {
  return layer_C[(sample + 1) * layers - 1];
}
