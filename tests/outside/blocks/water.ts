import {
  boilingPointAtAltitude,
  standardPressure,
  waterConductivity,
  waterDensity,
  waterExpansion,
  waterHeatCapacity,
  waterLatentHeat,
  waterPrandtl,
  waterSaturationPressure,
  waterViscosity,
} from '../../../sim/physics/water.ts';
import { type Block, type Check, input } from '../checks.ts';

/** The table's end rows stand inside the liquid's range: 0 C at 0.01 C, 100 C at 99.97 C. */
function temperature(check: Check): number {
  const t = input(check, 'T_C');
  return t === 0 ? 0.01 : t === 100 ? 99.97 : t;
}

export const water: Block = {
  name: 'water',
  atLeast: 166,
  answers: {
    'water.': (check) => {
      const t = temperature(check);
      return {
        rho: waterDensity(t),
        cp: waterHeatCapacity(t),
        k: waterConductivity(t),
        mu: waterViscosity(t),
        beta: waterExpansion(t),
        Pr: waterPrandtl(t),
        // The saturation column keeps its round temperatures at 100 C.
        psat_Pa: waterSaturationPressure(input(check, 'T_C') === 0 ? t : input(check, 'T_C')),
        hfg: waterLatentHeat(t) / 1000,
      };
    },
    'water.boil.': (check) => ({
      P_Pa: standardPressure(input(check, 'z_m')),
      Tsat_C: boilingPointAtAltitude(input(check, 'z_m')),
    }),
  },
};
