/** Where the store stands in the drawing, and how large: the same scale along and up. */
import { drawnWidth, insideHeight, type SectionFacts } from '../../../../sim/index.ts';

export interface SectionFrame {
  width: number;
  height: number;
  /** The one scale of store, coils, walls and probes. */
  px_per_m: number;
  /** Middle of the store. */
  middle_x: number;
  /** Inside bottom of the store. */
  bottom_y: number;
  /** Machines and their pipes stand above this. */
  band: number;
  /** From the middle to the outside of all that is drawn of stores [m]: rulers and temperatures stand clear of it. */
  half_m: number;
}

/** What stands around the inside of a store [m]. */
export interface Outer {
  side_m: number;
  below_m: number;
  above_m: number;
}

type Store = SectionFacts['store'];

/** Room for rulers on the left and below, for temperatures on the right [px]. */
const LEFT = 46;
const RIGHT = { narrow: 70, wide: 96 };
const BELOW = 58;
/** Air between the machines' pipes and the lid: a lid ajar needs more. */
const HEADROOM = { closed: 10, ajar: 26, open: 26 };

export function isNarrow(width: number): boolean {
  return width < 480;
}

export function sheetsThickness(sheets: readonly { thickness_m: number }[]): number {
  return sheets.reduce((sum, { thickness_m }) => sum + thickness_m, 0);
}

export function outerOf({ shape, wall, insulation, lid }: Store): Outer {
  const sides = wall.thickness_m + sheetsThickness(insulation.sides);
  const above = lid === 'open' ? 0 : sheetsThickness(insulation.lid);
  if (shape.kind === 'lying cylinder') {
    // One ring all around, whose upper part has the sheets of the lid.
    const above_m = wall.thickness_m + above;
    return { side_m: Math.max(sides, above_m), below_m: sides, above_m };
  }
  return { side_m: sides, below_m: wall.thickness_m + sheetsThickness(insulation.bottom), above_m: above };
}

/** Fits one store, or two drawn over each other, under a band of machines into a width and at most a height. */
export function sectionFrame(
  stores: readonly Store[],
  { width, height, band }: { width: number; height: number; band: number },
): SectionFrame {
  const right = isNarrow(width) ? RIGHT.narrow : RIGHT.wide;
  const most = (of: (store: Store) => number) => Math.max(...stores.map(of));
  const across_m = most((store) => drawnWidth(store.shape) + 2 * outerOf(store).side_m);
  const above_m = most((store) => insideHeight(store.shape) + outerOf(store).above_m);
  const below_m = most((store) => outerOf(store).below_m);
  const top = band + most(({ lid }) => HEADROOM[lid]);
  const room = Math.max(60, height - top - BELOW);
  const px_per_m = Math.min((width - LEFT - right) / across_m, room / (above_m + below_m));
  const bottom_y = top + above_m * px_per_m;
  return {
    width,
    height: Math.ceil(bottom_y + below_m * px_per_m + BELOW),
    px_per_m,
    middle_x: LEFT + (width - LEFT - right) / 2,
    bottom_y,
    band,
    half_m: across_m / 2,
  };
}

/** x of a distance to the right of the store's middle. */
export function xAt({ middle_x, px_per_m }: SectionFrame, right_m: number): number {
  return middle_x + right_m * px_per_m;
}

/** y of a height above the inside bottom. */
export function yAt({ bottom_y, px_per_m }: SectionFrame, height_m: number): number {
  return bottom_y - height_m * px_per_m;
}
