/**
 * A row of showers as a run: days of the household as usual, then a day on which nothing is drawn but the row.
 * Made of the plant as the scenario's reader gives it, so that the run is the simulation's own.
 */
import type { Draw, EngineDescription, PlantDescription } from '../../parts/description.ts';
import type { ClosedDraw } from '../../run/tally.ts';
import { householdOf, showerOf } from '../household.ts';

const DAY = 86_400;
/** The household's week tells the row's day from the days before it. */
export const MOST_DULL_DAYS = 6;

export interface ShowerRow {
  /** Days before the row's day, 0..6, on which the household draws as usual. */
  day: number;
  /** Starts of the showers, after the midnight that begins the row's day [s]. */
  starts_s: number[];
  /**
   * What heats meanwhile: nothing (no engine, no sun), the scenario's own engine and sun, or the engine without
   * pause from a time of the row's day on [s].
   */
  sources: 'none' | 'planned' | { engine_from_s: number };
}

/**
 * The plant of a run that ends with the row's day, or as many whole days later as the row lasts. The backup
 * heater is left out: it would hide when the store gives up.
 *
 * @throws RangeError without a household, or for days out of range
 */
export function rowPlant(plant: PlantDescription, { day, starts_s, sources }: ShowerRow): PlantDescription {
  if (!(Number.isInteger(day) && day >= 0 && day <= MOST_DULL_DAYS)) {
    throw new RangeError(
      `days before the showers - expected a whole number, 0 to ${MOST_DULL_DAYS} - got ${day} - ask for fewer`,
    );
  }
  const { taps } = householdOf(plant);
  const shower = showerOf(taps);
  const weekday = (plant.run.first_weekday + day) % 7;
  const before = Array.from({ length: day }, (_, i) => (plant.run.first_weekday + i) % 7);
  const usual = taps.draws.map((draw) => ({ ...draw, days: draw.days.filter((d) => before.includes(d)) }));
  const row = starts_s.map(
    (at_s, i): Draw => ({ ...shower, name: `shower ${i + 1}`, days: [weekday], at_s }),
  );
  const lasts_s = Math.max(0, ...starts_s) + shower.duration_s;
  const days = day + Math.max(1, Math.ceil(lasts_s / DAY));
  return {
    ...plant,
    ...heatedBy(plant, sources, day),
    backup: null,
    taps: { ...taps, draws: [...usual.filter((draw) => draw.days.length > 0), ...row] },
    run: { ...plant.run, days, interval_s: DAY },
  };
}

/** How long each shower of a row ran cold [s], in the row's order. */
export function coldOfRow(closed: readonly ClosedDraw[], { day, starts_s }: ShowerRow): number[] {
  const at = new Map(closed.map(({ from_s, cold_s }) => [from_s, cold_s]));
  return starts_s.map((start) => at.get(day * DAY + start) ?? 0);
}

function heatedBy(
  plant: PlantDescription,
  sources: ShowerRow['sources'],
  day: number,
): Pick<PlantDescription, 'engine' | 'weather'> {
  const { engine, weather, run } = plant;
  if (sources === 'planned') return { engine, weather };
  const dark = new Float64Array(weather.global_horizontal_W_m2.length);
  const night = {
    ...weather,
    global_horizontal_W_m2: dark,
    direct_normal_W_m2: dark,
    diffuse_horizontal_W_m2: dark,
  };
  if (!engine) return { engine, weather: night };
  const first = (run.first_weekday + day) % 7;
  // The days before the row's stay without.
  const later = Array.from({ length: 6 - day }, (_, i) => (first + 1 + i) % 7);
  const spans =
    sources === 'none'
      ? []
      : [
          { days: [first], from_s: sources.engine_from_s, to_s: DAY },
          { days: later, from_s: 0, to_s: DAY },
        ];
  return {
    engine: { ...engine, runs: { kind: 'timetable', spans } } satisfies EngineDescription,
    weather: night,
  };
}

/** Pause between showers where the household's draws do not say [s]. */
const USUAL_GAP_S = 300;
const LONGEST_GAP_S = 3600;

/** The household's own pause between two showers of a day [s], the shortest; five minutes where it has none. */
export function gapOf({ draws }: { draws: readonly Draw[] }): number {
  const showers = draws.filter((draw) => draw.shower).sort((a, b) => a.at_s - b.at_s);
  const gaps = showers
    .slice(1)
    .map((draw, i) => draw.at_s - (showers[i].at_s + showers[i].duration_s))
    .filter((gap) => gap >= 0 && gap <= LONGEST_GAP_S);
  return gaps.length > 0 ? Math.min(...gaps) : USUAL_GAP_S;
}
