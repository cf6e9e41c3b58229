/** Tables and curves of what breaks it. */
import type { PlantDescription } from '../../parts/description.ts';
import type { Answer, Banded, Column, Curve, Table } from '../answer.ts';
import { COURSE_S } from '../course.ts';
import type { JobDone } from '../job.ts';
import { coldOf, trappedCoils } from './by-hand.ts';
import { FAILURES, type Failure, whyNot } from './failures.ts';
import { AWAY_DAYS, LEAD_S, OFF_DAYS, type Runs } from './runs.ts';

/** Of each failure: when after it began, the temperature it leads to and the same days’ without it. */
const ROW: Record<Exclude<Failure, 'trapped'>, { after?: string; reached?: string; plain?: string }> = {
  pump: { after: 'pump_steam_s', reached: 'pump_collector_C' },
  away: { after: 'away_limit_s', reached: 'away_top_C', plain: 'away_plain_C' },
  mixing: { reached: 'mixing_tap_C', plain: 'mixing_plain_C' },
  off: { after: 'off_first_s', reached: 'off_mean_C', plain: 'plain_mean_C' },
  power: { reached: 'power_mean_C', plain: 'plain_mean_C' },
  night: { reached: 'night_collector_C', plain: 'night_freezes_C' },
  weak: { reached: 'weak_freezes_C', plain: 'night_freezes_C' },
  pipe: { after: 'pipe_ice_s' },
  cistern: { after: 'cistern_ice_s' },
  lid: {},
  sun_valve: {},
  engine_valve: {},
};

/** A day that costs so much more [K]. */
const COSTS: Partial<Record<Failure, string>> = {
  lid: 'lid_more_K',
  sun_valve: 'sun_valve_more_K',
  engine_valve: 'engine_valve_more_K',
};

/** `failures`: a row each that applies; `trapped`: a row a coil; `spared`: what does not apply, and why. */
export function breaksTables(
  plant: PlantDescription,
  facts: Readonly<Record<string, Banded>>,
): Record<string, Table> {
  const value = (key: string | undefined) => (key === undefined ? null : (facts[key]?.value ?? null));
  const applying = FAILURES.filter((failure) => whyNot(failure, plant) === null);
  const column = (key: string, dimension: Column['dimension']): Column => ({ key, dimension });
  const trapped = trappedCoils(plant, coldOf(plant));
  return {
    failures: {
      columns: [
        column('failure', 'text'),
        column('after_s', 'time'),
        column('reached_C', 'temperature'),
        column('plain_C', 'temperature'),
        column('more_K', 'temperature_difference'),
      ],
      rows: applying.map((failure) => {
        const { after, reached, plain } = failure === 'trapped' ? {} : ROW[failure];
        return [failure, value(after), value(reached), value(plain), value(COSTS[failure])];
      }),
      present: null,
    },
    trapped: {
      columns: [
        column('coil', 'text'),
        column('from_C', 'temperature'),
        column('per_K_Pa', 'pressure'),
        column('rated_Pa', 'pressure'),
        column('rated_K', 'temperature_difference'),
        column('burst_Pa', 'pressure'),
        column('burst_K', 'temperature_difference'),
      ],
      rows: trapped.map(({ coil, from_C, per_K_Pa, rated_Pa, rated_K, burst_Pa, burst_K }) => [
        coil,
        from_C,
        per_K_Pa,
        rated_Pa,
        rated_K,
        burst_Pa,
        burst_K,
      ]),
      present: null,
    },
    spared: {
      columns: [column('failure', 'text'), column('why', 'text')],
      rows: FAILURES.flatMap((failure) => {
        const why = whyNot(failure, plant);
        return why === null ? [] : [[failure, why]];
      }),
      present: null,
    },
  };
}

const HOURLY = 3600 / COURSE_S;
const PER_DAY = 86_400 / COURSE_S;

/** `away`: the store’s top over the days away; `off`: its mean over days without the engine, without power. */
export function breaksCurves({ summer, away, limitless, winter, off, power }: Runs): Answer['curves'] {
  const away_days = Array.from({ length: AWAY_DAYS * 8 + 1 }, (_, i) => i / 8);
  const off_days = Array.from({ length: 2 * OFF_DAYS * 24 + 1 }, (_, i) => i / 24);
  const curve = (
    days: readonly number[],
    y: Column,
    lines: [name: string, done: JobDone | null | undefined, of: 'top_C' | 'mean_C'][],
  ): Curve => ({
    x: { key: 'day', dimension: 'number' },
    at: [...days],
    lines: lines.flatMap(([name, done, of]) => {
      const values = done?.course?.[of];
      return values ? [{ name, y, values: days.map((day) => valueAt(values, day)) }] : [];
    }),
    present: null,
    knee: null,
  });
  const top: Column = { key: 'store_top_C', dimension: 'temperature' };
  const mean: Column = { key: 'store_mean_C', dimension: 'temperature' };
  return {
    ...(away
      ? {
          away: curve(away_days, top, [
            ['usual', summer, 'top_C'],
            ['away', away, 'top_C'],
            ['limitless', limitless, 'top_C'],
          ]),
        }
      : {}),
    off: curve(off_days, mean, [
      ['usual', winter, 'mean_C'],
      ['off', off, 'mean_C'],
      ['power', power, 'mean_C'],
    ]),
  };
}

/** The sample of an hour after the lead-in, or null where the run was not that long. */
function valueAt(values: readonly number[], day: number): number | null {
  return values[Math.round((LEAD_S / 3600) * HOURLY + day * PER_DAY)] ?? null;
}
