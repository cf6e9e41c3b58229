import {
  coilCriticalReynolds,
  coilCurvature,
  coilNusselt,
  coilNusseltLaminar,
  gnielinskiNusselt,
} from '../../../sim/physics/coil-inside.ts';
import { churchillChuNusselt, GRAVITY_M_S2, rayleigh } from '../../../sim/physics/coil-outside.ts';
import {
  colebrookFriction,
  dravidNusselt,
  itoFriction,
  kuehnGoldsteinNusselt,
  manlapazChurchillNusselt,
  morganNusselt,
  moriNakayamaFriction,
  moriNakayamaNusselt,
  otherCriticalReynolds,
  prabhanjanNusselt,
  prasadFriction,
  schmidtFriction,
  schmidtTurbulentNusselt,
  whiteFriction,
  xinEbadianLaminarNusselt,
  xinEbadianTurbulentNusselt,
} from '../../../sim/physics/coil-spread.ts';
import { fluidProperties } from '../../../sim/physics/fluid.ts';
import { coilFrictionLaminar, coilFrictionTurbulent } from '../../../sim/physics/friction.ts';
import { waterDensity, waterExpansion } from '../../../sim/physics/water.ts';
import { type Block, type Check, input } from '../checks.ts';

const curvature = (check: Check) => coilCurvature(input(check, 'Di_m'), input(check, 'Dc_m'), 0);

/** Both sides of a coil, the chosen forms and the published others. */
export const coil: Block = {
  name: 'coil',
  atLeast: 179,
  answers: {
    'coil.Recrit.': (check) => {
      const others = otherCriticalReynolds(curvature(check));
      return {
        Ito: others.ito,
        Schmidt: coilCriticalReynolds(curvature(check)),
        Srinivasan: others.srinivasan,
        Seth_Stahel: others.sethStahel,
        Kubair_Kuloor: others.kubairKuloor,
        Kutateladze_Borishanskii: others.kutateladzeBorishanskii,
      };
    },
    'coil.inside.Re': inside,
    'coil.inside.PG40.': (check) => {
      const at = [input(check, 'Re'), input(check, 'Pr'), curvature(check)] as const;
      return {
        schmidt: coilNusseltLaminar(...at),
        manlapaz: manlapazChurchillNusselt(...at),
        dravid: dravidNusselt(...at),
        xin: xinEbadianLaminarNusselt(...at),
      };
    },
    'coil.outside.': outside,
    'ex.som8.8': heaterSurface,
  },
};

function inside(check: Check) {
  const re = input(check, 'Re');
  const pr = input(check, 'Pr');
  const r = curvature(check);
  const shared = {
    Re: re,
    De: re * Math.sqrt(r),
    f_schm: schmidtFriction(re, r),
    f_mori: moriNakayamaFriction(re, r),
    Nu_gnielinski_vdi: coilNusselt(re, pr, r),
    f_straight: re < 2040 ? 64 / re : colebrookFriction(re, 0),
    Nu_straight_gn: re < 2300 ? 3.66 : gnielinskiNusselt(re, pr),
  };
  return re < coilCriticalReynolds(r)
    ? {
        ...shared,
        f_white: whiteFriction(re, r),
        f_mg: coilFrictionLaminar(re, r),
        Nu_schmidt: coilNusseltLaminar(re, pr, r),
        Nu_manlapaz: manlapazChurchillNusselt(re, pr, r),
        Nu_dravid: dravidNusselt(re, pr, r),
        Nu_xin: xinEbadianLaminarNusselt(re, pr, r),
      }
    : {
        ...shared,
        f_ito: itoFriction(re, r),
        f_mg: coilFrictionTurbulent(re, r),
        f_prasad: prasadFriction(re, r),
        Nu_schmidt: schmidtTurbulentNusselt(re, pr, r),
        Nu_mori: moriNakayamaNusselt(re, pr, r),
        Nu_xin: xinEbadianTurbulentNusselt(re, pr, r),
      };
}

/**
 * The source takes the buoyancy as expansion at the film times the temperature difference, so this does too; how near
 * the density difference itself comes to that is tested apart (tests/sim/physics/coil-outside.test.ts).
 */
function outside(check: Check) {
  const bath = input(check, 'T_bath_C');
  const wall = input(check, 'T_wall_C');
  const diameter = input(check, 'do_m');
  const height = input(check, 'H_coil_m');
  const film = (bath + wall) / 2;
  const water = fluidProperties({ kind: 'water', mass_share: 0 }, film);
  const difference = waterDensity(film) * waterExpansion(film) * (bath - wall);
  const onDiameter = rayleigh(difference, diameter, water);
  const onHeight = rayleigh(difference, height, water);
  const h = (nusselt: number, size: number) => (nusselt * water.conductivity_W_mK) / size;
  return {
    ChurchillChu: h(churchillChuNusselt(onDiameter, water.prandtl), diameter),
    Morgan: h(morganNusselt(onDiameter), diameter),
    KuehnGoldstein: h(kuehnGoldsteinNusselt(onDiameter, water.prandtl), diameter),
    Prabhanjan2004: h(prabhanjanNusselt(onHeight), height),
    RaH: onHeight,
    Ra_d: onDiameter,
  };
}

/** Surface temperature at which the textbook's heater sheds its power, its own film properties given. */
function heaterSurface(check: Check): number {
  const film = check.inputs.film_props as { nu: number; Pr: number; k: number; beta: number };
  const diameter = input(check, 'D');
  const flux = input(check, 'P') / (Math.PI * diameter * input(check, 'L'));
  let rise = 40;
  for (let i = 0; i < 60; i++) {
    const ra = (GRAVITY_M_S2 * film.beta * rise * diameter ** 3 * film.Pr) / film.nu ** 2;
    rise = (flux * diameter) / (film.k * churchillChuNusselt(ra, film.Pr));
  }
  return input(check, 'Tinf') + rise;
}
