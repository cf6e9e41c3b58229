/** How sure a person says they are of an entry: what the file holds of it, and what a choice puts there. */
import {
  type Edit,
  isMeasured,
  mayBeMarked,
  type OutlineEntry,
  reachOf,
  readEntry,
  type Scenario,
  type Unsure,
} from '../../../../sim/index.ts';
import {
  boxText,
  cardWords,
  numberText,
  priceText,
  quantityText,
  readTyped,
  spanText,
  type Trouble,
  typedText,
  type Units,
} from '../../../words/index.ts';
import { type ReadDesign, usualRange } from './range-spec.ts';

type Doubt = NonNullable<Scenario['doubts']>[number];
export type Sureness = 'sure' | Unsure | 'between';
export type DoubtEnd = 'from' | 'to';

export function canDoubt({ path, field, value }: OutlineEntry): boolean {
  return isMeasured(field) && mayBeMarked(path) && value !== undefined;
}

/** The file's mark on an input, or null. */
export function doubtAt({ doubts }: Scenario, path: string): Doubt | null {
  return doubts?.find(({ input }) => input === path) ?? null;
}

/** The ends that a word reaches to, for the reader; null where it reaches nowhere. */
export function reachText(
  { field, value }: OutlineEntry,
  unsure: Unsure,
  units: Units,
): [string, string] | null {
  if (!isMeasured(field)) return null;
  const read = readEntry(field, String(value));
  const reach =
    read.ok && typeof read.value.means === 'number' ? reachOf(field, read.value.means, unsure) : null;
  if (!reach) return null;
  const [low, high] = reach.map((end) =>
    field.kind === 'quantity'
      ? quantityText(end, field.dimension, units, { digits: 3 })
      : field.per
        ? priceText(end, field.per, units, { digits: 3 })
        : numberText(Number(end.toPrecision(3))),
  );
  return [low, high];
}

/** The edit that says how sure; "between" begins with the ends one would usually try. */
export function doubtEdit(of: ReadDesign, entry: OutlineEntry, sureness: Sureness, units: Units): Edit {
  const { scenario } = of;
  const { path: input } = entry;
  if (sureness === 'sure') return listed(scenario, input, null);
  if (sureness !== 'between') return listed(scenario, input, { input, unsure: sureness });
  const { from, to } = usualRange(entry, units, of);
  return listed(scenario, input, { input, unsure: 'between', from, to });
}

/** The edit that moves an end, or what is wrong with it. */
export function endEdit(
  scenario: Scenario,
  { path: input, field }: OutlineEntry,
  end: DoubtEnd,
  typed: string,
): { ok: true; edit: Edit } | { ok: false; trouble: Trouble } {
  const words = cardWords.doubt;
  const doubt = doubtAt(scenario, input);
  const before = doubt?.unsure === 'between' ? doubt : { from: '', to: '' };
  const ends = { from: before.from, to: before.to, [end]: typedText(field, typed).trim() };
  const read = readTyped(field, typed);
  if (!read.ok) return { ok: false, trouble: { where: words[end], ...pick(read) } };
  const [low, high] = [ends.from, ends.to].map((text) => {
    const each = readEntry(field, text);
    return each.ok && typeof each.value.means === 'number' ? each.value.means : Number.NaN;
  });
  if (low >= high) {
    const { expected, fix } = words.order;
    const [from, to] = [ends.from, ends.to].map((text) => boxText(field, text));
    return { ok: false, trouble: { where: words.to, expected, got: spanText(from, to), fix } };
  }
  return {
    ok: true,
    edit: listed(scenario, input, { input, unsure: 'between', from: ends.from, to: ends.to }),
  };
}

function pick({ expected, got, fix }: { expected: string; got: string; fix: string }) {
  return { expected, got, fix };
}

/** The whole list with a mark put in the place of the one before, or taken out. */
function listed({ doubts = [] }: Scenario, input: string, mark: Doubt | null): Edit {
  const at = doubts.findIndex((each) => each.input === input);
  const list =
    at < 0 ? (mark ? [...doubts, mark] : doubts) : doubts.toSpliced(at, 1, ...(mark ? [mark] : []));
  return { path: 'doubts', value: list.length > 0 ? list : undefined };
}
