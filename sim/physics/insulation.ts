/** Heat through walls, lids and pipe insulation, and along a store's height. Conductances [W/K] of whole faces. */
import { power } from '../numerics/alike.ts';

/** One sheet of a wall: its thickness [m] and its resistance as a flat sheet [m2 K/W]. */
export interface Sheet {
  thickness_m: number;
  resistance_m2K_W: number;
}

/** Films on the two sides of a wall [W/(m2 K)]. */
export interface WallFilms {
  inside_W_m2K: number;
  outside_W_m2K: number;
}

/**
 * Films of a store's wall: still water inside, a still room's convection and radiation outside.
 *
 * Source: common practice, shared/physics.md 6 (8-12 bare; 8 with an insulated, cool face).
 */
export const STORE_FILMS: WallFilms = { inside_W_m2K: 300, outside_W_m2K: 8 };

/**
 * Film [W/(m2 K)] of a face in wind of wind_m_s [m/s]: 5.7 + 3.8 v, radiation included; v < 5.
 *
 * Source: McAdams 1954, Jurges (from memory).
 */
export function windFilm(wind_m_s: number): number {
  return 5.7 + 3.8 * wind_m_s;
}

/**
 * Conductance [W/K] of a flat face of area_m2 [m2]: A / (1/hi + sum R + 1/ho).
 *
 * No edges or bridges. Source: Fourier; checks.json tank.UA.
 */
export function flatFaceConductance(area_m2: number, sheets: Sheet[], films: WallFilms): number {
  const resistance = sheets.reduce((sum, s) => sum + s.resistance_m2K_W, 0);
  return area_m2 / (1 / films.inside_W_m2K + resistance + 1 / films.outside_W_m2K);
}

/**
 * Conductance [W/K] of a cylinder's side of inside diameter diameter_m and length length_m [m], sheets wrapped round it
 * from the inside out: 1 / (1/(hi pi d L) + sum ln(r2/r1)/(2 pi k L) + 1/(ho pi D L)), k = thickness / resistance.
 *
 * A sheet without thickness keeps its flat resistance. Source: Fourier; checks.json tank.UA.
 */
export function cylinderSideConductance(
  diameter_m: number,
  length_m: number,
  sheets: Sheet[],
  films: WallFilms,
): number {
  let radius = diameter_m / 2;
  let resistance = 1 / (films.inside_W_m2K * 2 * Math.PI * radius * length_m);
  for (const { thickness_m, resistance_m2K_W } of sheets) {
    const outer = radius + thickness_m;
    resistance +=
      thickness_m > 0
        ? (Math.log(outer / radius) * resistance_m2K_W) / (2 * Math.PI * thickness_m * length_m)
        : resistance_m2K_W / (2 * Math.PI * radius * length_m);
    radius = outer;
  }
  resistance += 1 / (films.outside_W_m2K * 2 * Math.PI * radius * length_m);
  return 1 / resistance;
}

/**
 * Conductance per length [W/(m K)] of a pipe of outside diameter outside_m [m] in foam_m [m] of insulation of
 * conductivity k_W_mK, still air film film_W_m2K: 1 / (ln(D/d)/(2 pi k) + 1/(h pi D)). The water's own film is left
 * out. A thin sleeve can lose more than none below the critical radius k/h.
 *
 * Source: Fourier.
 */
export function pipeConductance(
  outside_m: number,
  foam_m: number,
  k_W_mK: number,
  film_W_m2K: number,
): number {
  const over = outside_m + 2 * foam_m;
  return 1 / (Math.log(over / outside_m) / (2 * Math.PI * k_W_mK) + 1 / (film_W_m2K * Math.PI * over));
}

/**
 * Conductivity [W/(m K)] along a store's height of water and wall together: k_water + k_wall A_wall / A_water.
 *
 * wallShare is A_wall / A_water, perimeter times thickness over the water's area. Measured stores show 1-3 W/(m K),
 * more than this, because side walls also stir. Source: Newton 1995, Cruickshank & Harrison 2010 (form from memory);
 * checks.json tank.keff.
 */
export function verticalConductivity(kWater_W_mK: number, kWall_W_mK: number, wallShare: number): number {
  return kWater_W_mK + kWall_W_mK * wallShare;
}

/** Standing-loss classes of hot-water stores: limit a + b V^0.4 [W], V in litres, at 45 K. */
const STANDING_LOSS_CLASSES = {
  'A+': [5.5, 3.16],
  A: [8.5, 4.25],
  B: [12, 5.93],
  C: [16.66, 8.33],
  D: [21, 10.33],
  E: [26, 13.66],
  F: [31, 16.66],
} as const;
export type StandingLossClass = keyof typeof STANDING_LOSS_CLASSES;

/**
 * Most a store of volume_m3 [m3] may lose [W] at 65 C in a room at 20 C to be of a class.
 *
 * Source: Regulation (EU) 812/2013 Annex II; C (the ecodesign cap) second-hand, the others from memory.
 */
export function standingLossLimit(standingClass: StandingLossClass, volume_m3: number): number {
  const [a, b] = STANDING_LOSS_CLASSES[standingClass];
  return a + b * power(1000 * volume_m3, 0.4);
}
