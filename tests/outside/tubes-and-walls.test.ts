/** Coils, tubes, walls, engines and pump against sources other than checks.json. Sources in SOURCES.md. */
import { describe, expect, it } from 'vitest';
import { churchillChuNusselt } from '../../sim/physics/coil-outside.ts';
import { colebrookFriction } from '../../sim/physics/coil-spread.ts';
import { FUELS, fuelLineThrough, usualFuelLine } from '../../sim/physics/combustion.ts';
import { evaporativeHeat, waterRadiation } from '../../sim/physics/evaporation.ts';
import { fluidProperties } from '../../sim/physics/fluid.ts';
import { pressureLoss, straightFriction, tubeVelocity } from '../../sim/physics/friction.ts';
import { demandPumpPressure } from '../../sim/physics/heat-exchange.ts';
import { MATERIALS, rPerInch } from '../../sim/physics/materials.ts';
import { findTube, TUBE_MATERIALS, type TubeStandard } from '../../sim/physics/tubes.ts';
import { waterDensity } from '../../sim/physics/water.ts';
import { expectWithin } from './near.ts';

const GALLON_M3 = 3.785411784e-3;
const GPM_M3_S = GALLON_M3 / 60;
const PSI_PA = 6894.757;
const FOOT_M = 0.3048;
const BTU_J = 1055.056;

/** Straight run of a table's tube at 60 F water [psi]. */
function loss_psi(standard: TubeStandard, size: string, feet: number, gpm: number): number {
  const tube = findTube(standard, size);
  if (!tube) throw new Error(`no ${standard} ${size}`);
  const run = {
    length_m: feet * FOOT_M,
    inside_diameter_m: tube.inside_diameter_m,
    curvature: 0,
    roughness_m: TUBE_MATERIALS[tube.material].roughness_m,
    minor: 0,
  };
  return pressureLoss(run, gpm * GPM_M3_S, fluidProperties({ kind: 'water', mass_share: 0 }, 15.6)) / PSI_PA;
}

describe('friction', () => {
  // Copper trade handbook, type L 1/2 in, psi per 100 ft (shared/trade.md, grade A; reckoned by Hazen-Williams).
  it.each([
    [2, 3.4],
    [3, 7.3],
    [4, 12.4],
  ])('of %f gpm through 100 ft of half-inch type L is the handbook one', (gpm, psi) => {
    expectWithin(loss_psi('plumbing L', '1/2 in', 100, gpm), psi, 0.1);
  });

  // shared/trade.md, CALC table by Hazen-Williams C = 145: 50 ft of 3/8 in refrigeration tube at 2 gpm.
  it('of 50 ft of 3/8 in refrigeration tube at 2 gpm is 24 psi at 8.4 ft/s, give or take a tenth', () => {
    expectWithin(loss_psi('refrigeration', '3/8', 50, 2), 24, 0.1);
    const bore = findTube('refrigeration', '3/8 in')?.inside_diameter_m ?? 0;
    expectWithin(tubeVelocity(2 * GPM_M3_S, bore) / FOOT_M, 8.4, 0.02);
  });

  // Moody's chart as printed in fluid mechanics textbooks (from memory): f at Re 1e5.
  it.each([
    [0, 0.018],
    [0.001, 0.0222],
    [0.01, 0.0385],
  ])('at Re 1e5 and roughness %f reads as on the chart', (roughness, f) => {
    expectWithin(colebrookFriction(1e5, roughness), f, 0.01);
    expectWithin(straightFriction(1e5, roughness), f, 0.02);
  });
});

describe('the film outside a horizontal cylinder', () => {
  // Incropera & DeWitt Ex. 9.4 (from memory): steam pipe in air, Ra 5.073e6, Pr 0.697: Nu 23.3
  // (worked in three figures).
  it('is the textbook one for a steam pipe in air', () => {
    expectWithin(churchillChuNusselt(5.073e6, 0.697), 23.3, 0.01);
  });

  // Generic "water-copper-water, practically still": 340-455 W/m2K overall; submerged coils, 570-1280 at 28 K
  // (published text, physics.md 4). The outside film alone must lie above the overall value and near the band.
  it('is of the size of measured submerged coils', () => {
    const film = fluidProperties({ kind: 'water', mass_share: 0 }, 46);
    const ra =
      (9.80665 *
        (waterDensity(32) - waterDensity(60)) *
        0.0159 ** 3 *
        film.density_kg_m3 *
        film.heat_capacity_J_kgK) /
      (film.viscosity_Pa_s * film.conductivity_W_mK);
    const h = (film.conductivity_W_mK / 0.0159) * churchillChuNusselt(ra, film.prandtl);
    expect(h).toBeGreaterThan(570);
    expect(h).toBeLessThan(1280);
  });
});

describe('walls and surfaces', () => {
  // 1 Btu in/(h ft2 F) = 0.1442279 W/(m K), NIST SP 811 appendix B.8.
  it('counts R by the inch as NIST converts it', () => {
    expectWithin(rPerInch(0.1442279), 1, 1e-5);
  });

  // shared/trade.md 3: R per inch in service.
  it.each([
    ['XPS', 5],
    ['polyiso', 5.5],
    ['fibreglass', 3.1],
  ])('has %s at R-%f an inch', (name, r) => {
    expectWithin(rPerInch(MATERIALS[name].conductivity_W_mK), r, 0.05);
  });

  // A black body at 0 C sends out 315.6 W/m2 (Stefan-Boltzmann, CODATA 2018).
  it('radiates as a grey body of 0.95', () => {
    expectWithin(waterRadiation(0, -273.15), 0.95 * 315.66, 1e-3);
  });

  // shared/trade.md: one gallon evaporated takes 8,400 Btu (hot water).
  it('loses 8,400 Btu with a gallon of hot water', () => {
    expectWithin(evaporativeHeat(GALLON_M3 * waterDensity(60), 60) / BTU_J, 8400, 0.02);
  });
});

describe('engines and pump', () => {
  // Diesel sets, gal/h at 50, 75 and 100 % (shared/trade.md 2, grade B).
  const sets = [
    [8, 0.39, 0.54, 0.69],
    [10, 0.53, 0.65, 0.88],
    [15, 0.69, 0.94, 1.22],
    [20, 0.9, 1.3, 1.6],
  ] as const;
  const kg_s = (gallons: number) => (gallons * GALLON_M3 * FUELS.diesel.density_kg_m3) / 3600;

  it.each(sets)('%f kW set burns on a straight line', (kW, half, most, full) => {
    const line = fuelLineThrough(
      { output_W: 500 * kW, fuel_kg_s: kg_s(half) },
      { output_W: 1000 * kW, fuel_kg_s: kg_s(full) },
    );
    expectWithin(line.no_load_kg_s + line.slope_kg_J * 750 * kW, kg_s(most), 0.09);
  });

  it.each(sets)(
    'unmeasured %f kW diesel is taken within 15 % at full load and at half',
    (kW, half, _most, full) => {
      const line = usualFuelLine('diesel', 1000 * kW, FUELS.diesel.lower_heating_value_J_kg);
      expectWithin(line.no_load_kg_s + line.slope_kg_J * 1000 * kW, kg_s(full), 0.15);
      expectWithin(line.no_load_kg_s + line.slope_kg_J * 500 * kW, kg_s(half), 0.2);
    },
  );

  // Heat content per gallon: gasoline 114-116 kBtu lower, diesel 128.5 (physics.md 7, from memory of fuel tables);
  // propane 91 kBtu higher (shared/trade.md, grade A), lower 7.9 % less.
  it.each([
    ['gasoline', 115_000, 0.04],
    ['diesel', 128_500, 0.01],
    ['propane', 91_000 * 0.921, 0.02],
  ] as const)('%s carries its heat per gallon', (name, btu, share) => {
    const fuel = FUELS[name];
    expectWithin((fuel.lower_heating_value_J_kg * fuel.density_kg_m3 * GALLON_M3) / BTU_J, btu, share);
  });

  // 12 V diaphragm pumps, 3 gpm open, 50 psi cut-out: 10 psi 2.7, 20 psi 2.4, 30 psi 2.1, 40 psi 1.85 gpm (data sheets,
  // from memory +-15 %, physics.md 5).
  it.each([
    [2.7, 10],
    [2.4, 20],
    [2.1, 30],
    [1.85, 40],
  ])('a small pump holds %f gpm at its data-sheet pressure', (gpm, psi) => {
    expectWithin(demandPumpPressure(gpm, 3, 50), psi, 0.15);
  });
});
