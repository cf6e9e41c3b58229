/** The inputs that a file's author marked as unsure, each as the ends between which it is believed. */
import type { Desk } from './desk.ts';
import { isMeasured, mayBeMarked, reachOf, type Unsure } from './doubt-reach.ts';
import { expectation } from './expectation.ts';
import type { Band, NumberField, QuantityField } from './field.ts';
import type { ScenarioValues } from './fields/index.ts';
import { nearestPath } from './known-path.ts';
import { placeAt, standing, type Told, toldBy } from './outline/place.ts';
import { describeValue, pathSteps, pathText } from './problem.ts';
import { rawOf } from './raw.ts';
import { readText } from './read-field.ts';
import { numberText, readNumberText, readNumberValue } from './read-number.ts';

/** An input one is unsure of; the ends as a file has them, low before high. */
export interface Mark {
  path: string;
  band: Band;
}

type Doubt = NonNullable<ScenarioValues['doubts']>[number];
type Measured = QuantityField | NumberField;

/** @param json the file itself; `desk` has been told of every default that it leaves open */
export function marksFrom(desk: Desk, json: unknown, doubts: readonly Doubt[]): Mark[] {
  const told = toldBy(desk.filled);
  const seen = new Set<string>();
  return doubts.flatMap((doubt, i): Mark[] => {
    const at = ['doubts', i];
    const { input } = doubt;
    const steps = pathSteps(input);
    const place = pathText(steps) === input ? placeAt(json, steps, told) : null;
    if (!place || isAbsent(json, steps, told)) {
      strange(desk, at, input);
      return [];
    }
    const { field } = place;
    if (!isMeasured(field) || !mayBeMarked(input)) {
      const what = mayBeMarked(input) ? `a ${field.kind}` : 'what the run is computed with';
      const fix = 'mark a value of a part, as in "store.bridges"';
      desk.problem([...at, 'input'], 'a quantity or a number of a part', `"${input}", ${what}`, fix);
      return [];
    }
    if (seen.has(input)) {
      desk.problem([...at, 'input'], 'each input once', `"${input}" again`, 'remove one of the two');
      return [];
    }
    seen.add(input);
    const value = numberOf(field, standing(place));
    const band =
      doubt.unsure === 'between'
        ? named(desk, at, field, doubt)
        : reached(desk, at, field, value, doubt.unsure);
    if (band && value !== null) noteOutside(desk, at, field, band, value);
    return band ? [{ path: input, band }] : [];
  });
}

/** Whether an input, or something it is part of, may be left out of a file and is. */
function isAbsent(json: unknown, steps: readonly (string | number)[], told: Told): boolean {
  return steps.some((_, i) => {
    const place = placeAt(json, steps.slice(0, i + 1), told);
    return place?.field.presence.need === 'optional' && standing(place) === undefined;
  });
}

/** A path that leads nowhere: mistyped, or of a part that this file does not have. */
function strange(desk: Desk, at: readonly PropertyKey[], input: string): void {
  const near = nearestPath(input);
  if (near === input) {
    desk.note(at, `"${input}" is not in this scenario: its mark waits`);
    return;
  }
  const fix = near ? `did you mean "${near}"?` : 'see tankful schema for the names';
  desk.problem([...at, 'input'], 'the path of an input', describeValue(input), fix);
}

/** The ends that the author names. */
function named(
  desk: Desk,
  at: readonly PropertyKey[],
  field: Measured,
  { from, to }: Extract<Doubt, { unsure: 'between' }>,
): Band | null {
  const ends = (
    [
      ['from', from],
      ['to', to],
    ] as const
  ).map(([key, text]) => {
    const value = endOf(field, text);
    if (value !== null) return value;
    const { expected, got, fix } = refusalOf(field, text);
    desk.problem([...at, key], expected, got, fix);
    return null;
  });
  const [low, high] = ends;
  if (low === null || high === null) return null;
  if (low < high) return [from, to];
  desk.problem([...at, 'to'], `more than "from", ${from}`, `"${to}"`, 'swap the two, or move one of them');
  return null;
}

/** The ends that a word stands for; null where the value is not known yet, for the file has other problems. */
function reached(
  desk: Desk,
  at: readonly PropertyKey[],
  field: Measured,
  value: number | null,
  unsure: Unsure,
): Band | null {
  if (value === null) return null;
  const reach = reachOf(field, value, unsure);
  if (reach) return [written(desk, field, reach[0]), written(desk, field, reach[1])];
  const got = `"${unsure}" of ${written(desk, field, value)}, which is nothing`;
  desk.problem(
    [...at, 'unsure'],
    '"between" with both ends',
    got,
    'name the lowest and the highest one would believe',
  );
  return null;
}

function noteOutside(
  desk: Desk,
  at: readonly PropertyKey[],
  field: Measured,
  band: Band,
  value: number,
): void {
  const [low, high] = band.map((end) => endOf(field, end));
  if (low === null || high === null || (value >= low && value <= high)) return;
  desk.note(
    at,
    `the value as it stands, ${written(desk, field, value)}, lies outside ${band[0]} to ${band[1]}`,
  );
}

/** A value of the file in SI; null where it is none that the field takes. */
function numberOf(field: Measured, raw: unknown): number | null {
  if (field.kind === 'number') {
    const read = readNumberValue(field, raw);
    return read.ok ? read.value : null;
  }
  const read = typeof raw === 'string' ? readText(field, raw) : null;
  return read?.ok ? (read.value as number) : null;
}

function endOf(field: Measured, text: string): number | null {
  if (field.kind === 'quantity') return numberOf(field, text);
  const read = readNumberText(field, text);
  return read.ok ? read.value : null;
}

function refusalOf(field: Measured, text: string): { expected: string; got: string; fix: string } {
  const read = field.kind === 'quantity' ? readText(field, text) : null;
  if (read && !read.ok) return read;
  const { expected } = expectation(field, 0);
  return { expected, got: describeValue(text), fix: 'choose a number in the range' };
}

function written(desk: Desk, field: Measured, value: number): string {
  return field.kind === 'quantity'
    ? String(rawOf(field, value, desk.system))
    : numberText(field, value, desk.system);
}
