import { gnielinskiNusselt, hausenNusselt, petukhovFriction } from '../../../sim/physics/coil-inside.ts';
import { colebrookFriction } from '../../../sim/physics/coil-spread.ts';
import { MINOR_LOSS, straightFriction } from '../../../sim/physics/friction.ts';
import { type Block, input } from '../checks.ts';

/** Straight pipe. */
export const pipe: Block = {
  name: 'pipe',
  atLeast: 21,
  answers: {
    'pipe.f.': (check) => {
      const re = input(check, 'Re');
      const roughness = input(check, 'eD');
      return {
        'fluids_default(Clamond/Colebrook)': re < 2040 ? 64 / re : colebrookFriction(re, roughness),
        Churchill1977: straightFriction(re, roughness),
      };
    },
    'pipe.Nu.': (check) => ({
      f: petukhovFriction(input(check, 'Re')),
      Nu: gnielinskiNusselt(input(check, 'Re'), input(check, 'Pr')),
    }),
    'pipe.Nu.lam.': (check) =>
      hausenNusselt(input(check, 'Re'), input(check, 'Pr'), input(check, 'Di') / input(check, 'L')),
    'pipe.K.bend90': () => MINOR_LOSS.longElbow,
  },
};
