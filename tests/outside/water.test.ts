/** Water, glycol and moist air against sources other than checks.json. Sources in SOURCES.md; all from memory. */
import { describe, expect, it } from 'vitest';
import {
  glycolBoilingPoint,
  glycolFreezingPoint,
  massShareFromVolumeShare,
} from '../../sim/physics/glycol.ts';
import {
  ATMOSPHERE_PA,
  airSaturationPressure,
  dewPoint,
  humidityRatio,
  moistAirEnthalpy,
  wetBulb,
} from '../../sim/physics/moist-air.ts';
import {
  boilingPointAtAltitude,
  standardPressure,
  waterBoilingPoint,
  waterConductivity,
  waterDensity,
  waterEnthalpy,
  waterHeatCapacity,
  waterLatentHeat,
  waterSaturationPressure,
  waterViscosity,
} from '../../sim/physics/water.ts';
import { expectWithin } from './near.ts';

describe('water', () => {
  // IAPWS-IF97 (2007 revision), tables 35 and 36: verification values of region 4.
  it.each([
    [300, 3536.58941],
    [500, 2.63889776e6],
    [600, 12.3443146e6],
  ])('saturates at %f K as IAPWS-IF97 table 35 says', (t_K, p_Pa) => {
    expectWithin(waterSaturationPressure(t_K - 273.15), p_Pa, 1e-8);
  });

  it.each([
    [0.1e6, 372.755919],
    [1e6, 453.035632],
    [10e6, 584.149488],
  ])('boils under %f Pa as IAPWS-IF97 table 36 says', (p_Pa, t_K) => {
    expectWithin(waterBoilingPoint(p_Pa) + 273.15, t_K, 1e-8);
  });

  // Triple point 273.16 K, 611.657 Pa (IAPWS); critical point 647.096 K, 22.064 MPa.
  it('meets the triple point and nears the critical point', () => {
    expectWithin(waterSaturationPressure(0.01), 611.657, 1e-4);
    expectWithin(waterSaturationPressure(373.9), 22.064e6, 2e-3);
  });

  // CIPM formula for air-free water, Tanaka et al. 2001, Metrologia 38, 301: 0..40 C to 1e-6.
  it.each([0, 2, 3.983, 5, 8, 15, 25, 40])('is as dense at %f C as the CIPM formula', (t) => {
    const cipm = 999.97495 * (1 - ((t - 3.983035) ** 2 * (t + 301.797)) / (522528.9 * (t + 69.34881)));
    expectWithin(waterDensity(t), cipm, 1e-5);
  });

  // Kell 1975, J. Chem. Eng. Data 20, 97, table 1 formula (old temperature scale): 0..150 C.
  it.each([50, 75, 100, 120, 140])('is as dense at %f C as Kell 1975', (t) => {
    const kell =
      (999.83952 +
        16.945176 * t -
        7.9870401e-3 * t ** 2 -
        46.170461e-6 * t ** 3 +
        105.56302e-9 * t ** 4 -
        280.54253e-12 * t ** 5) /
      (1 + 16.87985e-3 * t);
    expectWithin(waterDensity(t), kell, 2e-4);
  });

  it('is densest at 3.98 C', () => {
    const temperatures = Array.from({ length: 801 }, (_, i) => i / 100);
    const densest = temperatures.reduce((best, t) => (waterDensity(t) > waterDensity(best) ? t : best), 0);
    expect(Math.abs(densest - 3.983)).toBeLessThan(0.03);
  });

  // The calories, CIPM 1950: 15 degree 4.1855 J, 20 degree 4.1819 J, mean of 0..100 C 4.190 J, per gram.
  it('takes as much heat as the calories were defined by', () => {
    expectWithin(waterHeatCapacity(15), 4185.5, 1e-3);
    expectWithin(waterHeatCapacity(20), 4181.9, 1e-3);
    expectWithin(waterEnthalpy(100), 419_000, 5e-4);
  });

  // Steam tables, saturated liquid [kJ/kg] and latent heat [kJ/kg].
  it.each([
    [10, 42.02, 2477.2],
    [50, 209.34, 2382.0],
    [80, 335.01, 2308.0],
    [100, 419.1, 2256.5],
    [120, 503.81, 2202.1],
    [140, 589.16, 2144.3],
  ])('holds at %f C what steam tables say', (t, liquid, latent) => {
    // One atmosphere holds up to 0.04 kJ/kg more than the saturation line.
    expectWithin(waterEnthalpy(t), 1000 * liquid, 1.5e-3);
    expectWithin(waterLatentHeat(t), 1000 * latent, 5e-4);
  });

  // Clapeyron: r = T (dp/dT) (1/rho_v - 1/rho_l), with the ideal gas (a bound: real steam is denser, r smaller).
  it('gives up latent heat below the ideal-gas Clapeyron bound, by less than 2 %', () => {
    for (const t of [10, 40, 70, 100]) {
      const slope = (waterSaturationPressure(t + 0.01) - waterSaturationPressure(t - 0.01)) / 0.02;
      const vapour = waterSaturationPressure(t) / (461.526 * (t + 273.15));
      const ideal = (t + 273.15) * slope * (1 / vapour - 1 / waterDensity(t));
      expect(waterLatentHeat(t) / ideal).toBeLessThan(1.0002);
      expect(waterLatentHeat(t) / ideal).toBeGreaterThan(0.98);
    }
  });

  // Ramires et al. 1995, J. Phys. Chem. Ref. Data 24, 1377: standard reference data, 274..370 K, 0.7 %.
  it.each([5, 20, 40, 60, 80, 95])('conducts at %f C as the reference polynomial', (t) => {
    const x = (t + 273.15) / 298.15;
    expectWithin(waterConductivity(t), 0.6065 * (-1.48445 + 4.12292 * x - 1.63866 * x * x), 7e-3);
  });

  // Steam tables, saturated liquid viscosity [uPa s].
  it.each([
    [100, 281.8],
    [120, 232.1],
    [140, 196.5],
  ])('is as thin at %f C as steam tables say', (t, viscosity) => {
    expectWithin(waterViscosity(t), viscosity * 1e-6, 5e-3);
  });

  // Builders' rule (shared/trade.md): 1.8 F lower for each 1,000 ft.
  it('boils 1.8 F lower for each thousand feet', () => {
    const perThousandFeet = ((boilingPointAtAltitude(0) - boilingPointAtAltitude(3048)) * 1.8) / 10;
    expect(Math.abs(perThousandFeet - 1.8)).toBeLessThan(0.1);
  });

  // ISO 2533 standard atmosphere, geopotential altitude.
  it.each([
    [1000, 89_875],
    [5000, 54_020],
    [8000, 35_600],
  ])('stands at %f m under the standard atmosphere', (z, p) => {
    expectWithin(standardPressure(z), p, 1e-3);
  });
});

describe('glycol', () => {
  // Makers' tables of half-and-half by volume: boiling 222 F and 225 F, first crystals about -34 C and -37 C.
  it.each([
    ['propylene glycol', 105.6, -34],
    ['ethylene glycol', 107.2, -37],
  ] as const)('half %s by volume boils and freezes as data sheets say', (kind, boils, freezes) => {
    const w = massShareFromVolumeShare(kind, 0.5);
    expect(Math.abs(glycolBoilingPoint(kind, w, ATMOSPHERE_PA) - boils)).toBeLessThan(1);
    expect(Math.abs(glycolFreezingPoint(kind, w) - freezes)).toBeLessThan(3);
  });
});

describe('moist air', () => {
  // WMO Guide to instruments (CIMO), annex 4.B: over water 0..60 C within 0.3 %.
  it.each([0, 10, 20, 30, 40])('saturates at %f C as the WMO formula', (t) => {
    expectWithin(airSaturationPressure(t), 611.2 * Math.exp((17.62 * t) / (243.12 + t)), 3e-3);
  });

  it.each([-5, -15, -30])('saturates over ice at %f C as the WMO formula', (t) => {
    expectWithin(airSaturationPressure(t), 611.2 * Math.exp((22.46 * t) / (272.62 + t)), 5e-3);
  });

  // Psychrometric chart: 25 C and 50 %: 9.9 g/kg, 50.3 kJ/kg, wet bulb 17.9 C, dew point 13.9 C.
  it('reads at 25 C and half saturation as the chart does', () => {
    const vapour = 0.5 * airSaturationPressure(25);
    const w = humidityRatio(vapour, ATMOSPHERE_PA);
    expectWithin(w, 0.0099, 5e-3);
    expectWithin(moistAirEnthalpy(25, w), 50_300, 5e-3);
    expect(Math.abs(wetBulb(25, w, ATMOSPHERE_PA) - 17.9)).toBeLessThan(0.1);
    expect(Math.abs(dewPoint(vapour) - 13.9)).toBeLessThan(0.1);
  });
});
