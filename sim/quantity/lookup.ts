/** Finds a unit in the closed list by any of its spellings. */
import { editDistance } from './edit-distance.ts';
import { printedSymbol, type Unit } from './unit.ts';
import { unitForm } from './unit-form.ts';
import { type DimensionKey, dimensionKeys, dimensions } from './units.ts';

const byForm = new Map<DimensionKey, ReadonlyMap<string, Unit>>(
  dimensionKeys.map((key) => [key, formsOf(dimensions[key].units)]),
);

function formsOf(units: readonly Unit[]): Map<string, Unit> {
  const forms = new Map<string, Unit>();
  for (const unit of units)
    for (const text of [unit.symbol, ...unit.also]) forms.set(unitForm(text) ?? text, unit);
  return forms;
}

/** The unit of a dimension that a text means, or null. */
export function findUnit(text: string, key: DimensionKey): Unit | null {
  const form = unitForm(text);
  return (form !== null && byForm.get(key)?.get(form)) || null;
}

/** What else a unit's text could measure, as in `a pressure`, or null. */
export function measures(text: string): string | null {
  const form = unitForm(text);
  const key = form === null ? undefined : dimensionKeys.find((other) => byForm.get(other)?.has(form));
  return key ? dimensions[key].name : null;
}

/** The unit of a dimension whose symbol is nearest to a mistyped one, or null where none is near. */
export function nearestUnit(text: string, key: DimensionKey): string | null {
  const plain = (spelled: string) => spelled.toLowerCase().replace(/[\s().·*^]+/g, '');
  const wanted = plain(text.slice(0, 40));
  let best: string | null = null;
  // A single strange letter is near to every other one: that is no likeness.
  let least = Math.min(Math.max(1, Math.floor(wanted.length / 3)), wanted.length - 1) + 0.5;
  for (const { symbol, also } of dimensions[key].units) {
    for (const spelled of [symbol, ...also]) {
      const distance = editDistance(wanted, plain(spelled));
      if (distance < least) [best, least] = [printedSymbol(symbol), distance];
    }
  }
  return best;
}
