/** The coil part by its properties: what it exchanges, what it keeps, and an independent march through the same films. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { courseOf, turnsOf } from '../../../sim/parts/coil/course.ts';
import type { CoilDescription, Fluid } from '../../../sim/parts/description.ts';
import { storeGeometry } from '../../../sim/parts/store/geometry.ts';
import { coilCurvature, coilNusselt, wallCorrection } from '../../../sim/physics/coil-inside.ts';
import { churchillChuNusselt, rayleigh } from '../../../sim/physics/coil-outside.ts';
import { fluidProperties } from '../../../sim/physics/fluid.ts';
import { waterDensity } from '../../../sim/physics/water.ts';
import { CoilRig, enthalpy, LAYERS } from '../support/coil-rig.ts';
import { coilOf, tubeOf } from '../support/plant.ts';

const GLYCOL: Fluid = { kind: 'ethylene glycol', mass_share: 0.5 };
const layered = (z: number) => 25 + 50 * z;

function steady(coil: CoilDescription, profile: (z: number) => number, fluid?: Fluid): CoilRig {
  const rig = new CoilRig(coil, profile, fluid);
  rig.start();
  rig.coil.mode = 'steady';
  return rig;
}

describe('a coil in steady flow', () => {
  it('as warm as the water around it changes nothing', () => {
    const rig = steady(coilOf('c'), () => 45);
    expect(rig.at(0.1, 45)).toBeCloseTo(45, 9);
    expect(Math.max(...rig.heat_W.map(Math.abs))).toBeLessThan(1e-6);
    expect(Math.max(...rig.rates.map(Math.abs))).toBeLessThan(1e-9);
  });

  it.each([
    ['cold water', 8, undefined],
    ['hot water', 85, undefined],
    ['hot glycol', 85, GLYCOL],
  ])('gives the layers what %s loses', (_what, entry, fluid) => {
    const rig = steady(coilOf('c'), layered, fluid);
    const outlet = rig.at(0.12, entry);
    const given = rig.heat_W.reduce((sum, w) => sum + w, 0);
    const lost = 0.12 * (enthalpy(entry, fluid) - enthalpy(outlet, fluid));
    expect(Math.abs(given)).toBeGreaterThan(1000);
    expect(given).toBeCloseTo(lost, 6);
    expect(rig.coil.heat_W).toBeCloseTo(given, 6);
    expect(Math.abs(rig.rates.reduce((sum, r) => sum + Math.abs(r), 0))).toBeLessThan(1e-9);
  });

  it.each([0.5, 1, 2, 3])('with %d transfer units in water of one temperature reaches 1 - e^-NTU', (ntu) => {
    // Kays and London, one side isothermal. Only the wall resists, so that the units are known.
    const flow = 0.1;
    const ua = ntu * flow * 4180;
    const wall: Partial<CoilDescription> = { inside_film: 1e6, outside_film: 1e6, bundling: 1 };
    const tube = { ...tubeOf('plumbing L', '3/4') };
    tube.conductivity_W_mK =
      (ua * Math.log(tube.outside_diameter_m / tube.inside_diameter_m)) / (2 * Math.PI * 30);
    const rig = steady(coilOf('c', { ...wall, tube }), () => 50);
    const reached = (rig.at(flow, 30) - 30) / 20;
    // Water's heat capacity between 30 and 50 C is 4178 to 4181 J/(kg K).
    expect(Math.abs(reached - (1 - Math.exp(-ntu)))).toBeLessThan(3e-4);
  });

  it('cannot pass the layers it meets', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-5, max: 0.5, noNaN: true }),
        fc.double({ min: 1, max: 99, noNaN: true }),
        fc.constantFrom('bottom' as const, 'top' as const),
        (flow, entry, fed_from) => {
          const rig = steady(coilOf('c', { fed_from }), layered);
          const outlet = rig.at(flow, entry);
          const low = Math.min(entry, ...rig.layer_C);
          const high = Math.max(entry, ...rig.layer_C);
          expect(outlet).toBeGreaterThanOrEqual(low - 1e-9);
          expect(outlet).toBeLessThanOrEqual(high + 1e-9);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('brings out the warmer water the less of it flows, and the more heat the more flows', () => {
    const rig = steady(coilOf('c'), () => 60);
    const flows = [0.02, 0.04, 0.08, 0.16, 0.3];
    const outlets = flows.map((flow) => rig.at(flow, 10));
    const heats = flows.map((flow, i) => flow * (enthalpy(outlets[i]) - enthalpy(10)));
    for (let i = 1; i < flows.length; i++) {
      expect(outlets[i]).toBeLessThan(outlets[i - 1]);
      expect(heats[i]).toBeGreaterThan(heats[i - 1]);
    }
  });

  it('of three parallel rolls is three coils of one roll at a third of the flow', () => {
    const one = steady(coilOf('c', { roll_length_m: 15 }), layered);
    const three = steady(coilOf('c', { roll_length_m: 15, rolls: 3, join: 'parallel' }), layered);
    expect(three.at(0.15, 10)).toBeCloseTo(one.at(0.05, 10), 9);
    expect(three.heat_W[5]).toBeCloseTo(3 * one.heat_W[5], 6);
    expect(three.coil.held_kg).toBeCloseTo(3 * one.coil.held_kg, 9);
    expect(three.coil.pressureLoss(0.15, 30)).toBeCloseTo(one.coil.pressureLoss(0.05, 30), 6);
  });

  it('of three rolls in series is one coil three times as long', () => {
    const long = steady(coilOf('c', { roll_length_m: 45 }), layered);
    const three = steady(coilOf('c', { roll_length_m: 15, rolls: 3 }), layered);
    expect(three.at(0.1, 10)).toBe(long.at(0.1, 10));
  });

  it('dulled by scale, bundling or a poorer film warms less', () => {
    const outlet = (over: Partial<CoilDescription>) => steady(coilOf('c', over), () => 60).at(0.1, 10);
    const plain = outlet({});
    expect(outlet({ fouling_m2K_W: 2e-4 })).toBeLessThan(plain - 0.05);
    expect(outlet({ bundling: 0.5 })).toBeLessThan(plain - 0.5);
    expect(outlet({ inside_film: 0.8 })).toBeLessThan(plain - 0.5);
  });
});

/** Outlet of a coil by 3000 lengths, each with its wall temperatures solved to the end from the correlations themselves. */
function marched(
  coil: CoilDescription,
  flow: number,
  entry_C: number,
  water_C: number,
  fluid: Fluid,
): number {
  const { tube } = coil;
  const d = tube.inside_diameter_m;
  const curvature = coilCurvature(d, coil.coil_diameter_m, coil.pitch_m);
  const lengths = 3000;
  const dx = (coil.rolls * coil.roll_length_m) / lengths;
  const wall = Math.log(tube.outside_diameter_m / d) / (2 * Math.PI * tube.conductivity_W_mK);
  let t = entry_C;
  let outer = (entry_C + water_C) / 2;
  let bore = outer;
  for (let i = 0; i < lengths; i++) {
    const bulk = fluidProperties(fluid, t);
    let conductance = 0;
    for (let k = 0; k < (i === 0 ? 30 : 4); k++) {
      const re = (4 * flow) / (Math.PI * d * bulk.viscosity_Pa_s);
      const inside =
        Math.PI *
        bulk.conductivity_W_mK *
        coilNusselt(re, bulk.prandtl, curvature) *
        wallCorrection(bulk.prandtl, fluidProperties(fluid, bore).prandtl);
      const film = fluidProperties({ kind: 'water', mass_share: 0 }, (outer + water_C) / 2);
      const ra = rayleigh(waterDensity(water_C) - waterDensity(outer), tube.outside_diameter_m, film);
      const outside =
        Math.PI *
        film.conductivity_W_mK *
        churchillChuNusselt(ra, film.prandtl) *
        coil.bundling *
        coil.outside_film;
      conductance = 1 / (1 / inside + wall + 1 / outside);
      outer = water_C + ((t - water_C) * conductance) / outside;
      bore = t - ((t - water_C) * conductance) / inside;
    }
    t += ((water_C - t) * conductance * dx) / (flow * bulk.heat_capacity_J_kgK);
  }
  return t;
}

describe('a march of one section a layer', () => {
  it.each([
    ['plumbing L', '3/4', 30, 0.1, 10, 60],
    ['plumbing L', '3/4', 30, 0.03, 10, 60],
    ['refrigeration', '3/8', 15, 0.1, 10, 60],
    ['refrigeration', '1/2', 15, 0.05, 5, 80],
    ['PEX', '1/2', 60, 0.08, 10, 60],
  ] as const)(
    'agrees with 3000 short ones: %s %s, %d m, %d kg/s',
    (standard, size, length, flow, entry, water) => {
      const coil = coilOf('c', { tube: tubeOf(standard, size), roll_length_m: length });
      const got = steady(coil, () => water).at(flow, entry);
      const fine = marched(coil, flow, entry, water, { kind: 'water', mass_share: 0 });
      expect(Math.abs(got - fine)).toBeLessThan(0.005 * (fine - entry));
    },
  );

  it('agrees with 3000 short ones for hot glycol', () => {
    const coil = coilOf('c', { roll_length_m: 18 });
    const got = steady(coil, () => 50, GLYCOL).at(0.35, 85);
    const fine = marched(coil, 0.35, 85, 50, GLYCOL);
    expect(Math.abs(got - fine)).toBeLessThan(0.005 * (85 - fine));
  });
});

describe('starting and stopping', () => {
  const held = (rig: CoilRig) => rig.coil.energy(rig.y) + rig.exchanged_J.reduce((sum, e) => sum + e, 0);

  it('moves energy between content and layers, and makes none', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 95, noNaN: true }),
        fc.double({ min: 0.005, max: 0.3, noNaN: true }),
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 0, max: 200 }),
        fc.constantFrom('bottom' as const, 'top' as const),
        (entry, flow, seconds, pause, fed_from) => {
          const rig = new CoilRig(coilOf('c', { fed_from }), layered);
          rig.start();
          rig.pass(seconds, flow, entry);
          let before = held(rig);
          rig.stop(flow, entry);
          expect(Math.abs(held(rig) - before)).toBeLessThan(1e-3);
          rig.time_s += pause;
          before = held(rig);
          rig.start();
          expect(Math.abs(held(rig) - before)).toBeLessThan(1e-3);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('gives no layer more than its length of coil can hold, whatever the profile', () => {
    // Where a coil gives heat in some layers and takes it in others, sums cancel and quotients of them must not count.
    fc.assert(
      fc.property(
        fc.double({ min: 25, max: 65, noNaN: true }),
        fc.double({ min: 0.005, max: 0.3, noNaN: true }),
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: 0, max: 300 }),
        (entry, flow, seconds, pause) => {
          const rig = new CoilRig(coilOf('c', { fed_from: 'top' }), layered);
          rig.start();
          rig.pass(seconds, flow, entry);
          rig.stop(flow, entry);
          rig.time_s += pause;
          rig.start();
          // The coil spans 0.7 m of layers of 0.04 m; nothing here is further than 40 K from anything else.
          const most = (rig.coil.capacity_J_K * 0.04 * 40) / 0.7;
          expect(Math.max(...rig.exchanged_J.map(Math.abs))).toBeLessThan(1.5 * most);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('at rest with its layers exchanges nothing', () => {
    const rig = new CoilRig(coilOf('c'), layered);
    const before = rig.coil.energy(rig.y);
    rig.start();
    expect(Math.max(...rig.exchanged_J.map(Math.abs))).toBeLessThan(1e-6);
    expect(rig.coil.energy(rig.y)).toBeCloseTo(before, 3);
  });

  it('after long rest holds what its layers’ temperatures give', () => {
    const rig = new CoilRig(coilOf('c'), () => 60);
    const rested = rig.coil.energy(rig.y);
    rig.start();
    rig.pass(100, 0.1, 10);
    rig.stop(0.1, 10);
    expect(rig.coil.energy(rig.y)).toBeCloseTo(rested, 3);
  });

  it('pushes out first what stood nearest the outlet', () => {
    const rig = new CoilRig(coilOf('c'), layered);
    rig.start();
    // The coil reaches up to 0.75 m, where the store is at 62.5 C; its highest section lies in the layer at 0.74 m.
    expect(rig.at(0.1, 8)).toBeCloseTo(layered(0.74), 1);
  });
});

describe('the course of a coil', () => {
  const geometry = storeGeometry({ kind: 'box', length_m: 1, width_m: 1, height_m: 1 }, 0.8, LAYERS);

  it('covers its whole length, once, in the order of flow', () => {
    for (const fed_from of ['bottom', 'top'] as const) {
      const { from, to, layer, dry } = courseOf(coilOf('c', { fed_from }), geometry);
      expect(dry).toBeCloseTo(0, 12);
      expect(from[0]).toBeCloseTo(0, 12);
      expect(to[to.length - 1]).toBeCloseTo(1, 12);
      for (let j = 1; j < from.length; j++) {
        expect(from[j]).toBeCloseTo(to[j - 1], 12);
        expect(layer[j] - layer[j - 1]).toBe(fed_from === 'bottom' ? 1 : -1);
      }
    }
  });

  it('leaves dry what stands above the water', () => {
    const { to, dry, from } = courseOf(coilOf('c', { bottom_m: 0.6, top_m: 1 }), geometry);
    expect(dry).toBeCloseTo(0.5, 12);
    expect(to[to.length - 1] - from[0]).toBeCloseTo(0.5, 12);
    const all = courseOf(coilOf('c', { bottom_m: 0.85, top_m: 1 }), geometry);
    expect(all.dry).toBe(1);
    expect(all.layer).toHaveLength(0);
  });

  it('winds a turn of pi D along the helix', () => {
    const coil = coilOf('c', { coil_diameter_m: 0.6, pitch_m: 0.04 });
    expect(turnsOf(coil, 10 * Math.hypot(Math.PI * 0.6, 0.04))).toBeCloseTo(10, 12);
  });

  it('out of the water altogether neither takes nor gives', () => {
    const rig = new CoilRig(coilOf('c', { bottom_m: 0.85, top_m: 1 }), () => 60);
    rig.start();
    expect(rig.at(0.1, 10)).toBe(60);
    rig.coil.mode = 'steady';
    expect(rig.at(0.1, 10)).toBe(10);
    expect(Math.max(...rig.heat_W.map(Math.abs))).toBe(0);
  });
});
