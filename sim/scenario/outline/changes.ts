/**
 * What must be written into a scenario file to enter, switch, add or take out something. A file need not say
 * everything: what stood in for a whole that is now written down in part is written down beside it, unchanged.
 */
import { movedMarks } from '../doubt-paths.ts';
import type { Field, Fields } from '../field.ts';
import type { FilledDefault } from '../fill.ts';
import { pathSteps, pathText } from '../problem.ts';
import { valueAt } from '../value-at.ts';
import { exampleOf } from './example.ts';
import { itemsOf, type Place, placeAt, placeBelow, standing, type Told, toldBy, wholeFile } from './place.ts';

/** A value put at a path of the file; undefined takes out what is there. */
export interface Change {
  path: string;
  value: unknown;
}

export interface Changes {
  edits: Change[];
  /** Paths that had to be said and got an example's value, for a person to put right. */
  examples: string[];
}

/** Enters a value; a coil that is renamed keeps its users. */
export function entering(
  json: unknown,
  path: string,
  value: unknown,
  filled: readonly FilledDefault[],
): Changes {
  const told = toldBy(filled);
  const steps = pathSteps(path);
  const examples: string[] = [];
  let at = wholeFile(json);
  for (const [i, step] of steps.entries()) {
    const next = found(placeBelow(at, step, told), path);
    if (next.given === undefined && i < steps.length - 1) {
      const whole = beginning(next, told, examples);
      put(next, whole, steps.slice(i + 1), value, told, examples);
      return { edits: [{ path: pathText(next.steps), value: whole }], examples: without(examples, path) };
    }
    at = next;
  }
  return { edits: [{ path, value }, ...renamed(json, path, value)], examples };
}

/** Begins to describe a thing that the file is silent about: with what stood in for it, or else with examples. */
export function describing(json: unknown, path: string, filled: readonly FilledDefault[]): Changes {
  const told = toldBy(filled);
  const at = found(placeAt(json, pathSteps(path), told), path);
  const examples: string[] = [];
  const value = beginning(at, told, examples);
  const { edits, examples: more } = entering(json, path, value, filled);
  return { edits, examples: [...examples, ...more] };
}

/** Switches the word that decides what a thing has; keeps what both have, takes `before` for what it once had. */
export function deciding(
  json: unknown,
  path: string,
  word: string,
  filled: readonly FilledDefault[],
  before: Readonly<Record<string, unknown>> = {},
): Changes {
  const at = found(placeAt(json, pathSteps(path), toldBy(filled)), path);
  const { field } = at;
  if (field.kind !== 'variants' || !Object.hasOwn(field.cases, word))
    throw new RangeError(`${path} - expected a word that decides - got "${word}" - choose one of its words`);
  if (at.given === undefined && valueAt(standing(at), [field.by]) === word)
    return describing(json, path, filled);
  const old = valueAt(at.given, [field.by]);
  const oldFields = typeof old === 'string' && Object.hasOwn(field.cases, old) ? field.cases[old] : {};
  const value: Record<string, unknown> = { [field.by]: word };
  const examples: string[] = [];
  for (const [key, own] of Object.entries(field.cases[word])) {
    const given = valueAt(at.given, [key]);
    if (given !== undefined && alike(own, oldFields[key]) && suits(own, given)) value[key] = given;
    else if (before[key] !== undefined) value[key] = before[key];
    else if (own.presence.need === 'required') {
      value[key] = exampleOf(own);
      examples.push(pathText([...at.steps, key]));
    }
  }
  const { edits, examples: more } = entering(json, path, value, filled);
  return { edits, examples: [...examples, ...more] };
}

/** One more item: like the last, under a name of its own, or else an example. */
export function adding(json: unknown, path: string, filled: readonly FilledDefault[]): Changes {
  const at = listAt(json, path, filled);
  const items = copyOf(itemsOf(at)) as unknown[];
  const last = items.at(-1);
  const item = last === undefined ? exampleOf(at.field.of) : namedApart(copyOf(last), items);
  const { edits, examples } = entering(json, path, [...items, item], filled);
  const added = last === undefined ? [`${path}[0]`] : [];
  return { edits, examples: [...examples, ...added] };
}

/** One item less. */
export function removing(
  json: unknown,
  path: string,
  index: number,
  filled: readonly FilledDefault[],
): Changes {
  const items = itemsOf(listAt(json, path, filled));
  const { edits, examples } = entering(
    json,
    path,
    items.filter((_, i) => i !== index),
    filled,
  );
  return { edits: [...edits, ...movedMarks(json, path, index, -1)], examples };
}

/** The least that says of a thing what stood in for it; what must be said and is not known gets an example. */
function beginning(at: Place, told: Told, examples: string[]): unknown {
  const { field } = at;
  if (field.kind === 'list') {
    const items = itemsOf(at);
    if (items.length > 0) return copyOf(items);
    examples.push(pathText(at.steps));
    return exampleOf(field);
  }
  if (field.kind !== 'group' && field.kind !== 'variants') return standing(at) ?? exampleOf(field);
  const whole = { ...(copyOf(at.assumed?.value) as Record<string, unknown> | undefined) };
  if (field.kind === 'variants') whole[field.by] ??= Object.keys(field.cases)[0];
  const fields: Fields = field.kind === 'group' ? field.fields : field.cases[String(whole[field.by])];
  for (const [key, own] of Object.entries(fields)) {
    if (whole[key] !== undefined || own.presence.need !== 'required') continue;
    const below = placeBelow({ ...at, given: undefined }, key, told);
    const known = below?.assumed?.value;
    whole[key] = known === undefined ? exampleOf(own) : copyOf(known);
    if (known === undefined) examples.push(pathText([...at.steps, key]));
  }
  return whole;
}

/** Puts a value deep into a whole that is being begun. */
function put(
  at: Place,
  whole: unknown,
  steps: readonly (string | number)[],
  value: unknown,
  told: Told,
  examples: string[],
): void {
  const object = whole as Record<string | number, unknown>;
  const [step, ...more] = steps;
  if (more.length === 0) {
    object[step] = value;
    return;
  }
  const next = found(placeBelow({ ...at, given: object }, step, told), pathText([...at.steps, step]));
  object[step] ??= beginning(next, told, examples);
  put(next, object[step], more, value, told, examples);
}

function renamed(json: unknown, path: string, value: unknown): Change[] {
  const index = /^coils\[(\d+)\]\.name$/.exec(path)?.[1];
  const old = index === undefined ? undefined : valueAt(json, ['coils', Number(index), 'name']);
  const users = ['engine', 'collector', 'taps'].filter((user) => valueAt(json, [user, 'coil']) === old);
  return old === undefined ? [] : users.map((user) => ({ path: `${user}.coil`, value }));
}

function alike(own: Field, other: Field | undefined): boolean {
  if (own.kind !== other?.kind) return false;
  return own.kind !== 'quantity' || other.kind !== 'quantity' || own.dimension === other.dimension;
}

/** A text of which only some are understood must be one of them. */
function suits(own: Field, given: unknown): boolean {
  return own.kind !== 'text' || !own.examples || own.examples.some((example) => example === given);
}

/** "draw 2" for a copy of "draw". */
function namedApart(item: unknown, items: readonly unknown[]): unknown {
  const name = valueAt(item, ['name']);
  if (typeof name !== 'string') return item;
  const taken = items.map((each) => valueAt(each, ['name']));
  const stem = name.replace(/ \d+$/, '');
  let number = 2;
  while (taken.includes(`${stem} ${number}`)) number++;
  return { ...(item as object), name: `${stem} ${number}` };
}

function listAt(json: unknown, path: string, filled: readonly FilledDefault[]) {
  const at = found(placeAt(json, pathSteps(path), toldBy(filled)), path);
  if (at.field.kind === 'list') return { ...at, field: at.field };
  throw new RangeError(`${path} - expected a list - got a ${at.field.kind} - check the path`);
}

function found(place: Place | null, path: string): Place {
  if (place) return place;
  throw new RangeError(`${path} - expected the path of an input - got none there - check the path`);
}

function without(paths: readonly string[], entered: string): string[] {
  return paths.filter((path) => path !== entered);
}

function copyOf(value: unknown): unknown {
  return value === undefined ? undefined : (JSON.parse(JSON.stringify(value)) as unknown);
}
