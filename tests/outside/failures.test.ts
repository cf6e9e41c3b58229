/** What breaks a plant, against handbooks: trapped water, freezing pipes, scalds, glycol. */
import { describe, expect, it } from 'vitest';
import { timeToIce, timeToSolid } from '../../sim/physics/freezing.ts';
import { glycolFreezingPoint, massShareFromVolumeShare } from '../../sim/physics/glycol.ts';
import { burnTime } from '../../sim/physics/scald.ts';
import { pressurePerKelvin, tubeRating, warmingTo } from '../../sim/physics/trapped.ts';
import { findTube, type TubeStandard } from '../../sim/physics/tubes.ts';
import { waterCompressibility, waterExpansion } from '../../sim/physics/water.ts';
import { simulate } from '../../sim/run/simulation.ts';
import { coilOf, heaterOf, plantOf, storeOf } from '../sim/support/plant.ts';

const WATER = { kind: 'water', mass_share: 0 } as const;
const PSI = 6894.757;

function tube(standard: TubeStandard, size: string) {
  const found = findTube(standard, size);
  if (!found) throw new Error(`${standard} ${size}`);
  return found;
}

describe('water shut in a vessel', () => {
  // IAPWS-95 at 0.1 MPa, as steam tables print it (from memory): isothermal compressibility [1e-10/Pa].
  it.each([
    [0, 5.0885],
    [10, 4.7811],
    [25, 4.5247],
    [40, 4.424],
    [60, 4.4496],
    [80, 4.614],
    [100, 4.902],
  ])('at %f C gives under pressure as steam tables say', (t_C, kappa) => {
    expect(waterCompressibility(t_C) * 1e10).toBeCloseTo(kappa, 2);
  });

  it('gains 0.45 MPa a kelvin at 20 C and 1.2 MPa at 60 C where nothing gives', () => {
    // Expansion over compressibility of steam tables: 2.07e-4 / 4.59e-10 and 5.23e-4 / 4.45e-10 (from memory).
    const rigid = (t_C: number) => waterExpansion(t_C) / waterCompressibility(t_C) / 1e6;
    expect(rigid(20)).toBeCloseTo(0.451, 2);
    expect(rigid(60)).toBeCloseTo(1.175, 2);
  });

  it('gains less in a tube, by the textbook’s balance of volumes with every number put in by hand', () => {
    // 3/4 in type L: 22.225 mm outside, wall 1.143 mm. At 50 C: beta 4.58e-4, kappa 4.417e-10 (steam tables).
    const give = (21.082e-3 / (117e9 * 1.143e-3)) * (1.25 - 0.34);
    const byHand = (4.58e-4 - 3 * 16.5e-6) / (4.417e-10 + give);
    const computed = pressurePerKelvin(tube('plumbing L', '3/4 in'), WATER, 50) ?? 0;
    expect(computed / byHand).toBeCloseTo(1, 2);
  });

  it('shrinks below 4 C: warming from 1 C takes longer to press than warming from 20 C', () => {
    const warmed = (from_C: number) =>
      warmingTo(tube('plumbing L', '1/2 in'), WATER, from_C, 2e6) ?? Number.NaN;
    expect(warmed(1)).toBeGreaterThan(warmed(20) + 5);
    expect(warmed(60)).toBeLessThan(warmed(20));
  });
});

describe('copper tube', () => {
  // Rated working pressure of annealed type M at 200 F [psi], the copper trade's table 3c.
  it.each([
    ['3/8 in', 466],
    ['1/2 in', 403],
    ['3/4 in', 332],
    ['1 in', 275],
  ])('%s type M is rated as the trade’s table has it', (size, psi) => {
    const { rated_Pa = 0 } = tubeRating(tube('plumbing M', size)) ?? {};
    expect(Math.abs(rated_Pa / PSI / psi - 1)).toBeLessThan(0.04);
  });

  it('bursts at 2 S t / D of a tube maker’s 32,000 psi, a plastic is not rated here', () => {
    const { burst_Pa = 0 } = tubeRating(tube('refrigeration', '3/8 in')) ?? {};
    // 3/8 in x 0.032 in, a tenth of the wall as tolerance.
    expect(burst_Pa / PSI).toBeCloseTo((2 * 32_000 * 0.0288) / 0.375, -1);
    expect(tubeRating(tube('PEX', '1/2 in'))).toBeNull();
  });
});

describe('a pipe of still water', () => {
  // ASHRAE Fundamentals 2009, chapter 23: a 2 in pipe in 1.5 in of insulation of 0.30 Btu in/(h ft2 F), from 42 F.
  const inch = 0.0254;
  const conductivity_W_mK = 0.3 * 0.1442279;
  const pipe = {
    inside_diameter_m: 2.067 * inch,
    conductance_W_mK: (2 * Math.PI * conductivity_W_mK) / Math.log(5.375 / 2.375),
  };
  const celsius = (t_F: number) => (t_F - 32) / 1.8;

  it.each([
    [-18, 1.4],
    [20, 4.6],
  ])('is at freezing in air of %f F after %f h, as the handbook’s table says', (air_F, hours) => {
    expect(timeToIce(pipe, celsius(42), celsius(air_F)) / 3600).toBeCloseTo(hours, 1);
  });

  it('is ice throughout after Plank’s time, the film and the ice itself each with their share', () => {
    const by = (conductance_W_mK: number) => timeToSolid({ inside_diameter_m: 0.02, conductance_W_mK }, -30);
    // Ice alone, 20 mm across: rho L R^2 / (4 k dT) = 1000 x 333550 x 1e-4 / (4 x 2.22 x 30) = 125 s.
    expect(by(1e9)).toBeCloseTo(125.2, 0);
    // Insulation alone: latent heat of a metre over what it loses, 1000 x 3.14e-4 x 333550 / (0.2 x 30) = 17,460 s.
    expect((by(0.2) - by(1e9)) / 17_464).toBeCloseTo(1, 2);
  });

  it('never freezes in air above freezing', () => {
    expect(timeToIce(pipe, 5, 1)).toBe(Number.POSITIVE_INFINITY);
    expect(timeToSolid(pipe, 0)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('a store that is heated while nobody draws', () => {
  it('boils when the heat put in has warmed it to boiling, and steams off what more comes', () => {
    // 0.64 m3 of water from 60 C, its walls so thick that they hardly lose, 8 kW for five hours.
    const power_W = 8000;
    const heated_s = 18_000;
    const thick = { material: 'wool', thickness_m: 1, resistance_m2K_W: 30, max_C: null };
    const { events, figures } = simulate(
      plantOf({
        store: storeOf({ insulation: { sides: [thick], bottom: [thick], lid: [thick] }, bridges: 1 }),
        coils: [coilOf('coil')],
        engine: { ...heaterOf('coil', power_W, heated_s), heat_capacity_J_K: 5000 },
        run: { days: 1, layers: 5, tolerance: 1e-3, start: { bottom_C: 60, top_C: 60 } },
      }),
    );
    // m c dT / P with 983 kg/m3 and the mean of 4.185 and 4.216 kJ/(kg K), steam tables.
    const boils_s = (0.64 * 983.2 * 4200 * 40) / power_W;
    const boiled = events.find(({ name }) => name === 'store.boiling')?.time_s ?? Number.NaN;
    expect(boiled / boils_s).toBeGreaterThan(0.96);
    expect(boiled / boils_s).toBeLessThan(1.04);
    // Latent heat at 100 C: 2257 kJ/kg.
    const steam_kg = (power_W * (heated_s - boiled)) / 2.257e6;
    expect((figures.boiled_kg ?? 0) / steam_kg).toBeGreaterThan(0.8);
    expect((figures.boiled_kg ?? 0) / steam_kg).toBeLessThan(1.02);
  });
});

describe('a scald', () => {
  // Moritz & Henriques 1947, in degrees F and seconds, as the trade quotes them.
  it.each([
    [120, 300],
    [124, 180],
    [127, 60],
    [133, 15],
    [140, 5],
    [148, 2],
    [155, 1],
  ])('at %f F takes %f s', (t_F, seconds) => {
    expect(burnTime((t_F - 32) / 1.8 + 0.005)).toBeCloseTo(seconds, seconds > 100 ? -1 : 0);
  });

  it('comes sooner the hotter the water, and not within five minutes below 120 F', () => {
    expect(burnTime(48)).toBeNull();
    const times = [49, 51, 54, 58, 62, 66, 70].map((t_C) => burnTime(t_C) ?? Number.NaN);
    for (let i = 1; i < times.length; i++) expect(times[i]).toBeLessThan(times[i - 1]);
  });
});

describe('a weak mix', () => {
  // Freezing points by volume as handbooks and data sheets print them (from memory); those differ by 3 K at a half.
  it.each([
    ['propylene glycol', 0.25, -10, 1.5],
    ['propylene glycol', 0.5, -33.5, 1.5],
    ['ethylene glycol', 0.25, -12, 1.5],
    ['ethylene glycol', 0.5, -37, 3],
  ] as const)('of %s, %f by volume, begins to freeze near %f C', (kind, share, t_C, within_K) => {
    const found_C = glycolFreezingPoint(kind, massShareFromVolumeShare(kind, share));
    expect(Math.abs(found_C - t_C)).toBeLessThan(within_K);
  });
});
