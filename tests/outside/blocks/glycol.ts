import { fluidFreezingPoint, fluidProperties } from '../../../sim/physics/fluid.ts';
import { type Block, input } from '../checks.ts';

export const glycol: Block = {
  name: 'glycol',
  atLeast: 320,
  answers: {
    'glycol.': (check) => {
      const fluid = {
        kind: check.inputs.fluid === 'PG' ? ('propylene glycol' as const) : ('ethylene glycol' as const),
        mass_share: input(check, 'mass_frac'),
      };
      const p = fluidProperties(fluid, input(check, 'T_C'));
      return {
        rho: p.density_kg_m3,
        cp: p.heat_capacity_J_kgK,
        k: p.conductivity_W_mK,
        mu: p.viscosity_Pa_s,
        T_freeze_C: fluidFreezingPoint(fluid),
      };
    },
  },
};
