import {
  bathEffectiveness,
  counterflowEffectiveness,
  crossflowEffectiveness,
  hotShare,
  orificeFlow,
} from '../../../sim/physics/heat-exchange.ts';
import { type Block, type Check, input } from '../checks.ts';

const LITRES_PER_GALLON = 3.785411784;

/** Exchangers, mixing valve, shower head. */
export const exchange: Block = {
  name: 'exchange',
  atLeast: 25,
  answers: {
    'ntu.bath.': (check) => bathEffectiveness(input(check, 'NTU')),
    'hx.counter.': (check) => counterflowEffectiveness(input(check, 'NTU'), input(check, 'Cr')),
    'mix.': (check) => hotShare(input(check, 'Th'), input(check, 'Tc'), input(check, 'Tm')),
    'shower.': (check) => {
      const gpm = orificeFlow(input(check, 'psi'), 2.5, 80);
      return { gpm, lpm: gpm * LITRES_PER_GALLON };
    },
    'ex.incropera11.3': exhaustExchanger,
  },
};

/** The example's given temperatures and film: 300 to 100 C against 35 to 125 C, 100 W/(m2 K) on the gas side. */
function exhaustExchanger(check: Check) {
  const water = input(check, 'Cc');
  const cr = input(check, 'Cr');
  const ntu = input(check, 'NTU');
  return {
    q_W: water * (125 - 35),
    eps: crossflowEffectiveness(ntu, cr),
    A_m2: (ntu * cr * water) / 100,
  };
}
