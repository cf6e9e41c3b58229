/** The store's faces: what they conduct, and how hot each sheet's warm side gets. */
import { cylinderSideConductance, flatFaceConductance, type WallFilms } from '../../physics/insulation.ts';
import { Air } from '../air.ts';
import type { StoreDescription, WallLayer } from '../description.ts';
import type { StoreGeometry } from './geometry.ts';

/** Film of still water on the inside [W/(m2 K)] (common practice). */
const INSIDE_FILM = 300;

export interface Walls {
  /** Side conductance of each layer, bridges included [W/K]. */
  side_W_K: Float64Array;
  bottom_W_K: number;
  /** Through the closed lid [W/K]. */
  lid_W_K: number;
  /** Sheets with a service limit: share of the drop from water to air that has happened before their warm side. */
  limits: { material: string; kind: 'liner' | 'foam' | 'wall'; max_C: number; drop_share: number }[];
}

/** Conductances of a store's faces for its present water. */
export function wallsOf(store: StoreDescription, geometry: StoreGeometry): Walls {
  const films: WallFilms = { inside_W_m2K: INSIDE_FILM, outside_W_m2K: Air.film_W_m2K(store.surroundings) };
  const shell: WallLayer = {
    material: store.wall.material,
    thickness_m: store.wall.thickness_m,
    resistance_m2K_W: store.wall.thickness_m / store.wall.conductivity_W_mK,
    max_C: store.wall.max_C,
  };
  const sides = [shell, ...store.insulation.sides];
  const wetted = geometry.side_m2.reduce((sum, a) => sum + a, 0);
  const round = store.shape.kind !== 'box';
  const diameter = round && 'diameter_m' in store.shape ? store.shape.diameter_m : 0;
  // A cylinder's wetted side is unrolled to a length of its own circumference, so that the sheets' growing radius counts.
  const side = round
    ? cylinderSideConductance(diameter, wetted / (Math.PI * diameter), sides, films)
    : flatFaceConductance(wetted, sides, films);
  const bottom = flatFaceConductance(geometry.bottom_m2, [shell, ...store.insulation.bottom], films);
  const lid = flatFaceConductance(geometry.surface_m2, store.insulation.lid, films);
  return {
    side_W_K: geometry.side_m2.map((a) => (store.bridges * side * a) / wetted),
    bottom_W_K: store.bridges * bottom,
    lid_W_K: store.bridges * lid,
    limits: limitsOf(store, sides, films),
  };
}

function limitsOf(store: StoreDescription, sides: WallLayer[], films: WallFilms): Walls['limits'] {
  const limits: Walls['limits'] = [];
  if (store.liner) limits.push({ ...store.liner, kind: 'liner', drop_share: 0 });
  const faces: [WallLayer[], 'foam' | 'wall'][] = [
    [sides, 'foam'],
    [store.insulation.lid, 'foam'],
  ];
  for (const [sheets, kind] of faces) {
    const whole =
      1 / films.inside_W_m2K +
      1 / films.outside_W_m2K +
      sheets.reduce((sum, s) => sum + s.resistance_m2K_W, 0);
    let before = 1 / films.inside_W_m2K;
    for (const [i, sheet] of sheets.entries()) {
      if (sheet.max_C !== null) {
        limits.push({
          material: sheet.material,
          kind: sheets === sides && i === 0 ? 'wall' : kind,
          max_C: sheet.max_C,
          drop_share: before / whole,
        });
      }
      before += sheet.resistance_m2K_W;
    }
  }
  return limits;
}
