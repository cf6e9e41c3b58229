import { describe, expect, it } from 'vitest';
import { chanceOf, ensembleJobs, valueAt, variedOf } from '../../../../sim/answers/doubts/varied.ts';
import { edited } from '../../../../sim/answers/edit.ts';
import { entered } from '../../../../sim/answers/entered.ts';
import { movesHeat } from '../../../../sim/answers/matters.ts';
import { parseQuantity, readScenario, type Scenario } from '../../../../sim/index.ts';
import { edit, smallScenario, sunnyScenario } from '../small.ts';

function fileOf(scenario: Scenario) {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { scenario, filled: read.filled, marks: read.marks };
}
const doubts = [
  { input: 'supply.cold.temperature', unsure: 'between', from: '4 C', to: '20 C' },
  { input: 'taps.showers[0].people', unsure: 'a little' },
];
const file = fileOf(smallScenario({ doubts }));
const varied = variedOf(file, movesHeat);
const of = (path: string) => {
  const found = varied.find((each) => each.path === path);
  if (!found) throw new Error(path);
  return found;
};

describe('an input that is varied', () => {
  it('is a mark, or a default that came with a band and moves heat', () => {
    expect(of('supply.cold.temperature')).toMatchObject({ value: 8, low: 4, high: 20, marked: true });
    expect(of('store.bridges')).toMatchObject({ value: 1.5, low: 1.1, high: 2.5, marked: false });
    expect(varied.some(({ path }) => path.startsWith('prices'))).toBe(false);
    expect(varied.some(({ path }) => path === 'taps.showers[0].flow')).toBe(false);
  });

  it('is below its value in half of all places, above in the other half, and reaches both ends', () => {
    const cold = of('supply.cold.temperature');
    expect([0, 0.25, 0.5, 0.75, 1].map((u) => valueAt(cold, u))).toEqual([4, 6, 8, 14, 20]);
    const outside = { ...cold, value: 30 };
    expect([0, 0.5, 1].map((u) => valueAt(outside, u))).toEqual([4, 12, 20]);
  });

  it('is whole where it counts', () => {
    const people = of('taps.showers[0].people');
    const values = Array.from({ length: 50 }, (_, i) => valueAt(people, i / 49));
    expect([...new Set(values)]).toEqual([1, 2, 3]);
  });
});

describe('values put into a file', () => {
  it('stand where they were put, and what stood in for their whole stays beside them', () => {
    const sunny = fileOf(sunnyScenario());
    const edits = entered(sunny, [
      ['collector.rating.eta0', 0.71],
      ['collector.diffuse_modifier', 0.9],
    ]);
    const read = readScenario(edited(sunny.scenario, edits));
    const before = readScenario(sunny.scenario);
    if (!read.ok || !before.ok) throw new Error('refused');
    expect(read.plant.collector).toMatchObject({ eta0: 0.71, diffuse_modifier: 0.9 });
    const a1 = before.plant.collector?.a1_W_m2K ?? Number.NaN;
    expect(read.plant.collector?.a1_W_m2K).toBeCloseTo(a1, 2);
  });
});

describe('an ensemble', () => {
  const jobs = ensembleJobs(file, varied, 12, 5);
  const celsius = (edits: (typeof jobs)[number]['edits']) => {
    const read = parseQuantity(String(edit(edits, 'supply.cold.temperature')), 'temperature');
    return read.ok ? read.value : Number.NaN;
  };

  it('has one run in each twelfth of every input’s places', () => {
    // 4 to 8 C is the lower half of the places, 8 to 20 C the upper.
    const place = (value: number) => (value < 8 ? (value - 4) / 8 : 0.5 + (value - 8) / 24);
    const slices = jobs.map(({ edits }) => Math.floor(12 * place(celsius(edits))));
    expect(slices.sort((a, b) => a - b)).toEqual(Array.from({ length: 12 }, (_, i) => i));
  });

  it('is the same for the same seed and another for another', () => {
    expect(ensembleJobs(file, varied, 12, 5)).toEqual(jobs);
    expect(ensembleJobs(file, varied, 12, 6)).not.toEqual(jobs);
  });

  it('has another like year’s weather in each run, where weather is made', () => {
    const seeds = jobs.map(({ edits }) => edit(edits, 'weather.seed'));
    expect(new Set(seeds).size).toBe(12);
    expect(seeds).not.toContain(5);
    expect(chanceOf(fileOf(smallScenario()))).toBe(5);
  });

  it('is of runs that can all be read', () => {
    for (const { edits } of jobs)
      expect(readScenario(edited(file.scenario, edits))).toMatchObject({ ok: true });
  });
});
