/** What the text of an input means. */
import {
  type DimensionKey,
  type FieldEntry,
  fieldEntries,
  parseQuantity,
  readEntry,
  type SoldBy,
} from '../../sim/index.ts';
import { fromSim } from './from-sim.ts';
import { bothText, priceText, quantityText, type Units } from './units.ts';

let known: Map<string, FieldEntry[]> | null = null;

/** Fields by their path without variants, as `coils[].tube.outside`: variants of one part may share a name. */
function entriesAt(pattern: string): FieldEntry[] {
  if (known === null) {
    known = new Map();
    for (const entry of fieldEntries()) {
      const plain = entry.path.replace(/\([^)]*\)/g, '');
      known.set(plain, [...(known.get(plain) ?? []), entry]);
    }
  }
  return known.get(pattern) ?? [];
}

type Found = { value: number; dimension: DimensionKey } | { value: number; per: SoldBy };

/** A quantity's or a price's text at a path or its pattern; null for what is none. The text decides between variants. */
function quantityAt(path: string, text: string): Found | null {
  for (const { field } of entriesAt(path.replace(/\[\d+\]/g, '[]'))) {
    if (field.kind === 'number' && field.per) {
      const read = readEntry(field, text);
      if (read.ok && typeof read.value.means === 'number') return { value: read.value.means, per: field.per };
    }
    if (field.kind !== 'quantity') continue;
    const reading = parseQuantity(text, field.dimension);
    if (reading.ok) return { value: reading.value, dimension: field.dimension };
  }
  return null;
}

/** `50 ft (15.2 m)` for a quantity's text at a path or its pattern; null for what is none. */
export function inputMeaning(path: string, text: string, plain: boolean): string | null {
  const found = quantityAt(path, text);
  if (!found) return null;
  if ('dimension' in found) return bothText(found.value, found.dimension, { plain });
  const [us, si] = (['US', 'SI'] as const).map((units) =>
    priceText(found.value, found.per, units, { plain }),
  );
  return `${us} (${si})`;
}

/** A quantity's text in the reader's units, as `38 °C` for `100 F`; what is none stays as it is. */
export function inputInUnits(path: string, text: string, units: Units): string {
  const found = quantityAt(path, text);
  if (!found) return fileText(path, text);
  return 'dimension' in found
    ? quantityText(found.value, found.dimension, units)
    : priceText(found.value, found.per, units);
}

/** Names that a person gave: the same in every language. Days of draws are called by sim. */
const given = /(^|(?<!pattern)\.)(name|note|coil|file|currency)$/;

/** A value as a file has it, for a person: words and numbers in their language, names as they were given. */
export function fileText(path: string, text: string): string {
  return given.test(path) ? text : fromSim(text);
}

/** What a thing goes by for want of a name of its own. */
const usualNames: readonly string[] = ['engine', 'collector', 'backup heater', 'shower', 'store', 'cistern'];

/** A thing's name as it was given, or in the reader's language what it goes by without one. */
export function nameText(name: string): string {
  return usualNames.includes(name) ? fromSim(name) : name;
}

/** What an input is called; its path where nothing says. */
export function inputName(path: string): string {
  const label = entriesAt(path.replace(/\[\d+\]/g, '[]'))[0]?.field.label;
  return label === undefined ? path : fromSim(label);
}
