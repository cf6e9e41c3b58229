/** Random stores, and rooms for parts to stand in. */
import { MATERIALS } from '../../../../sim/physics/materials.ts';
import type { Scenario } from '../../../../sim/scenario/index.ts';
import type { Chance } from './chance.ts';

type Part<K extends keyof Scenario> = NonNullable<Scenario[K]>;

export interface RandomStore {
  part: Part<'store'>;
  width_m: number;
  depth_m: number;
}

export function randomStore(chance: Chance): RandomStore {
  const { inside, width_m, height_m } = randomInside(chance);
  const depth_m = height_m * chance.between(0.5, 0.96);
  const lid = chance.pick(['closed', 'ajar', 'open'] as const);
  return {
    width_m,
    depth_m,
    part: {
      inside,
      water_depth: chance.length(depth_m),
      ...chance.maybe(0.6, () => ({
        wall: {
          material: chance.pick(materials('wall')),
          thickness: chance.length(chance.between(0.001, 0.03)),
        },
      })),
      ...chance.maybe(0.5, () => ({ liner: { material: chance.pick(materials('liner')) } })),
      ...chance.maybe(0.9, () => ({
        insulation: {
          ...chance.maybe(0.9, () => ({ sides: randomSheets(chance) })),
          ...chance.maybe(0.8, () => ({ bottom: randomSheets(chance) })),
          ...chance.maybe(0.8, () => ({ lid: randomSheets(chance) })),
        },
      })),
      lid,
      ...(lid === 'open' ? {} : chance.maybe(0.3, () => ({ vapour_escape: chance.share(0, 0.9) }))),
      stands: randomPlace(chance),
      ...chance.maybe(0.3, () => ({ ground: chance.temperature(chance.between(0, 20)) })),
      ...chance.maybe(0.5, () => ({ bridges: chance.between(1, 3) })),
      make_up: chance.pick(['float', 'by hand']),
    },
  };
}

function randomInside(chance: Chance): {
  inside: Part<'store'>['inside'];
  width_m: number;
  height_m: number;
} {
  const [length, width, height] = [
    chance.between(0.3, 2.5),
    chance.between(0.3, 1.5),
    chance.between(0.3, 1.9),
  ];
  switch (chance.whole(0, 3)) {
    case 0:
      return { inside: { shape: 'tote' }, width_m: 0.95, height_m: 1 };
    case 1:
      return {
        inside: { shape: 'upright cylinder', diameter: chance.length(width), height: chance.length(height) },
        width_m: width,
        height_m: height,
      };
    case 2:
      return {
        inside: { shape: 'lying cylinder', diameter: chance.length(width), length: chance.length(length) },
        width_m: Math.min(width, length),
        height_m: width,
      };
    default:
      return {
        inside: {
          shape: 'box',
          length: chance.length(length),
          width: chance.length(width),
          height: chance.length(height),
        },
        width_m: Math.min(length, width),
        height_m: height,
      };
  }
}

function materials(use: 'insulation' | 'wall' | 'liner'): string[] {
  return Object.keys(MATERIALS).filter((name) => MATERIALS[name].use === use);
}

function randomSheets(chance: Chance) {
  return Array.from({ length: chance.whole(0, 3) }, () => ({
    material: chance.pick(materials('insulation')),
    thickness: chance.length(chance.between(0.01, 0.2)),
    ...chance.maybe(0.2, () => ({ resistance: `R-${chance.whole(1, 30)}` })),
  }));
}

export function randomPlace(chance: Chance) {
  if (chance.yes(0.3)) return { where: 'outdoors' as const };
  return {
    where: 'room' as const,
    temperature: chance.temperature(chance.between(-5, 30)),
    swing: chance.difference(chance.between(0, 12)),
    ...chance.maybe(0.5, () => ({ humidity: chance.share(0.2, 0.95) })),
  };
}
