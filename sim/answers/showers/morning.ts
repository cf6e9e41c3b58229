/** The household's real day: every draw of the scenario's worst day, as the scenario heats and draws. */
import type { PlantDescription } from '../../parts/description.ts';
import { drawCalendar } from '../../parts/draw-calendar.ts';
import type { Series } from '../../run/result.ts';
import { Simulation } from '../../run/simulation.ts';
import { COLD_SHOWER_FROM, WARM_ENOUGH } from '../../run/tally.ts';

const DAY = 86_400;
/** Close enough for a draw of half a minute, far enough for a week [s]. */
const INTERVAL_S = 5;
const LONGEST_DAYS = 7;

export interface DrawOfDay {
  name: string;
  at_s: number;
  lasts_s: number;
  shower: boolean;
  wanted_C: number;
  /** Until the hot line was warm enough; null where it never was. */
  wait_s: number | null;
  /** Under the wanted temperature once it had been warm. */
  cold_s: number;
  /** Coldest of that. */
  lowest_C: number | null;
  hottest_C: number | null;
}

export interface RealDay {
  /** Day of the run, 0 the first. */
  day: number;
  draws: DrawOfDay[];
  showers: number;
  warm_showers: number;
}

/** The day of the scenario's first week on which showers (or else draws) run cold for longest; the last of equals. */
export function realDay(plant: PlantDescription): RealDay {
  const days = Math.min(LONGEST_DAYS, plant.run.days);
  const simulation = new Simulation({ ...plant, run: { ...plant.run, days, interval_s: INTERVAL_S } });
  simulation.advance(days);
  const { series } = simulation.result();
  const openings = drawCalendar(plant.taps?.draws ?? [], days, plant.run.first_weekday);
  const seen = openings.map(({ draw, from_s, to_s }) => ({
    day: Math.floor(from_s / DAY),
    told: drawOf(series, { draw, from_s, to_s }),
  }));
  let worst: RealDay | null = null;
  let coldest = -1;
  for (let day = 0; day < days; day++) {
    const draws = seen.filter((each) => each.day === day).map(({ told }) => told);
    const showers = draws.filter((draw) => draw.shower);
    const short = (draw: DrawOfDay) => (draw.wait_s === null ? draw.lasts_s : draw.cold_s);
    const cold = (showers.length > 0 ? showers : draws).reduce((sum, draw) => sum + short(draw), 0);
    if (cold < coldest) continue;
    coldest = cold;
    const warm = showers.filter((draw) => draw.wait_s !== null && draw.cold_s <= COLD_SHOWER_FROM);
    worst = { day, draws, showers: showers.length, warm_showers: warm.length };
  }
  return worst ?? { day: 0, draws: [], showers: 0, warm_showers: 0 };
}

function drawOf(
  { time_s, channels, interval_s }: Series,
  { draw, from_s, to_s }: ReturnType<typeof drawCalendar>[number],
): DrawOfDay {
  let wait_s: number | null = null;
  let cold_s = 0;
  let lowest_C: number | null = null;
  let hottest_C: number | null = null;
  const first = Math.floor(from_s / interval_s) + 1;
  for (let i = first; i < time_s.length && time_s[i] < to_s; i++) {
    const hot = channels.hot_line_C[i];
    if (!Number.isFinite(hot)) continue;
    hottest_C = Math.max(hottest_C ?? hot, hot);
    const warm = hot >= draw.wanted_C - WARM_ENOUGH;
    if (wait_s === null) {
      if (warm) wait_s = time_s[i] - from_s;
      continue;
    }
    lowest_C = Math.min(lowest_C ?? hot, hot);
    if (!warm) cold_s += interval_s;
  }
  return {
    name: draw.name,
    at_s: draw.at_s,
    lasts_s: to_s - from_s,
    shower: draw.shower,
    wanted_C: draw.wanted_C,
    wait_s,
    cold_s,
    lowest_C,
    hottest_C,
  };
}
