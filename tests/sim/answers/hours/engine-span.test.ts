import { describe, expect, it } from 'vitest';
import { chargingTime, planOf, spanEdits, spanOf } from '../../../../sim/answers/hours/engine-span.ts';
import type { PlantDescription } from '../../../../sim/index.ts';
import { readScenario } from '../../../../sim/index.ts';
import { smallScenario } from '../small.ts';

type Engine = NonNullable<PlantDescription['engine']>;

function plantWith(runs: Record<string, unknown>): PlantDescription {
  const { engine } = smallScenario() as unknown as { engine: Record<string, unknown> };
  const read = readScenario(smallScenario({ engine: { ...engine, runs } }));
  if (!read.ok) throw new Error('refused');
  return read.plant;
}
const timetable = plantWith({
  kind: 'timetable',
  spans: [
    { days: 'Mon Wed Fri', from: '16:00', to: '20:00' },
    { days: 'Sun', from: '9:00', to: '11:00' },
  ],
});
const called = plantWith({ kind: 'call for heat', below: '40 C', until: '60 C' });
const engineOf = (plant: PlantDescription) => plant.engine as Engine;
const hour = 3600;

describe('a plan of hours', () => {
  it('keeps the start of a timetable', () => {
    expect(planOf(engineOf(timetable), [])).toEqual({ from_s: 16 * hour });
  });

  it('has an engine that is called done before the evening’s first shower', () => {
    const draws = called.taps?.draws ?? [];
    expect(planOf(engineOf(called), draws)).toEqual({ until_s: 18.5 * hour });
    expect(
      planOf(
        engineOf(called),
        draws.filter((draw) => !draw.shower),
      ),
    ).toEqual({ until_s: 18 * hour });
  });

  it('lays a span within one day', () => {
    expect(spanOf({ from_s: 16 * hour }, 2 * hour)).toEqual({ from_s: 16 * hour, to_s: 18 * hour });
    expect(spanOf({ from_s: 16 * hour }, 12 * hour)).toEqual({ from_s: 12 * hour, to_s: 24 * hour });
    expect(spanOf({ until_s: 6 * hour }, 8 * hour)).toEqual({ from_s: 0, to_s: 8 * hour });
    expect(spanOf({ until_s: 18 * hour }, 0)).toBeNull();
  });

  it('is written so that the reader understands it, standing engines too', () => {
    for (const [length_s, spans] of [
      [8.25 * hour, [{ days: [0, 1, 2, 3, 4, 5, 6], from_s: 57_600 - 1800, to_s: 86_400 - 900 }]],
      [0, []],
    ] as const) {
      const [{ value }] = spanEdits({ from_s: 15.5 * hour }, length_s);
      const runs = engineOf(plantWith(value as Record<string, unknown>)).runs;
      expect(runs).toEqual({ kind: 'timetable', spans });
    }
  });
});

describe('charging', () => {
  it('takes what the timetable runs, a day of the mean week', () => {
    expect(chargingTime(engineOf(timetable))).toBeCloseTo(((3 * 4 + 2) / 7) * hour, 9);
  });
  it('takes nothing of an engine that is called for heat', () => {
    expect(chargingTime(engineOf(called))).toBe(0);
  });
});
