/** Coils as one can buy them: tubes and rolls as sold, laid where the household's coil lies, and what they cost. */
import { turnsOf } from '../../parts/coil/course.ts';
import type { CoilDescription, Prices, StoreDescription, Tube } from '../../parts/description.ts';
import { tubeMass } from '../../parts/filled-weight.ts';
import { findTube, type TubeStandard } from '../../physics/tubes.ts';
import { rollsOf } from './rolls.ts';

/** What a builder looks at first. */
const OFFERED: { standard: TubeStandard; sizes: string[] }[] = [
  { standard: 'refrigeration', sizes: ['3/8', '1/2', '5/8'] },
  { standard: 'plumbing L', sizes: ['3/8', '1/2', '3/4'] },
  { standard: 'PEX', sizes: ['1/2', '3/4'] },
];
/** Nobody joins more. */
const MOST_ROLLS = 4;
/** Tightest winding, in tube diameters, as the scenario's reader has it. */
const TIGHTEST = 6;

/** The coil with another tube, its turns as far apart as before. */
export function withTube(coil: CoilDescription, tube: Tube): CoilDescription {
  const clear_m = coil.pitch_m - coil.tube.outside_diameter_m;
  return { ...coil, tube, pitch_m: clear_m + tube.outside_diameter_m };
}

/**
 * Every coil one can buy in the place of `coil`, and its own tube in its own rolls: wound and hung as it is.
 * The present coil is among them.
 */
export function candidatesFor(coil: CoilDescription): CoilDescription[] {
  const sold = OFFERED.flatMap(({ standard, sizes }) =>
    sizes.flatMap((size) => {
      const tube = findTube(standard, size);
      return tube ? rollsOf(standard).map((roll_length_m) => ({ tube, roll_length_m })) : [];
    }),
  );
  const own = { tube: coil.tube, roll_length_m: coil.roll_length_m };
  const isOwn = ({ tube, roll_length_m }: typeof own) =>
    tube.label === own.tube.label && Math.abs(roll_length_m - own.roll_length_m) < 0.01;
  const others = sold.filter(
    (kind) => !isOwn(kind) && coil.coil_diameter_m >= TIGHTEST * kind.tube.outside_diameter_m,
  );
  return [own, ...others].flatMap((kind) => {
    const most = isOwn(kind) ? Math.max(MOST_ROLLS, coil.rolls) : MOST_ROLLS;
    return Array.from({ length: most }, (_, i) => i + 1).flatMap((rolls) =>
      joinsOf(rolls).map((join) => ({
        ...withTube(coil, kind.tube),
        rolls,
        roll_length_m: kind.roll_length_m,
        join,
      })),
    );
  });
}

/** One roll is joined to nothing. */
function joinsOf(rolls: number): CoilDescription['join'][] {
  return rolls === 1 ? ['series'] : ['series', 'parallel'];
}

/** Whether two coils are of the same tube, rolls and join. */
export function sameCoil(a: CoilDescription, b: CoilDescription): boolean {
  return (
    a.tube.label === b.tube.label &&
    a.rolls === b.rolls &&
    Math.abs(a.roll_length_m - b.roll_length_m) < 0.01 &&
    (a.rolls === 1 || a.join === b.join)
  );
}

/** Windings side by side or inside one another that the coil takes between its lowest turn and the water's surface. */
export function windingsOf(coil: CoilDescription, store: StoreDescription): number {
  const height_m = Math.max(coil.pitch_m, store.water_depth_m - coil.bottom_m - coil.tube.outside_diameter_m);
  const wound_m = coil.rolls * turnsOf(coil, coil.roll_length_m) * coil.pitch_m;
  return Math.max(1, Math.ceil(wound_m / height_m - 1e-6));
}

/** Joints of a coil: its two ends, a coupling between rolls in series, or both ends of each roll at a manifold. */
export function jointsOf({ rolls, join }: Pick<CoilDescription, 'rolls' | 'join'>): number {
  return rolls > 1 && join === 'parallel' ? 2 * rolls + 2 : rolls + 1;
}

/** What tube and joints cost; null for a tube that has no price. */
export function coilPrice(coil: CoilDescription, prices: Prices): number | null {
  const joints = jointsOf(coil) * prices.fitting_per_joint;
  if (coil.tube.material === 'copper') return tubeMass(coil) * prices.copper_per_kg + joints;
  if (coil.tube.material === 'PEX') return coil.rolls * coil.roll_length_m * prices.pex_per_m + joints;
  return null;
}

/**
 * The tube that is sold under the same size by the other trade, plumbing for refrigeration and the reverse; null
 * where there is none. It measures 1/8 in more or less across.
 */
export function namesake(tube: Tube): Tube | null {
  const size = /^(\S+ in) /.exec(tube.label)?.[1];
  if (!size || tube.material !== 'copper') return null;
  return findTube(tube.label.includes('refrigeration') ? 'plumbing L' : 'refrigeration', size);
}
