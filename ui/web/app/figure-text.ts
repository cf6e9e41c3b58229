/** A figure by its key in the glossary, which is long and loaded with those that show figures. */
import { type DimensionKey, glossary } from '../../../sim/index.ts';
import { bothEnergies, quantityText, type Units } from '../../words/index.ts';

const dimensions = new Map(glossary.map(({ key, dimension }) => [key, dimension]));

/** What a figure measures; a count where the glossary does not know it. */
export function dimensionOf(key: string): DimensionKey {
  return dimensions.get(key) ?? 'count';
}

/** As `figureText`; heat in both of its units, the reader's own first. */
export function figureInFull(key: string, value: number, units: Units): string {
  return dimensionOf(key) === 'energy' ? bothEnergies(value, units) : figureText(key, value, units);
}

/** A figure's value in the reader's units. */
export function figureText(key: string, value: number, units: Units): string {
  return quantityText(value, dimensionOf(key), units);
}
