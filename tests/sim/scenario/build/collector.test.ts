import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../../../sim/scenario/index.ts';
import { collector, sound } from './support.ts';

type Collector = NonNullable<Scenario['collector']>;

function made(parts: Partial<Collector> = {}, more: Partial<Scenario> = {}) {
  const read = sound({ collector: { ...collector, ...parts }, ...more });
  if (!read.plant.collector) throw new Error('no collector');
  return { ...read, collector: read.plant.collector };
}

describe('the collector', () => {
  it('of tubes counts their absorbers', () => {
    const { collector: c } = made({ kind: 'evacuated tubes', size: { by: 'tubes', tubes: 30 } });
    expect(c).toMatchObject({ tubes: 30, basis: 'absorber', area_m2: expect.closeTo(2.4, 9) });
    expect(c.eta0).toBeGreaterThanOrEqual(0.6);
    expect(c.eta0).toBeLessThanOrEqual(0.7);
    // 0.045 gpm a tube.
    expect((c.pump_flow_m3_s * 60) / 3.785411784e-3).toBeCloseTo(1.35, 9);
  });

  it('by area moves 0.03 gpm a square foot', () => {
    const size = { by: 'area', area: '50 ft2', basis: 'aperture' } as const;
    const { collector: c } = made({ size });
    expect((c.pump_flow_m3_s * 60) / 3.785411784e-3).toBeCloseTo(1.5, 9);
  });

  it.each(['evacuated tubes', 'flat plate'] as const)(
    'of %s keeps less light per gross than per aperture area',
    (kind) => {
      const eta0 = (basis: 'gross' | 'aperture') =>
        made({ kind, size: { by: 'area', area: '4 m2', basis } }).collector.eta0;
      expect(eta0('gross')).toBeLessThan(eta0('aperture'));
    },
  );

  it('tells of its typical rating with a band of its own', () => {
    const { byPath } = made({ kind: 'evacuated tubes', size: { by: 'tubes', tubes: 30 } });
    expect(byPath.get('collector.rating.eta0')).toMatchObject({ value: '0.65', band: ['0.60', '0.70'] });
    expect(byPath.has('collector.rating.a1')).toBe(true);
  });

  it('has factors for slanting sun: a curve for a plate, two for tubes', () => {
    expect(made().collector.incidence).toEqual({ kind: 'single', b0: 0.15 });
    const { incidence } = made({ kind: 'evacuated tubes' }).collector;
    if (incidence.kind !== 'two-way') throw new Error('wrong kind');
    // physics.md 8: crosswise peaks of 1.2 to 1.45 at 45 to 60 degrees, lengthwise like a plate.
    expect(Math.max(...incidence.crosswise)).toBeGreaterThan(1.2);
    expect(Math.max(...incidence.crosswise)).toBeLessThan(1.45);
    expect(Math.max(...incidence.lengthwise)).toBe(1);
    expect(incidence.angle_rad.at(-1)).toBeCloseTo(Math.PI / 2, 9);
  });

  it('faces the equator at latitude and 15 degrees', () => {
    expect(made().collector).toMatchObject({
      azimuth_rad: Math.PI,
      tilt_rad: expect.closeTo((59 * Math.PI) / 180, 9),
    });
    const south = made({}, { site: { latitude: '30 S' } }).collector;
    expect(south).toMatchObject({ azimuth_rad: 0, tilt_rad: expect.closeTo((45 * Math.PI) / 180, 9) });
  });

  it('holds glycol in a filled loop and water in one that drains', () => {
    expect(made().collector.fluid.kind).toBe('propylene glycol');
    expect(made({ loop: 'drain-back' }).collector.fluid).toEqual({ kind: 'water', mass_share: 0 });
  });

  it('draws no heat back past a valve or from a drained loop', () => {
    expect(made({ check_valve: false }).collector.night_loss_W_K).toBe(3);
    expect(made({ check_valve: true }).collector.night_loss_W_K).toBe(0);
    expect(made({ check_valve: false, loop: 'drain-back' }).collector.night_loss_W_K).toBe(0);
  });

  it('has its horizon in order around the compass', () => {
    const horizon = [
      { direction: 'west', height: '10 deg' },
      { direction: '360 deg', height: '1 deg' },
      { direction: 'SE', height: '5 deg' },
    ];
    const { collector: c } = made({ horizon });
    expect(c.horizon.map(({ azimuth_rad }) => Math.round((azimuth_rad * 180) / Math.PI))).toEqual([
      0, 135, 270,
    ]);
  });

  it('is noted when its loop freezes in this climate', () => {
    const cold = {
      kind: 'monthly',
      air: Array(12).fill('-15 C'),
      sun: Array(12).fill('2 kWh/m2 per day'),
    } as const;
    const water = made({ fluid: { kind: 'water' } }, { weather: cold });
    expect(water.notes).toEqual([
      { path: 'collector.fluid', text: expect.stringContaining('begins to freeze at 0 C (32 F)') },
    ]);
    expect(made({ fluid: { kind: 'water' }, loop: 'drain-back' }, { weather: cold }).notes).toEqual([]);
    expect(made({ fluid: { kind: 'propylene glycol', share: '55 %' } }, { weather: cold }).notes).toEqual([]);
  });

  it('is noted when its controller’s dead band is narrow', () => {
    const { notes } = made({ on: '5 K', off: '4 K' });
    expect(notes).toEqual([{ path: 'collector.off', text: expect.stringContaining('only 1 K') }]);
  });

  it('is noted when its limit is close to boiling', () => {
    expect(made({ high_limit: '98 C' }).notes).toEqual([
      { path: 'collector.high_limit', text: expect.stringContaining('boiling') },
    ]);
  });
});
