/** Random coils that fit the store they hang in. */
import { findTube, TUBE_MATERIALS, TUBE_STANDARDS, tubeSizes } from '../../../../sim/physics/tubes.ts';
import type { Scenario } from '../../../../sim/scenario/index.ts';
import { type Chance, digits } from './chance.ts';
import type { RandomStore } from './store.ts';

export type Coil = NonNullable<Scenario['coils']>[number];

export function randomCoils(chance: Chance, store: RandomStore): Coil[] {
  const wanted = chance.whole(0, 4);
  return Array.from({ length: wanted }, (_, i) => randomCoil(chance, store, `coil ${i + 1}`)).filter(
    (coil) => coil !== null,
  );
}

const CLEAR_M = { touching: 0, 'finger gap': 0.019, spread: 0.051 };

/** A coil that fits, or null where the store is too small for the tube that chance picked. */
function randomCoil(chance: Chance, store: RandomStore, name: string): Coil | null {
  const { tube, outside_m } = randomTube(chance);
  const widest = 0.98 * store.width_m - outside_m;
  const tightest = 6.2 * outside_m;
  const spacing = chance.pick(['touching', 'finger gap', 'spread'] as const);
  const side_by_side = chance.pick([1, 1, 1, 2, 3]);
  const pitch = outside_m + CLEAR_M[spacing];
  const from = chance.between(0, 0.6 * store.depth_m);
  const room = 0.97 * store.depth_m - from - outside_m;
  if (widest < tightest || room < 0.3 * pitch) return null;
  const diameter = chance.between(tightest, widest);
  const turns = (room / pitch) * chance.between(0.2, 1) * side_by_side;
  const rolls = chance.pick([1, 1, 2, 4]);
  const roll_length = (turns * Math.hypot(Math.PI * diameter, pitch)) / rolls;
  if (roll_length < 0.31) return null;
  return {
    name,
    tube,
    rolls,
    roll_length: chance.length(Math.min(400, roll_length)),
    ...(rolls > 1 ? { join: chance.pick(['series', 'parallel']) } : {}),
    coil_diameter: chance.length(diameter),
    spacing,
    side_by_side,
    from: chance.length(from),
    ...chance.maybe(0.3, () => ({ to: chance.length(0.99 * store.depth_m) })),
    ...chance.maybe(0.5, () => ({ fed_from: chance.pick(['bottom', 'top']) })),
    ...chance.maybe(0.3, () => ({ fouling: `${digits(chance.between(0, 0.001))} m2 K/W` })),
    ...chance.maybe(0.3, () => ({
      outside_film: chance.between(0.5, 1.2),
      inside_film: chance.between(0.8, 1.2),
    })),
  };
}

function randomTube(chance: Chance): { tube: Coil['tube']; outside_m: number } {
  if (chance.yes(0.2)) {
    const outside_m = chance.between(0.006, 0.04);
    return {
      outside_m,
      tube: {
        kind: 'own',
        material: chance.pick(Object.keys(TUBE_MATERIALS)),
        outside: chance.length(outside_m),
        inside: chance.length(outside_m * chance.between(0.6, 0.93)),
      },
    };
  }
  const kind = chance.pick(TUBE_STANDARDS);
  const size = chance.pick(tubeSizes(kind));
  return { tube: { kind, size }, outside_m: findTube(kind, size)?.outside_diameter_m ?? Number.NaN };
}
