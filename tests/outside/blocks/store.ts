import {
  cylinderSideConductance,
  flatFaceConductance,
  type StandingLossClass,
  standingLossLimit,
  verticalConductivity,
} from '../../../sim/physics/insulation.ts';
import { type Block, type Check, input } from '../checks.ts';

const CLASSES: StandingLossClass[] = ['A+', 'A', 'B', 'C', 'D', 'E', 'F'];

/** What a store loses and conducts. */
export const store: Block = {
  name: 'store',
  atLeast: 51,
  answers: {
    'tank.erp.': (check) =>
      Object.fromEntries(CLASSES.map((name) => [name, standingLossLimit(name, input(check, 'V_L') / 1000)])),
    'tank.UA.': conductances,
    // The wall is thin: its area over the water's is 4 t / D.
    'tank.keff.': (check) =>
      verticalConductivity(
        input(check, 'k_water'),
        input(check, 'k_wall'),
        (4 * input(check, 't_wall')) / input(check, 'D'),
      ),
  },
};

function conductances(check: Check) {
  const thickness_m = input(check, 't_ins');
  const sheets =
    thickness_m > 0 ? [{ thickness_m, resistance_m2K_W: thickness_m / input(check, 'k_ins') }] : [];
  const films = { inside_W_m2K: input(check, 'hi'), outside_W_m2K: input(check, 'ho') };
  const diameter = input(check, 'D');
  const side = cylinderSideConductance(diameter, input(check, 'H'), sheets, films);
  const each_end = flatFaceConductance((Math.PI / 4) * diameter ** 2, sheets, films);
  return { side, each_end, total: side + 2 * each_end };
}
