import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseScenarioText, type ReadScenario, readScenario } from '../../../sim/scenario/index.ts';
import { frozen, textOf } from './files.ts';

const demo = JSON.parse(textOf('demo.json')) as Record<string, unknown>;

/** Every place in the demo that holds something, as steps. */
function placesIn(value: unknown, steps: (string | number)[] = []): (string | number)[][] {
  if (typeof value !== 'object' || value === null) return [steps];
  const parts = Object.entries(value).map(([key, part]) =>
    placesIn(part, [...steps, Array.isArray(value) ? Number(key) : key]),
  );
  return [...(steps.length > 0 ? [steps] : []), ...parts.flat()];
}
const places = placesIn(demo);

const nasty = fc.constantFrom(
  '',
  ' ',
  '-',
  '0',
  '1',
  '-1 ft',
  '0 in',
  '1e308 m',
  '1e-308 m',
  '½ in',
  '5 ft 6 in',
  '100 %',
  '-40 F',
  '212 F',
  'N',
  '90 S',
  '0:00',
  '24:00',
  '-5 h',
  'every day',
  '12-31',
  '__proto__',
  'constructor',
  'x'.repeat(5000),
  '\u0000',
  '\ud800',
  '🔥',
  'touching',
  'open',
  'box',
);
const anyValue = fc.oneof(
  nasty,
  fc.jsonValue({ maxDepth: 3 }),
  fc.double(),
  fc.constantFrom<unknown>(null, [], {}, 0, 1, -1, 1e308, true, false, [[]], { kind: 'file' }),
);

function expectSound(read: ReadScenario): void {
  if (read.ok) {
    expectFinite(read.plant, 'plant');
    return;
  }
  expect(read.problems.length).toBeGreaterThan(0);
  for (const { path, expected, got, fix } of read.problems) {
    expect(typeof path).toBe('string');
    for (const part of [expected, got, fix]) expect(part.trim()).not.toBe('');
    expect(got.length).toBeLessThan(200);
  }
}

/** No number of a plant is NaN or infinite. */
function expectFinite(value: unknown, path: string): void {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${path} is ${value}`);
  if (ArrayBuffer.isView(value)) {
    if (!(value as Float64Array).every(Number.isFinite)) throw new Error(`${path} holds no number`);
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, part] of Object.entries(value)) expectFinite(part, `${path}.${key}`);
  }
}

function edited(
  json: unknown,
  steps: readonly (string | number)[],
  change: (at: Record<string | number, unknown>, key: string | number) => void,
) {
  const copy = structuredClone(json);
  let at = copy as Record<string | number, unknown>;
  for (const step of steps.slice(0, -1)) {
    if (typeof at[step] !== 'object' || at[step] === null) return copy;
    at = at[step] as Record<string | number, unknown>;
  }
  const last = steps[steps.length - 1];
  // A part that an edit before made a list has a length of its own, which takes no text.
  if (Array.isArray(at) && typeof last === 'string') return copy;
  change(at, last);
  return copy;
}

describe('reading', () => {
  it('never throws on random JSON', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 5 }), (json) => {
        expectSound(readScenario(json));
      }),
    );
  });

  it('never throws on values no JSON has', () => {
    const keys = fc.constantFrom(...Object.keys(demo));
    const anything = fc.anything({
      withBigInt: true,
      withDate: true,
      withMap: true,
      withSet: true,
      withTypedArray: true,
      withNullPrototype: true,
      withSparseArray: true,
    });
    fc.assert(
      fc.property(keys, anything, (key, value) => {
        expectSound(readScenario({ ...demo, [key]: value }));
      }),
      { numRuns: 200 },
    );
    const circle: Record<string, unknown> = { ...demo };
    circle.store = circle;
    expectSound(readScenario(circle));
    expectSound(readScenario({ ...demo, coils: Array(100_000).fill({}) }));
  });

  it('never throws on the demo with values replaced, and leaves the file as it is', () => {
    const edit = fc.tuple(fc.constantFrom(...places), anyValue);
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 3 }), (edits) => {
        let json: unknown = demo;
        for (const [steps, value] of edits)
          json = edited(json, steps, (at, key) => Object.assign(at, { [key]: value }));
        expectSound(readScenario(frozen(json)));
      }),
      { numRuns: 400 },
    );
  });

  it('never throws on the demo with parts left out, and names what was', () => {
    for (const steps of places) {
      const json = edited(demo, steps, (at, key) => {
        if (Array.isArray(at)) at.splice(Number(key), 1);
        else delete at[key];
      });
      expectSound(readScenario(json));
    }
  });

  it('never throws on the demo’s text with characters changed', () => {
    const text = textOf('demo.json');
    const change = fc.tuple(
      fc.nat(text.length - 1),
      fc.constantFrom('', '"', ',', '{', '}', '[', ']', '0', '-', 'e', '\\', '\n', '½'),
    );
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
        let changed = text;
        for (const [at, letter] of changes) changed = changed.slice(0, at) + letter + changed.slice(at + 1);
        expectSound(parseScenarioText(changed));
      }),
      { numRuns: 400 },
    );
  });

  it('stops listing after a hundred problems', () => {
    const read = readScenario({
      ...demo,
      ...Object.fromEntries(Array.from({ length: 500 }, (_, i) => [`key${i}`, i])),
    });
    expect(read).toMatchObject({
      ok: false,
      problems: expect.arrayContaining([expect.objectContaining({ got: '400 more' })]),
    });
    expect(!read.ok && read.problems.length).toBe(101);
  });

  it('does not let a file reach the prototype of objects', () => {
    parseScenarioText(
      '{"format": "tankful", "version": 1, "__proto__": {"polluted": 1}, "site": {"__proto__": {"latitude": "44 N"}}}',
    );
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});
