/** Files made to do harm: each is refused where it is wrong, or its texts are texts and nothing more. */
import { describe, expect, it } from 'vitest';
import { edited } from '../../../sim/answers/edit.ts';
import { parseScenarioText, readScenario, type Scenario } from '../../../sim/scenario/index.ts';
import { textOf } from './files.ts';

type Part = Record<string | number, unknown>;

const demo = (): Part => JSON.parse(textOf('demo.json'));

/** Steps to everything in a file, and what stands there. */
function placesIn(
  value: unknown,
  steps: (string | number)[] = [],
): [steps: (string | number)[], value: unknown][] {
  const own: [(string | number)[], unknown] = [steps, value];
  if (typeof value !== 'object' || value === null) return [own];
  const entries = Object.entries(value);
  return [
    own,
    ...entries.flatMap(([key, part]) => placesIn(part, [...steps, Array.isArray(value) ? Number(key) : key])),
  ];
}
const places = placesIn(demo());

function at(json: Part, steps: (string | number)[]): Part {
  return steps.reduce<Part>((part, step) => part[step] as Part, json);
}

/** The demo with another value at a place. */
function changed(steps: (string | number)[], value: unknown): Part {
  const json = demo();
  at(json, steps.slice(0, -1))[steps[steps.length - 1]] = value;
  return json;
}

/** Where it was refused. */
function refusedAt(json: unknown): string[] {
  const read = readScenario(json);
  return read.ok ? [] : read.problems.map(({ path }) => path);
}

const dotted = (steps: (string | number)[]) =>
  steps.map((step, i) => (typeof step === 'number' ? `[${step}]` : i === 0 ? step : `.${step}`)).join('');

const inherited = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf'];

describe('a name that every object has', () => {
  const objects = places.filter(([, value]) => typeof value === 'object' && !Array.isArray(value));
  it.each(inherited)('is unknown as a key, in every part: %s', (name) => {
    expect(objects.length).toBeGreaterThan(20);
    for (const [steps] of objects) {
      const json = demo();
      // Defined, not assigned: assigning to __proto__ makes no key, as reading JSON does.
      Object.defineProperty(at(json, steps), name, { value: { polluted: 1 }, enumerable: true });
      expect(refusedAt(json)).toContain(dotted([...steps, name]));
    }
    expect('polluted' in {}).toBe(false);
  });

  const words = places.filter(([steps]) =>
    /^(kind|shape|where|by|fuel|lid|join)$/.test(String(steps.at(-1))),
  );
  it.each(inherited)('is no choice, wherever there is one: %s', (name) => {
    expect(words.length).toBeGreaterThan(8);
    for (const [steps] of words.filter(([, value]) => typeof value === 'string')) {
      expect(refusedAt(changed(steps, name)).length, dotted(steps)).toBeGreaterThan(0);
    }
  });

  it.each(['__proto__.polluted', 'constructor.prototype.polluted', 'store.__proto__.polluted'])(
    'is no path of an edit: %s',
    (path) => {
      expect(() => edited(demo() as Scenario, [{ path, value: 1 }])).toThrow(/expected the path of an input/);
      expect('polluted' in {}).toBe(false);
    },
  );
});

describe('a number made to do harm', () => {
  const quantities = places.filter(
    ([, value]) => typeof value === 'string' && /^-?[\d./ ]+ \S+$/.test(value),
  );
  const numbers = [
    ...['1e400', '-1e400', '9'.repeat(400), 'NaN', 'Infinity', '0x10', '1__0', '٣', '1/0', '--1', '1e'],
    ...[`${'1/'.repeat(40)}1`, '1 '.repeat(2000)],
  ];
  it.each(numbers.map((number, i) => [i, number] as const))(
    'is refused where a quantity stands (%d)',
    (i, number) => {
      // Each fifth, another fifth each time: all quantities are read by one reader.
      const some = quantities.filter((_, k) => k % 5 === i % 5);
      expect(some.length).toBeGreaterThan(8);
      for (const [steps, value] of some) {
        const unit = String(value).replace(/^-?[\d./ ]+ /, '');
        const read = readScenario(changed(steps, `${number} ${unit}`));
        const found = read.ok ? [] : read.problems;
        expect(
          found.map(({ path }) => path),
          number,
        ).toContain(dotted(steps));
        expect(found.every(({ got }) => got.length < 200)).toBe(true);
      }
    },
  );

  it.each(['days', 'seed'])('is refused as a bare number too large for any: %s', (key) => {
    const steps = key === 'days' ? ['run', 'days'] : ['weather', 'seed'];
    const text = JSON.stringify(changed(steps, 12_345_678)).replace('12345678', '1e999');
    const read = parseScenarioText(text);
    expect(!read.ok && read.problems[0].path).toBe(dotted(steps));
  });
});

describe('a file made to be long', () => {
  it.each([
    ['many coils', 'coils', Array.from({ length: 200_000 }, () => ({}))],
    ['no list', 'coils', { length: 4_000_000_000 }],
    ['a long name', 'name', 'x'.repeat(10_000_000)],
    ['a long note', 'note', '\u202e'.repeat(100_000)],
    ['a long key', 'x'.repeat(1_000_000), 1],
  ])('is refused within a second: %s', (_, key, value) => {
    const begun = performance.now();
    const read = readScenario({ ...demo(), [key]: value });
    expect(performance.now() - begun).toBeLessThan(1000);
    expect(!read.ok && read.problems.length).toBeLessThanOrEqual(101);
    expect(!read.ok && JSON.stringify(read.problems).length).toBeLessThan(100_000);
  });
});

describe('a text that looks like something else', () => {
  it.each([
    '<img src=x onerror=alert(1)>',
    '"><script>alert(1)</script>',
    '&lt;b&gt;',
    '=HYPERLINK("x")',
    '\u001b[31mred',
    '../../etc/passwd',
    "'; DROP TABLE",
    '{{7*7}}',
  ])('is the name it says, letter by letter: %j', (name) => {
    const json = demo();
    json.name = name;
    for (const part of json.coils as Part[]) if (part.name === 'engine') part.name = name;
    (json.engine as Part).coil = name;
    const read = readScenario(json);
    expect(read.ok && read.plant.coils.map((coil) => coil.name)).toContain(name);
  });
});
