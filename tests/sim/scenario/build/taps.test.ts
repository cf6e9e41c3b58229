import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../../../sim/scenario/index.ts';
import { sound } from './support.ts';

type Taps = NonNullable<Scenario['taps']>;

function made(parts: Partial<Taps>) {
  const read = sound({ taps: { coil: 'coil', ...parts } });
  if (!read.plant.taps) throw new Error('no taps');
  return { ...read, taps: read.plant.taps };
}
const draw = { name: 'dishes', at: '18:00', flow: '1 gpm', temperature: '110 F' };

describe('the household', () => {
  it('has a mixing valve unless the file says that none is fitted', () => {
    expect(made({}).taps.mixing_valve_C).toBeCloseTo(48.889, 3);
    expect(made({ mixing_valve: { fitted: false } }).taps.mixing_valve_C).toBeNull();
    expect(made({ mixing_valve: { fitted: true, set: '45 C' } }).taps.mixing_valve_C).toBe(45);
  });

  it('draws a volume for as long as its flow takes', () => {
    const { draws } = made({ draws: [{ ...draw, volume: '4 gal' }] }).taps;
    expect(draws).toEqual([
      expect.objectContaining({
        at_s: 64_800,
        duration_s: expect.closeTo(240, 9),
        outlet: { kind: 'tap' },
        shower: false,
      }),
    ]);
  });

  it('draws from a head at the pressure it was measured at', () => {
    const head = (parts: object) =>
      made({ draws: [{ ...draw, lasts: '3 min', outlet: 'head', ...parts }] }).taps.draws[0].outlet;
    expect(head({})).toEqual({ kind: 'head', rated_Pa: expect.closeTo(137_895, 0) });
    expect(head({ rated_pressure: '2 bar' })).toEqual({ kind: 'head', rated_Pa: 200_000 });
  });

  it('has its draws in the order of the day', () => {
    const { draws } = made({
      showers: [{ at: '21:00' }, { at: '6:00', people: 2 }],
      draws: [{ ...draw, lasts: '1 min' }],
      pattern: { name: 'EU profile XS' },
    }).taps;
    const times = draws.map((d) => d.at_s);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(draws).toHaveLength(7);
    expect(draws.filter((d) => d.shower)).toHaveLength(3);
  });

  it('that wants more than its valve lets through is noted', () => {
    const { notes } = made({ draws: [{ ...draw, lasts: '1 min', temperature: '130 F' }] });
    expect(notes).toEqual([{ path: 'taps.mixing_valve.set', text: expect.stringContaining('dishes') }]);
  });

  it('loses heat from its pipe through the foam', () => {
    const conductance = (foam: string) => made({ pipe: { foam } }).taps.pipe.conductance_W_mK;
    expect(conductance('1/2 in')).toBeLessThan(conductance('0 in') / 2);
    expect(made({ pipe: { conductance: '0.3 W/(m K)' } }).taps.pipe.conductance_W_mK).toBeCloseTo(0.3, 12);
  });
});

describe('the backup heater', () => {
  it('is what the file says, on propane at 80 % otherwise', () => {
    const { plant } = sound({ taps: { coil: 'coil' }, backup: { max_heat: '10 kW', set: '45 C' } });
    expect(plant.backup).toMatchObject({
      fuel: { name: 'propane' },
      efficiency: 0.8,
      max_heat_W: 10_000,
      set_C: 45,
    });
  });
});
