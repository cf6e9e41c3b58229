/** A figure by its key in the glossary, which is long and loaded with those that show figures. */
import { type DimensionKey, glossary } from '../../../sim/index.ts';
import { quantityText, type Units } from '../../words/index.ts';

const dimensions = new Map(glossary.map(({ key, dimension }) => [key, dimension]));

/** What a figure measures; a count where the glossary does not know it. */
export function dimensionOf(key: string): DimensionKey {
  return dimensions.get(key) ?? 'count';
}

/** A figure's value in the reader's units. */
export function figureText(key: string, value: number, units: Units): string {
  return quantityText(value, dimensionOf(key), units);
}
