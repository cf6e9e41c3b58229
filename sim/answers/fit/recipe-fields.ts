/** Small measurements that anybody can make at the store: what each asks for. */
import type { DimensionKey } from '../../quantity/index.ts';

export interface RecipeField {
  key: string;
  dimension: DimensionKey;
  /** What is believed, SI. */
  range: readonly [number, number];
  /** As it may be typed, by units. */
  example: { US: string; SI: string };
}

const field = (
  key: string,
  dimension: DimensionKey,
  range: readonly [number, number],
  US: string,
  SI: string,
): RecipeField => ({ key, dimension, range, example: { US, SI } });

const water = (key: string, US: string, SI: string) => field(key, 'temperature', [0, 100], US, SI);
const room = field('room', 'temperature', [-50, 60], '55 F', '13 C');
const volume = field('volume', 'volume', [5e-4, 0.2], '5 gal', '20 L');
const seconds = field('time', 'time', [2, 3600], '150 s', '150 s');

/** Source of the recipes: shared/trade.md 5. */
export const RECIPES = {
  bucket: [volume, seconds],
  'shower bucket': [volume, seconds],
  'coil outlet': [
    field('flow', 'flow', [1e-6, 1e-3], '1.5 gpm', '6 L/min'),
    water('tank', '140 F', '60 C'),
    water('cold', '45 F', '7 C'),
    water('outlet', '112 F', '44 C'),
  ],
  'cool-down': [
    water('from', '140 F', '60 C'),
    water('to', '134 F', '57 C'),
    room,
    field('time', 'time', [3600, 6 * 86_400], '12 h', '12 h'),
  ],
  'heat-up': [
    water('from', '100 F', '40 C'),
    water('to', '112 F', '46 C'),
    room,
    field('time', 'time', [900, 86_400], '2 h', '2 h'),
    field('load', 'electric_power', [0, 50_000], '2.5 kW', '2.5 kW'),
  ],
  'solar day': [water('from', '100 F', '40 C'), water('to', '118 F', '48 C'), room],
  level: [
    field('fell', 'length', [5e-4, 2], '1/4 in', '6 mm'),
    field('time', 'time', [86_400, 60 * 86_400], '7 days', '7 days'),
    water('store', '140 F', '60 C'),
    room,
  ],
} as const satisfies Record<string, readonly RecipeField[]>;

export type RecipeKind = keyof typeof RECIPES;

/** A measurement as it was typed, by the keys of its fields. */
export interface Recipe {
  kind: RecipeKind;
  typed: Record<string, string>;
}
