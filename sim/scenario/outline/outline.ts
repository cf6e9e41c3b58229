/** A part of a scenario file as a tree of everything that may be entered in it, by the catalogue. */
import type {
  ChoiceField,
  DateField,
  DaysField,
  FlagField,
  NumberField,
  Presence,
  QuantityField,
  TextField,
  VariantsField,
} from '../field.ts';
import type { FilledDefault } from '../fill.ts';
import { pathSteps, pathText } from '../problem.ts';
import { valueAt } from '../value-at.ts';
import {
  type Assumed,
  itemsOf,
  type Place,
  placeAt,
  placeBelow,
  standing,
  type Told,
  toldBy,
} from './place.ts';

interface Common {
  path: string;
  label: string;
  need: Presence['need'];
  /** The file says something here. */
  given: boolean;
  assumed: Assumed | null;
  /** What its absence means, if it may be absent. */
  absent: string | null;
  measure: string | null;
}

export type EntryField =
  | QuantityField
  | NumberField
  | ChoiceField
  | TextField
  | FlagField
  | DaysField
  | DateField;

/** A single value. */
export interface OutlineEntry extends Common {
  kind: 'entry';
  field: EntryField;
  /** As in the file, given or assumed; undefined where neither is known. */
  value: unknown;
  /** Key of the word, where it decides what else the part has; else null. */
  decides: string | null;
}
/** Values that belong together. */
export interface OutlineGroup extends Common {
  kind: 'group';
  nodes: OutlineNode[];
  /** It can only be taken out of the file as a whole. */
  whole: boolean;
}
export interface OutlineList extends Common {
  kind: 'list';
  items: OutlineNode[];
  count: readonly [least: number, most: number];
}
export type OutlineNode = OutlineEntry | OutlineGroup | OutlineList;

/** The outline of the part at a path; null where there can be none. `filled` is what the last reading filled in. */
export function outlineOf(
  json: unknown,
  path: string,
  filled: readonly FilledDefault[] = [],
): OutlineNode | null {
  const told = toldBy(filled);
  const at = placeAt(json, pathSteps(path), told);
  return at && nodeOf(at, { told, coils: coilNames(json) });
}

interface Around {
  told: Told;
  /** Names that a part may call its coil by. */
  coils: string[];
}

function nodeOf(at: Place, around: Around): OutlineNode {
  const { field } = at;
  const below = (step: string | number) => placeBelow(at, step, around.told);
  const nodes = (steps: readonly (string | number)[]) =>
    steps
      .map(below)
      .filter((place) => place !== null)
      .map((place) => nodeOf(place, around));
  // Of a thing that is not there, nor stood in for, nothing can be entered yet.
  const there = at.given !== undefined || at.assumed?.value !== undefined;
  switch (field.kind) {
    case 'group': {
      const whole = Object.values(field.fields).some(({ presence }) => presence.need === 'required');
      // A whole that follows from the rest may have its parts told of one by one.
      const open =
        there || (at.assumed !== null && Object.keys(field.fields).some((key) => known(below(key))));
      return { kind: 'group', ...common(at), whole, nodes: open ? nodes(Object.keys(field.fields)) : [] };
    }
    case 'variants': {
      const word = valueAt(standing(at), [field.by]);
      const fields = typeof word === 'string' && Object.hasOwn(field.cases, word) ? field.cases[word] : {};
      const deciding = there ? [wordOf(at, field, word)] : [];
      return {
        kind: 'group',
        ...common(at),
        whole: true,
        nodes: [...deciding, ...nodes(Object.keys(fields))],
      };
    }
    case 'list':
      return { kind: 'list', ...common(at), count: field.count, items: nodes([...itemsOf(at).keys()]) };
    default:
      return entryOf(at, field, around.coils);
  }
}

function known(place: Place | null): boolean {
  return place?.assumed?.value !== undefined;
}

function entryOf(at: Place, field: EntryField, coils: string[]): OutlineEntry {
  const entry = { ...common(at), kind: 'entry' as const, value: standing(at), decides: null };
  const { label, presence } = field;
  return /^(?:engine|collector|taps)\.coil$/.test(entry.path)
    ? { ...entry, field: { kind: 'choice', label, presence: presence as Presence<string>, choices: coils } }
    : { ...entry, field };
}

function wordOf(at: Place, field: VariantsField, word: unknown): OutlineEntry {
  const choices = Object.keys(field.cases);
  const { assumed, ...rest } = common(at);
  return {
    ...rest,
    kind: 'entry',
    assumed: assumed && { ...assumed, value: word },
    path: pathText([...at.steps, field.by]),
    need: 'required',
    field: { kind: 'choice', label: field.label, presence: { need: 'required' }, choices },
    value: word,
    decides: field.by,
  };
}

function common({ field, steps, given, assumed }: Place): Common {
  const { label, presence } = field;
  return {
    path: pathText(steps),
    label,
    need: presence.need,
    given: given !== undefined,
    assumed,
    absent: presence.need === 'optional' ? presence.absent : null,
    measure: field.measure ?? null,
  };
}

function coilNames(json: unknown): string[] {
  const coils = valueAt(json, ['coils']);
  const names = Array.isArray(coils) ? coils.map((coil) => valueAt(coil, ['name'])) : [];
  return names.filter((name) => typeof name === 'string');
}
