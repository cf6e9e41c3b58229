/** A place of a scenario file: its field, what the file says there, and what stands in where it says nothing. */
import type { Band, Field, Grade, GroupField } from '../field.ts';
import { scenario } from '../fields/index.ts';
import type { FilledDefault } from '../fill.ts';
import { pathText } from '../problem.ts';
import { readNumberText } from '../read-number.ts';
import { valueAt } from '../value-at.ts';

/** What is taken where the file is silent. */
export interface Assumed {
  /** As it could stand in the file; undefined where it follows from what has not been read yet. */
  value: unknown;
  /** The rule it follows from; null where it is a plain value. */
  how: string | null;
  source: string;
  grade: Grade;
  band: Band | null;
}

export interface Place {
  field: Field;
  steps: readonly (string | number)[];
  /** Undefined where the file is silent. */
  given: unknown;
  /** Null where the file speaks, or where nothing stands in. */
  assumed: Assumed | null;
}

/** What the last reading filled in. */
export type Told = ReadonlyMap<string, FilledDefault>;

export function toldBy(filled: readonly FilledDefault[]): Told {
  return new Map(filled.map((each) => [each.path, each]));
}

export function wholeFile(json: unknown): Place {
  return { field: scenario as GroupField, steps: [], given: json, assumed: null };
}

/** The place one step further in; null where the catalogue has none. */
export function placeBelow(at: Place, step: string | number, told: Told): Place | null {
  const field = fieldBelow(at, step);
  if (!field) return null;
  const steps = [...at.steps, step];
  const given = valueAt(at.given, [step]);
  return { field, steps, given, assumed: given === undefined ? standIn(at, field, steps, told) : null };
}

/** The place at a path; null where the catalogue, or a list of the file, has none. */
export function placeAt(json: unknown, steps: readonly (string | number)[], told: Told): Place | null {
  let at: Place | null = wholeFile(json);
  for (const step of steps) {
    if (at.field.kind === 'list' && itemsOf(at)[Number(step)] === undefined) return null;
    at = placeBelow(at, step, told);
    if (!at) return null;
  }
  return at;
}

/** What is there, given or assumed. */
export function standing({ given, assumed }: Place): unknown {
  return given === undefined ? assumed?.value : given;
}

export function itemsOf(at: Place): unknown[] {
  const value = standing(at);
  return Array.isArray(value) ? value : [];
}

function fieldBelow(at: Place, step: string | number): Field | null {
  const { field } = at;
  switch (field.kind) {
    case 'list':
      return typeof step === 'number' ? field.of : null;
    case 'group':
      return Object.hasOwn(field.fields, step) ? field.fields[step] : null;
    case 'variants': {
      const word = valueAt(standing(at), [field.by]);
      if (typeof word !== 'string' || !Object.hasOwn(field.cases, word)) return null;
      const fields = field.cases[word];
      return Object.hasOwn(fields, step) ? fields[step] : null;
    }
    default:
      return null;
  }
}

function standIn(at: Place, field: Field, steps: readonly (string | number)[], told: Told): Assumed | null {
  const { presence } = field;
  const how = presence.need === 'derived' ? presence.how : null;
  const band = field.band ?? null;
  const record = told.get(pathText(steps));
  const read = record && asWritten(field, record.value);
  if (record && read !== undefined) {
    return { value: read, how, source: record.source, grade: record.grade, band: record.band };
  }
  const inherited = valueAt(at.assumed?.value, [steps[steps.length - 1]]);
  if (at.assumed && inherited !== undefined) return { ...at.assumed, value: inherited, band };
  if (presence.need === 'default') {
    return { value: presence.value, how, source: presence.source, grade: presence.grade, band };
  }
  if (presence.need === 'derived') {
    return { value: undefined, how, source: presence.source, grade: presence.grade, band };
  }
  // Part of a whole that follows from what has not been read yet.
  return at.assumed && presence.need === 'required' && at.assumed.value === undefined
    ? { ...at.assumed, band }
    : null;
}

/** The value that a told text stands for; undefined where it was told of another field at the same path. */
function asWritten(field: Field, text: string): unknown {
  switch (field.kind) {
    case 'number': {
      const read = readNumberText(field, text);
      return read.ok ? read.value : undefined;
    }
    case 'flag':
      return text === 'true';
    case 'list':
    case 'group':
    case 'variants':
      return asJson(text);
    default:
      return text;
  }
}

function asJson(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
