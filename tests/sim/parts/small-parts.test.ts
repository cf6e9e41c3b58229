/** Air, liquids' tables, the calendar of draws and the layout of the state. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Air } from '../../../sim/parts/air.ts';
import type { Fluid } from '../../../sim/parts/description.ts';
import { drawCalendar } from '../../../sim/parts/draw-calendar.ts';
import { Layout, placeOf } from '../../../sim/parts/layout.ts';
import { liquid, lookUp, REFERENCE_HEAT_CAPACITY, temperatureOf } from '../../../sim/parts/liquid.ts';
import { fluidProperties } from '../../../sim/physics/fluid.ts';
import { waterEnthalpy } from '../../../sim/physics/water.ts';
import { drawOf } from '../support/plant.ts';
import { steadyWeather } from '../support/weather.ts';

const DAY = 86_400;

describe('air', () => {
  it('of a room is warmest when it is said to be, by half its swing', () => {
    const air = new Air(steadyWeather(0), 0, 0);
    const room = { kind: 'room', mean_C: 18, swing_K: 6, warmest_s: 54_000, relative_humidity: 0.5 } as const;
    expect(air.around_C(room, 54_000)).toBeCloseTo(21, 12);
    expect(air.around_C(room, 54_000 + DAY / 2)).toBeCloseTo(15, 12);
    expect(air.around_C(room, 54_000 + 3.25 * DAY)).toBeCloseTo(18, 9);
  });

  it('outdoors keeps each hour’s mean, and goes on from the year’s last hour to its first', () => {
    const weather = steadyWeather(0);
    for (let h = 0; h < 8760; h++) weather.air_C[h] = 10 * Math.sin(h) + h / 1000;
    const air = new Air(weather, 0, 364);
    for (const hour of [0, 5, 23, 24, 30]) {
      const n = 200;
      let mean = 0;
      for (let i = 0; i < n; i++) mean += air.outdoors_C((hour + (i + 0.5) / n) * 3600) / n;
      expect(mean).toBeCloseTo(weather.air_C[(364 * 24 + hour) % 8760], 3);
    }
    expect(air.hourAt(24 * 3600)).toBe(0);
    expect(air.outdoors_C(DAY - 1e-6)).toBeCloseTo(air.outdoors_C(DAY), 4);
  });
});

describe('tables of a liquid', () => {
  const fluids: Fluid[] = [
    { kind: 'water', mass_share: 0 },
    { kind: 'propylene glycol', mass_share: 0.45 },
    { kind: 'ethylene glycol', mass_share: 0.5 },
  ];

  it.each(fluids)('keep to the properties of $kind', (fluid) => {
    const tables = liquid(fluid);
    for (let t = 0.5; t < 110; t += 0.7) {
      const p = fluidProperties(fluid, t);
      const off = (table: Float64Array, value: number) => Math.abs(lookUp(table, t) / value - 1);
      expect(off(tables.density, p.density_kg_m3)).toBeLessThan(2e-5);
      expect(off(tables.heat_capacity, p.heat_capacity_J_kgK)).toBeLessThan(2e-4);
      expect(off(tables.conductivity, p.conductivity_W_mK)).toBeLessThan(2e-4);
      // Viscosity bends most: half a second difference over 1 K.
      expect(off(tables.viscosity, p.viscosity_Pa_s)).toBeLessThan(1.5e-3);
    }
  });

  it('of water hold the enthalpy, from 0 C', () => {
    const { enthalpy } = liquid(fluids[0]);
    for (const t of [-10, 0, 3.98, 25, 60.3, 99])
      expect(Math.abs(lookUp(enthalpy, t) * REFERENCE_HEAT_CAPACITY - waterEnthalpy(t))).toBeLessThan(40);
  });

  it.each(fluids)('of $kind give back the temperature of an enthalpy', (fluid) => {
    const tables = liquid(fluid);
    fc.assert(
      fc.property(fc.double({ min: -49, max: 259, noNaN: true }), (t) => {
        expect(temperatureOf(tables, lookUp(tables.enthalpy, t))).toBeCloseTo(t, 9);
      }),
    );
  });

  it('hold their ends', () => {
    const { density } = liquid(fluids[0]);
    expect(lookUp(density, -400)).toBe(lookUp(density, -50));
    expect(lookUp(density, 4000)).toBeCloseTo(lookUp(density, 260), 6);
  });
});

describe('the calendar of draws', () => {
  it('opens each draw on its days, in order, and lets it run past midnight', () => {
    const late = drawOf({ name: 'late', at_s: 86_000, duration_s: 900, days: [0] });
    const noon = drawOf({ name: 'noon', at_s: 43_200, duration_s: 60, days: [0, 1] });
    const openings = drawCalendar([late, noon], 9, 6).map((o) => [o.draw.name, o.from_s, o.to_s]);
    expect(openings).toEqual([
      ['noon', DAY + 43_200, DAY + 43_260],
      ['late', DAY + 86_000, 2 * DAY + 500],
      ['noon', 2 * DAY + 43_200, 2 * DAY + 43_260],
      ['noon', 8 * DAY + 43_200, 8 * DAY + 43_260],
      ['late', 8 * DAY + 86_000, 9 * DAY + 500],
    ]);
  });

  it('leaves out a draw that lasts no time', () => {
    expect(drawCalendar([drawOf({ duration_s: 0 })], 3, 0)).toEqual([]);
  });
});

describe('the layout of the state', () => {
  it('gives each part places of its own, and a name to every place', () => {
    const layout = new Layout();
    const before = layout.size;
    const store = layout.claim('store', 'layer', [20, 30]);
    const block = layout.claim('engine', 'block', [15], 10);
    expect([store, block, layout.size]).toEqual([before, before + 2, before + 3]);
    expect(layout.nameOf(store + 1)).toBe('store.layer[1]');
    expect(layout.nameOf(block)).toBe('engine.block');
    expect(layout.nameOf(placeOf.fuel_kg)).toBe('fuel_kg');
    expect(layout.initial().slice(store)).toEqual([20, 30, 15]);
  });

  it('lets integrals steer nothing', () => {
    const layout = new Layout();
    const state = layout.claim('store', 'layer', [20]);
    expect(layout.tolerances(1e-4)[placeOf.fuel_kg]).toBe(Number.POSITIVE_INFINITY);
    expect(layout.tolerances(1e-4)[state]).toBe(1e-4);
  });
});
