/**
 * Liquid water at one atmosphere, and on its saturation line above 100 C.
 *
 * Temperatures are degrees Celsius; outside the fitted range each function holds or continues its end slope,
 * so that an integrator's trial step never meets a pole.
 */
import { power } from '../numerics/alike.ts';

const ZERO_CELSIUS_K = 273.15;

/** x held between low and high; NaN stays NaN, so that the integrator's guard sees it. */
function clamp(x: number, low: number, high: number): number {
  return Math.max(low, Math.min(high, x));
}

/**
 * Density of water [kg/m3] at t_C [C].
 *
 * rho = (a0 + a1 x + a2 x^2 + a3 x^3 + a4 x^4 + a5 x^5) / (1 + b x), x = t/100: Kell's 1975 form. Fitted here to
 * the IAPWS-95 density and expansion of checks.json (0-100 C) and to IAPWS-IF97 region 1 above, because Kell's
 * own coefficients (old temperature scale) miss the expansion near 4 C by 0.4 %. Valid -20..145 C, held outside;
 * within 0.001 % to 100 C, 0.013 % to 140 C.
 * Source: form Kell 1975 J. Chem. Eng. Data 20, 97 (from memory); values IAPWS-95, shared/physics.md 1.1.
 */
export function waterDensity(t_C: number): number {
  const x = clamp(t_C, -20, 145) / 100;
  return densityNumerator(x) / (1 + DENSITY_POLE * x);
}

const DENSITY_POLE = 1.63514139942921;

function densityNumerator(x: number): number {
  return (
    999.84340587634 +
    x *
      (1641.66303061777 +
        x * (-79.954614195683 + x * (-42.8074676658 + x * (9.03912152580367 - 2.39628188921713 * x))))
  );
}

/**
 * Volumetric thermal expansion of water [1/K] at t_C [C]: -(d rho/dT)/rho of `waterDensity`, exactly.
 *
 * Negative below 3.98 C. Valid -20..145 C. Source: as `waterDensity`.
 */
export function waterExpansion(t_C: number): number {
  const x = clamp(t_C, -20, 145) / 100;
  const slope =
    1641.66303061777 +
    x * (-159.909228391366 + x * (-128.4224029974 + x * (36.1564861032147 - 11.9814094460857 * x)));
  return (DENSITY_POLE / (1 + DENSITY_POLE * x) - slope / densityNumerator(x)) / 100;
}

/**
 * Isothermal compressibility of water [1/Pa] at t_C [C] and one atmosphere.
 *
 * Kell's rational function; 0..110 C, held outside. Within 0.1 % of steam tables (tests).
 * Source: Kell 1975, J. Chem. Eng. Data 20, 97, coefficients from memory.
 */
export function waterCompressibility(t_C: number): number {
  const t = clamp(t_C, 0, 110);
  const top =
    50.88496 + t * (0.6163813 + t * (1.459187e-3 + t * (20.08438e-6 + t * (-58.47727e-9 + t * 410.411e-12))));
  return (1e-11 * top) / (1 + 19.67348e-3 * t);
}

const COLDEST_FITTED_HEAT_C = -5;
const HOTTEST_FITTED_HEAT_C = 145;

/**
 * Specific heat of water at constant pressure [J/(kg K)] at t_C [C].
 *
 * A sixth-degree polynomial fitted to IAPWS-IF97 region 1 (0.101 MPa or saturation), -5..145 C within 0.05 %;
 * held constant outside.
 * Source: IAPWS-IF97, coefficients from memory, verified against its published test point (300 K, 3 MPa).
 */
export function waterHeatCapacity(t_C: number): number {
  return heatCapacityAt(clamp(t_C, COLDEST_FITTED_HEAT_C, HOTTEST_FITTED_HEAT_C) / 100);
}

function heatCapacityAt(x: number): number {
  return (
    4220.07848758 +
    x *
      (-337.96144579 +
        x *
          (1119.63090587 +
            x * (-2004.64274149 + x * (2077.61342807 + x * (-1080.39213932 + 222.3835014 * x)))))
  );
}

function enthalpyAt(x: number): number {
  return (
    100 *
    x *
    (4220.07848758 +
      x *
        (-337.96144579 / 2 +
          x *
            (1119.63090587 / 3 +
              x *
                (-2004.64274149 / 4 +
                  x * (2077.61342807 / 5 + x * (-1080.39213932 / 6 + (222.3835014 / 7) * x))))))
  );
}

const COLDEST_FITTED_ENTHALPY = enthalpyAt(COLDEST_FITTED_HEAT_C / 100);
const HOTTEST_FITTED_ENTHALPY = enthalpyAt(HOTTEST_FITTED_HEAT_C / 100);
const COLDEST_HEAT_CAPACITY = heatCapacityAt(COLDEST_FITTED_HEAT_C / 100);
const HOTTEST_HEAT_CAPACITY = heatCapacityAt(HOTTEST_FITTED_HEAT_C / 100);

/**
 * Specific enthalpy of water [J/kg] at t_C [C], 0 at 0 C: the exact integral of `waterHeatCapacity`.
 *
 * Rises everywhere, so it inverts; straight outside -5..145 C. The pressure's own share (0.1 kJ/kg per
 * atmosphere) is left out. Source: as `waterHeatCapacity`.
 */
export function waterEnthalpy(t_C: number): number {
  if (t_C < COLDEST_FITTED_HEAT_C) {
    return COLDEST_FITTED_ENTHALPY + COLDEST_HEAT_CAPACITY * (t_C - COLDEST_FITTED_HEAT_C);
  }
  if (t_C > HOTTEST_FITTED_HEAT_C) {
    return HOTTEST_FITTED_ENTHALPY + HOTTEST_HEAT_CAPACITY * (t_C - HOTTEST_FITTED_HEAT_C);
  }
  return enthalpyAt(t_C / 100);
}

/**
 * Temperature of water [C] whose `waterEnthalpy` is h [J/kg]: two Newton steps from h / 4190.
 *
 * The start is within 1 K and each step squares the error (times 1e-4 per kelvin), so the result inverts to
 * better than 1e-9 K for any finite h. Source: as `waterHeatCapacity`.
 */
export function waterTemperatureFromEnthalpy(h_J_kg: number): number {
  if (h_J_kg < COLDEST_FITTED_ENTHALPY) {
    return COLDEST_FITTED_HEAT_C + (h_J_kg - COLDEST_FITTED_ENTHALPY) / COLDEST_HEAT_CAPACITY;
  }
  if (h_J_kg > HOTTEST_FITTED_ENTHALPY) {
    return HOTTEST_FITTED_HEAT_C + (h_J_kg - HOTTEST_FITTED_ENTHALPY) / HOTTEST_HEAT_CAPACITY;
  }
  let x = h_J_kg / 419000;
  x -= (enthalpyAt(x) - h_J_kg) / (100 * heatCapacityAt(x));
  x -= (enthalpyAt(x) - h_J_kg) / (100 * heatCapacityAt(x));
  return 100 * x;
}

/**
 * Thermal conductivity of water [W/(m K)] at t_C [C].
 *
 * k = sum c_i (T/300 K)^d_i. Valid 0..110 C within 1.5 % of measurement; agrees with the saturated liquid to
 * 0.2 % up to 140 C. Held below -25 C and above 160 C.
 * Source: IAPWS SR6-08, equation for liquid water at 0.1 MPa, coefficients from memory.
 */
export function waterConductivity(t_C: number): number {
  const x = reducedTemperature(t_C);
  return (
    1.663 * power(x, -1.15) - 1.7781 * power(x, -3.4) + 1.1567 * power(x, -6) - 0.432115 * power(x, -7.6)
  );
}

/**
 * Dynamic viscosity of water [Pa s] at t_C [C].
 *
 * mu = 1e-6 sum a_i (T/300 K)^b_i. Valid -20..110 C within 1 % of measurement; agrees with the saturated liquid
 * to 0.2 % up to 140 C. Held below -25 C and above 160 C.
 * Source: IAPWS SR6-08, equation for liquid water at 0.1 MPa, coefficients from memory.
 */
export function waterViscosity(t_C: number): number {
  const x = reducedTemperature(t_C);
  return (
    1e-6 *
    (280.68 * power(x, -1.9) + 511.45 * power(x, -7.7) + 61.131 * power(x, -19.6) + 0.45903 * power(x, -40))
  );
}

function reducedTemperature(t_C: number): number {
  return (clamp(t_C, -25, 160) + ZERO_CELSIUS_K) / 300;
}

/**
 * Prandtl number of water [-] at t_C [C]: cp mu / k. Source: definition.
 */
export function waterPrandtl(t_C: number): number {
  return (waterHeatCapacity(t_C) * waterViscosity(t_C)) / waterConductivity(t_C);
}

/**
 * Saturation pressure over liquid water [Pa] at t_C [C].
 *
 * IAPWS-IF97 region 4, the quartic's closed solution. Valid 0..374 C (used to -20 C for supercooled water,
 * where it stays within 1 % of measurement); held outside.
 * Source: IAPWS-IF97 equation 30, coefficients from memory, verified against its published test points.
 */
export function waterSaturationPressure(t_C: number): number {
  const t_K = clamp(t_C, -40, 373.9) + ZERO_CELSIUS_K;
  const theta = t_K - 0.23855557567849 / (t_K - 650.17534844798);
  const a = theta * theta + 1167.0521452767 * theta - 724213.16703206;
  const b = -17.073846940092 * theta * theta + 12020.82470247 * theta - 3232555.0322333;
  const c = 14.91510861353 * theta * theta - 4823.2657361591 * theta + 405113.40542057;
  const root = (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));
  return 1e6 * power(root, 4);
}

/**
 * Temperature [C] at which water boils under p_Pa [Pa].
 *
 * IAPWS-IF97 region 4 backwards, equation 31: the exact inverse of `waterSaturationPressure`. Valid
 * 611 Pa..22 MPa. Source: as there.
 */
export function waterBoilingPoint(p_Pa: number): number {
  const beta = power(p_Pa / 1e6, 0.25);
  const e = beta * beta - 17.073846940092 * beta + 14.91510861353;
  const f = 1167.0521452767 * beta * beta + 12020.82470247 * beta - 4823.2657361591;
  const g = -724213.16703206 * beta * beta - 3232555.0322333 * beta + 405113.40542057;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const sum = 650.17534844798 + d;
  return (sum - Math.sqrt(sum * sum - 4 * (-0.23855557567849 + 650.17534844798 * d))) / 2 - ZERO_CELSIUS_K;
}

/**
 * Latent heat of evaporation of water [J/kg] at t_C [C].
 *
 * A fourth-degree polynomial fitted to the Clapeyron relation between IAPWS-IF97 region 4 and the IAPWS
 * saturated densities (SR1-86). Valid -5..140 C within 0.02 % of IAPWS-95; held outside.
 * Source: IAPWS, from memory; tests compare it with steam-table values and with Clapeyron's relation.
 */
export function waterLatentHeat(t_C: number): number {
  const x = clamp(t_C, -20, 150) / 100;
  return 2501121.6 + x * (-239240.158 + x * (7293.31877 + x * (-10795.2675 - 1801.10675 * x)));
}

/**
 * Pressure of the standard atmosphere [Pa] at altitude z_m [m].
 *
 * p = 101325 (1 - 2.25577e-5 z)^5.25588, -500..11000 m. Source: ICAO standard atmosphere, shared/physics.md 1.1.
 */
export function standardPressure(z_m: number): number {
  return 101325 * power(1 - 2.25577e-5 * z_m, 5.25588);
}

/**
 * Boiling point of water [C] in the open at altitude z_m [m]: `waterBoilingPoint` of `standardPressure`.
 *
 * Weather moves it by +-0.6 K. Source: as those two.
 */
export function boilingPointAtAltitude(z_m: number): number {
  return waterBoilingPoint(standardPressure(z_m));
}
