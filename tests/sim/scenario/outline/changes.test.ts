import { describe, expect, it } from 'vitest';
import { edited } from '../../../../sim/answers/edit.ts';
import type { PlantDescription } from '../../../../sim/parts/description.ts';
import {
  adding,
  type Changes,
  deciding,
  describing,
  entering,
  type FilledDefault,
  outlineOf,
  readScenario,
  removing,
  type Scenario,
} from '../../../../sim/scenario/index.ts';
import { frozen, textOf } from '../files.ts';
import { randomScenario } from '../random-scenario.ts';
import { nodesOf } from './nodes.ts';

const demo = frozen(JSON.parse(textOf('demo.json')) as Scenario);
const bare = frozen({
  format: 'tankful',
  version: 1,
  name: 'bare',
  site: { latitude: '44 N' },
  store: { inside: { shape: 'box', length: '48 in', width: '36 in', height: '36 in' } },
  coils: [{ name: 'one', tube: { kind: 'PEX', size: '1/2 in' }, roll_length: '50 ft' }],
  taps: { coil: 'one' },
} satisfies Scenario);
const PARTS = ['site', 'weather', 'run', 'store', 'coils', 'engine', 'collector', 'supply', 'taps', 'prices'];

function sound(json: Scenario): { plant: PlantDescription; filled: FilledDefault[] } {
  const read = readScenario(json);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read;
}

function withEdits(json: Scenario, { edits }: Changes): Scenario {
  return edited(json, edits);
}

/** Numbers of both plants side by side; a derived value is told of in four digits. */
function expectSamePlant(a: unknown, b: unknown, where: string): void {
  if (typeof a === 'number' && typeof b === 'number') {
    expect(Math.abs(a - b), where).toBeLessThanOrEqual(2e-3 * Math.max(Math.abs(a), Math.abs(b)) + 0.05);
  } else if (typeof a === 'object' && a !== null && typeof b === 'object' && b !== null) {
    expect(Object.keys(b), where).toEqual(Object.keys(a));
    for (const key of Object.keys(a))
      expectSamePlant((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key], where);
  } else expect(b, where).toEqual(a);
}

describe('entering', () => {
  it('writes one value where its whole is in the file', () => {
    expect(entering(demo, 'store.water_depth', '30 in', []).edits).toEqual([
      { path: 'store.water_depth', value: '30 in' },
    ]);
  });

  it('writes down beside it what stood in for the rest of its whole', () => {
    const { filled } = sound(bare);
    expect(entering(bare, 'taps.mixing_valve.set', '115 F', filled)).toEqual({
      edits: [{ path: 'taps.mixing_valve', value: { fitted: true, set: '115 F' } }],
      examples: [],
    });
    expect(entering(bare, 'store.insulation.sides[0].thickness', '4 in', filled).edits).toEqual([
      {
        path: 'store.insulation',
        value: { sides: [{ material: 'fibreglass', thickness: '4 in' }] },
      },
    ]);
    expect(entering(bare, 'run.start.top', '150 F', filled).edits).toEqual([
      { path: 'run', value: { start: { bottom: '100 F', top: '150 F' } } },
    ]);
    expect(entering(bare, 'weather.climate', 'cloudy', filled).edits).toEqual([
      { path: 'weather', value: { kind: 'by latitude', climate: 'cloudy' } },
    ]);
  });

  it('leaves the plant as it is when it enters what was assumed, in random plants', () => {
    let entered = 0;
    for (let seed = 1; seed <= 8; seed++) {
      const json = frozen(randomScenario(seed));
      const { plant, filled } = sound(json);
      const nodes = PARTS.flatMap((part) => nodesOf(outlineOf(json, part, filled)));
      for (const node of nodes.filter((_, i) => (i + seed) % 5 === 0)) {
        // Weather is read to the digit by its chance, and a weekday must agree with its date.
        if (node.kind !== 'entry' || node.given || node.value === undefined) continue;
        if (/^weather|^run\.first_weekday|^site\.(longitude|time_zone)/.test(node.path)) continue;
        const { edits, examples } = entering(json, node.path, node.value, filled);
        const read = readScenario(edited(json, edits));
        expect(read, `${seed} ${node.path}`).toMatchObject({ ok: true });
        expect(examples).toEqual([]);
        if (read.ok) expectSamePlant({ ...plant, weather: 0 }, { ...read.plant, weather: 0 }, node.path);
        entered++;
      }
    }
    expect(entered).toBeGreaterThan(60);
  });

  it('renames a coil for those who flow through it', () => {
    const renamed = withEdits(demo, entering(demo, 'coils[1].name', 'jacket', []));
    expect(renamed.engine?.coil).toBe('jacket');
    expect(renamed.taps?.coil).toBe('household');
    sound(renamed);
  });

  it('names the path that leads nowhere', () => {
    expect(() => entering(demo, 'store.colour.red', '1', [])).toThrow(/^store\.colour\.red - expected/);
  });
});

describe('deciding', () => {
  const { filled } = sound(demo);

  it('keeps what both shapes have, and begins the rest with examples that it names', () => {
    expect(deciding(demo, 'store.inside', 'upright cylinder', filled)).toEqual({
      edits: [
        { path: 'store.inside', value: { shape: 'upright cylinder', diameter: '24 in', height: '36 in' } },
      ],
      examples: ['store.inside.diameter'],
    });
  });

  it('goes back to what once was', () => {
    const once = { length: '48 in', width: '36 in' };
    const round = withEdits(demo, deciding(demo, 'store.inside', 'upright cylinder', filled));
    expect(withEdits(round, deciding(round, 'store.inside', 'box', filled, once)).store).toEqual(demo.store);
  });

  it('takes no value over that only bears the same name', () => {
    const cold = { kind: 'fixed', temperature: '45 F' } as const;
    const fixed = { ...bare, supply: { cold } } satisfies Scenario;
    const months = deciding(fixed, 'supply.cold', 'by month', []).edits[0].value;
    expect(months).toEqual({ kind: 'by month', temperature: Array(12).fill('45 F') });
    const tube = deciding(demo, 'coils[0].tube', 'metric copper', filled).edits[0].value;
    expect(tube).toEqual({ kind: 'metric copper', size: '10x0.8 mm' });
  });

  it('leaves every file readable but for what no longer fits', () => {
    const troubled: string[] = [];
    for (const node of PARTS.flatMap((part) => nodesOf(outlineOf(demo, part, filled)))) {
      if (node.kind !== 'entry' || node.decides === null || node.field.kind !== 'choice') continue;
      const whole = node.path.slice(0, -node.decides.length - 1);
      for (const word of node.field.choices) {
        const read = readScenario(withEdits(demo, deciding(demo, whole, word, filled)));
        if (!read.ok) troubled.push(...read.problems.map(({ path }) => `${word}: ${path}`));
      }
    }
    // A cylinder of the example's size is narrower than the demo's coils, lying also lower than its water.
    expect(troubled.sort()).toEqual([
      'file: weather.file',
      'lying cylinder: store.water_depth',
      'upright cylinder: coils[0].coil_diameter',
      'upright cylinder: coils[1].coil_diameter',
    ]);
  });

  it('refuses a word that decides nothing', () => {
    expect(() => deciding(demo, 'store.inside', 'sphere', [])).toThrow(RangeError);
    expect(() => deciding(demo, 'store.lid', 'open', [])).toThrow(RangeError);
  });
});

describe('describing', () => {
  it('begins with what stood in', () => {
    const { filled } = sound(bare);
    expect(describing(bare, 'store.wall', filled)).toEqual({
      edits: [{ path: 'store.wall', value: { material: 'plywood', thickness: '0.75 in' } }],
      examples: [],
    });
  });

  it('begins with examples where nothing did, and the file stays readable', () => {
    for (const path of ['store.liner', 'backup', 'taps.pattern']) {
      const changes = describing(bare, path, sound(bare).filled);
      expect(changes.examples.length, path).toBeGreaterThan(0);
      sound(withEdits(bare, changes));
    }
    expect(describing(demo, 'engine.load_by_hour', [])).toEqual({
      edits: [{ path: 'engine.load_by_hour', value: [{ from: '5:00 pm', output: '1.5 kW' }] }],
      examples: ['engine.load_by_hour'],
    });
  });
});

describe('a list', () => {
  it('grows by one like its last, under a name of its own', () => {
    const grown = withEdits(demo, adding(demo, 'taps.draws', []));
    expect(grown.taps?.draws?.length).toBe((demo.taps?.draws?.length ?? 0) + 1);
    expect(grown.taps?.draws?.at(-1)).toEqual({ ...demo.taps?.draws?.at(-1), name: 'laundry 2' });
    sound(grown);
  });

  it('begins with an example', () => {
    const { edits, examples } = adding(bare, 'taps.showers', []);
    expect(edits).toEqual([{ path: 'taps.showers', value: [{ at: '7:00 am' }] }]);
    expect(examples).toEqual(['taps.showers[0]']);
  });

  it('shrinks by the one that is taken out, also where it was only assumed', () => {
    expect(removing(demo, 'taps.showers', 0, []).edits).toEqual([
      { path: 'taps.showers', value: [demo.taps?.showers?.[1]] },
    ]);
    const { filled } = sound(bare);
    expect(removing(bare, 'store.insulation.lid', 0, filled).edits).toEqual([
      { path: 'store.insulation', value: { lid: [] } },
    ]);
  });
});
