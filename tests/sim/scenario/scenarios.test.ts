import { describe, expect, it } from 'vitest';
import type { PlantDescription } from '../../../sim/parts/description.ts';
import { fieldAt } from '../../../sim/scenario/expectation.ts';
import { scenario } from '../../../sim/scenario/fields/index.ts';
import { parseScenarioText, readScenario } from '../../../sim/scenario/index.ts';
import { frozen, soundFiles, textOf, withValue } from './files.ts';

function read(json: unknown) {
  const found = readScenario(json);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found;
}

describe.each(soundFiles())('%s', (name) => {
  it('is valid, without a note', () => {
    const found = parseScenarioText(textOf(name));
    expect(found.ok ? found.notes : found.problems).toEqual([]);
  });

  it('is not changed by reading', () => {
    const json = frozen(JSON.parse(textOf(name)));
    read(json);
    expect(json).toEqual(JSON.parse(textOf(name)));
  });

  it('reads the same twice', () => {
    const json = JSON.parse(textOf(name));
    expect(read(json)).toEqual(read(json));
  });

  it('is the same plant when its defaults are written into it', () => {
    const json = JSON.parse(textOf(name));
    const before = read(json);
    for (const { path, value } of before.filled) {
      withValue(json, path, value, (steps) => {
        const field = fieldAt(scenario, steps, json);
        const kind = field?.kind;
        const isPrice = field?.kind === 'number' && field.per !== undefined;
        return (
          (kind === 'number' && !isPrice) ||
          kind === 'flag' ||
          kind === 'list' ||
          kind === 'group' ||
          kind === 'variants'
        );
      });
    }
    const after = read(json);
    expectClose(after.plant, before.plant, 'plant');
    const left = after.filled
      .map(({ path }) => path)
      .filter((path) => before.filled.some((old) => old.path === path));
    expect(left).toEqual([]);
  });

  it('tells of every default with its source, grade and a path of its own', () => {
    const { filled } = read(JSON.parse(textOf(name)));
    expect(filled.length).toBeGreaterThan(20);
    expect(new Set(filled.map(({ path }) => path)).size).toBe(filled.length);
    for (const { path, value, source, grade } of filled) {
      expect(value).not.toBe('');
      expect(source).not.toBe('');
      // Prices alone are made up, and say so.
      const grades = path.startsWith('prices') ? ['invented'] : ['A', 'B', 'C', 'D'];
      expect(grades).toContain(grade);
    }
  });
});

/** Equal, numbers within the four digits that defaults are written with. */
function expectClose(got: unknown, expected: unknown, path: string): void {
  if (typeof expected === 'number') {
    const off = Math.abs((got as number) - expected);
    if (!(off <= 2e-3 * Math.abs(expected) + 1e-6)) throw new Error(`${path}: ${got} for ${expected}`);
  } else if (ArrayBuffer.isView(expected)) {
    // A year of weather is compared by its mean: single hours may flip where a month's mean moved by a digit.
    expectClose(mean(got as Float64Array), mean(expected as Float64Array), path);
  } else if (typeof expected === 'object' && expected !== null) {
    expect(Object.keys(got as object)).toEqual(Object.keys(expected));
    for (const [key, part] of Object.entries(expected)) {
      expectClose((got as Record<string, unknown>)[key], part, `${path}.${key}`);
    }
  } else expect(got, path).toEqual(expected);
}

function mean(values: Float64Array): number {
  return values.reduce((sum, x) => sum + x, 0) / values.length;
}

describe('demo.json', () => {
  const plant: PlantDescription = read(JSON.parse(textOf('demo.json'))).plant;

  it('is read into SI', () => {
    // 32 in of 36 in by 48 in; 44.2 degrees; 0.39 gal/h at 4 kW: hand arithmetic.
    expect(plant.store.water_depth_m).toBeCloseTo(0.8128, 9);
    expect(plant.store.shape).toEqual({ kind: 'box', length_m: 1.2192, width_m: 0.9144, height_m: 0.9144 });
    expect(plant.site.latitude_rad).toBeCloseTo(0.77144, 5);
    expect(plant.site.time_zone_s).toBe(-18_000);
    const { no_load_kg_s, slope_kg_J, fuel } = plant.engine ?? expect.fail();
    const gal_h = (((no_load_kg_s + 4000 * slope_kg_J) / fuel.density_kg_m3) * 3600) / 3.785411784e-3;
    expect(gal_h).toBeCloseTo(0.39, 9);
    expect(plant.run).toMatchObject({ first_day: 8, first_weekday: 5, days: 7, interval_s: 300 });
  });

  it('holds some 900 litres for six people', () => {
    const { shape, water_depth_m } = plant.store;
    if (shape.kind !== 'box') expect.fail();
    expect(shape.length_m * shape.width_m * water_depth_m).toBeCloseTo(0.906, 3);
    expect(plant.taps?.draws.filter((draw) => draw.shower)).toHaveLength(6);
  });

  it('has a year of weather with the months it names', () => {
    // January's 17 F and 1.7 kWh/m2 a day.
    const { air_C, global_horizontal_W_m2 } = plant.weather;
    expect(mean(air_C.slice(0, 744))).toBeCloseTo(-8.333, 2);
    expect((mean(global_horizontal_W_m2.slice(0, 744)) * 24) / 1000).toBeCloseTo(1.7, 2);
  });
});
