/** Moist air, after the ASHRAE Handbook of Fundamentals, chapter 1 (from memory; values checked in checks.json). */

const ZERO_CELSIUS_K = 273.15;
/** Molar mass of water over that of dry air. */
const MASS_RATIO = 0.621945;
/** Gas constant of dry air [J/(kg K)]. */
export const GAS_CONSTANT_AIR = 287.055;
/** One atmosphere [Pa]. */
export const ATMOSPHERE_PA = 101_325;

/**
 * Saturation pressure [Pa] at t_C [C] over ice below 0 C, over water above.
 *
 * ln p = c0/T + c1 + c2 T + c3 T^2 + c4 T^3 (+ c5 T^4) + c6 ln T. Valid -100..200 C.
 * Source: Hyland & Wexler 1983, ASHRAE Fundamentals ch. 1 eq. 5 and 6 (from memory).
 */
export function airSaturationPressure(t_C: number): number {
  const t = t_C + ZERO_CELSIUS_K;
  return t_C < 0
    ? Math.exp(
        -5674.5359 / t +
          6.3925247 +
          t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - 9.484024e-13 * t))) +
          4.1635019 * Math.log(t),
      )
    : Math.exp(
        -5800.2206 / t +
          1.3914993 +
          t * (-4.8640239e-2 + t * (4.1764768e-5 - 1.4452093e-8 * t)) +
          6.5459673 * Math.log(t),
      );
}

/**
 * Humidity ratio [kg water per kg dry air] of air at pressure p_Pa [Pa] whose vapour presses with vapour_Pa [Pa] < p.
 *
 * W = 0.621945 pw / (p - pw). Source: ASHRAE Fundamentals ch. 1 eq. 20 (from memory).
 */
export function humidityRatio(vapour_Pa: number, p_Pa: number): number {
  return (MASS_RATIO * vapour_Pa) / (p_Pa - vapour_Pa);
}

/**
 * Enthalpy of moist air [J per kg dry air, 0 for dry air at 0 C] at t_C [C] and humidity ratio w [kg/kg].
 *
 * h = 1006 t + w (2501000 + 1860 t). Source: ASHRAE Fundamentals ch. 1 eq. 30 (from memory).
 */
export function moistAirEnthalpy(t_C: number, w: number): number {
  return 1006 * t_C + w * (2_501_000 + 1860 * t_C);
}

/**
 * Dew point (below 0 C: frost point) [C] of air whose vapour presses with vapour_Pa [Pa]: the inverse of
 * `airSaturationPressure`, 0.002 Pa..1.5 MPa.
 *
 * Newton on ln p against -1/T, where the curve is nearly straight. Source: as there.
 */
export function dewPoint(vapour_Pa: number): number {
  const wanted = Math.log(vapour_Pa);
  let t = 20;
  for (let i = 0; i < 40; i++) {
    const error = Math.log(airSaturationPressure(t)) - wanted;
    const slope = 5400 / (t + ZERO_CELSIUS_K) ** 2;
    const step = error / slope;
    t = Math.max(-95, Math.min(199, t - step));
    if (Math.abs(step) < 1e-9) break;
  }
  return t;
}

/**
 * Humidity ratio [kg/kg] of air at t_C [C] whose wet bulb reads wet_C [C], at p_Pa [Pa].
 *
 * Source: ASHRAE Fundamentals ch. 1 eq. 33 (over water) and 35 (over ice), from memory.
 */
function humidityRatioFromWetBulb(t_C: number, wet_C: number, p_Pa: number): number {
  const saturated = humidityRatio(airSaturationPressure(wet_C), p_Pa);
  return wet_C >= 0
    ? ((2501 - 2.326 * wet_C) * saturated - 1.006 * (t_C - wet_C)) / (2501 + 1.86 * t_C - 4.186 * wet_C)
    : ((2830 - 0.24 * wet_C) * saturated - 1.006 * (t_C - wet_C)) / (2830 + 1.86 * t_C - 2.1 * wet_C);
}

/**
 * Wet-bulb temperature [C] of air at t_C [C] and humidity ratio w [kg/kg], at p_Pa [Pa]; below 0 C over ice.
 *
 * Bisects `humidityRatioFromWetBulb` between dew point and t, to 1e-6 K. Source: as there.
 */
export function wetBulb(t_C: number, w: number, p_Pa: number): number {
  let low = Math.min(t_C, dewPoint((p_Pa * w) / (MASS_RATIO + w)));
  let high = t_C;
  while (high - low > 1e-6) {
    const middle = (low + high) / 2;
    if (humidityRatioFromWetBulb(t_C, middle, p_Pa) > w) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/**
 * Density of moist air [kg/m3] at t_C [C], p_Pa [Pa], vapour pressure vapour_Pa [Pa]: dry air and vapour as ideal gases.
 *
 * Source: ideal gas law; ASHRAE Fundamentals ch. 1.
 */
export function moistAirDensity(t_C: number, vapour_Pa: number, p_Pa: number): number {
  return (p_Pa - (1 - MASS_RATIO) * vapour_Pa) / (GAS_CONSTANT_AIR * (t_C + ZERO_CELSIUS_K));
}
