import {
  airDensityRatio,
  altitudeDerating,
  exhaustDewPoint,
  exhaustWaterShare,
  heatingValues,
} from '../../../sim/physics/combustion.ts';
import { ATMOSPHERE_PA } from '../../../sim/physics/moist-air.ts';
import { type Block, input } from '../checks.ts';

/** Fuels, exhaust, altitude. */
export const engine: Block = {
  name: 'engine',
  atLeast: 26,
  answers: {
    'fuel.': (check) => {
      const formula = check.inputs.formula as { C: number; H: number };
      const { higher_J_kg, lower_J_kg } = heatingValues(formula.C, formula.H, input(check, 'Hf'));
      return { HHV_MJ_kg: higher_J_kg / 1e6, LHV_MJ_kg: lower_J_kg / 1e6 };
    },
    'engine.dew.': (check) => {
      const share = exhaustWaterShare(input(check, 'nC'), input(check, 'nH'), input(check, 'lambda'));
      return { x_H2O: share, Tdew_C: exhaustDewPoint(share, ATMOSPHERE_PA) };
    },
    'engine.derate.': (check) => ({
      ISA_density_ratio: airDensityRatio(input(check, 'z_m')),
      'rule_3.5pct_per_305m': altitudeDerating(input(check, 'z_m')),
    }),
  },
};
