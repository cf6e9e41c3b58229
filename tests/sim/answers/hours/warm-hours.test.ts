import { beforeAll, describe, expect, it } from 'vitest';
import { planOf } from '../../../../sim/answers/hours/engine-span.ts';
import {
  coldShare,
  countedWeek,
  type Found,
  tenDays,
  warmHours,
} from '../../../../sim/answers/hours/warm-hours.ts';
import { Sweep } from '../../../../sim/answers/sweep.ts';
import { doHere, doJob, readScenario } from '../../../../sim/index.ts';
import { smallScenario } from '../small.ts';

const scenario = smallScenario();
const read = readScenario(scenario);
if (!read.ok || !read.plant.engine) throw new Error('the small scenario is refused');
const { plant } = read;
const plan = planOf(read.plant.engine, plant.taps?.draws ?? []);

/** Share of cold showers in a direct run of ten days. */
function coldAt(month: number, time_s: number): number {
  const done = doJob(scenario, tenDays(plan, month, time_s, []), {});
  if (!done.ok) throw new Error(done.problem);
  return coldShare(plant, countedWeek(done));
}

describe('hours found on real runs', () => {
  let found: (Found | null)[];
  const months = [0, 6];
  beforeAll(async () => {
    const cases = months.map((month) => ({ month, edits: [], guess: 8 }));
    found = await warmHours(new Sweep(doHere(scenario, {}), 1), plant, plan, cases);
  }, 60_000);

  it('are enough, and a quarter of an hour less is not', () => {
    found.forEach((each, i) => {
      const time_s = each?.time_s ?? Number.NaN;
      expect(time_s).toBeGreaterThan(0);
      expect(coldAt(months[i], time_s)).toBeLessThan(0.01);
      expect(coldAt(months[i], time_s - 900)).toBeGreaterThanOrEqual(0.01);
    });
  });

  it('run the engine for as long every day of the week that counts', () => {
    for (const each of found) expect(each?.week.engine_s).toBeCloseTo(7 * (each?.time_s ?? 0), 3);
  });

  it('need more where the showers are longer', async () => {
    const longer = [{ path: 'taps.showers[0].lasts', value: '9 min' }];
    const [more] = await warmHours(new Sweep(doHere(scenario, {}), 1), plant, plan, [
      { month: 0, edits: longer, guess: 8 },
    ]);
    expect(more?.time_s).toBeGreaterThan(found[0]?.time_s ?? 0);
  });

  it('count the week after three days', () => {
    expect(
      countedWeek({
        ok: true,
        figures: {},
        parts: [
          { from_day: 0, days: 3, figures: { a: 1 } },
          { from_day: 3, days: 7, figures: { a: 2 } },
        ],
        evaluations: 0,
        residual_percent: 0,
      }),
    ).toEqual({ a: 2 });
  });
});
