import { describe, expect, it } from 'vitest';
import { type DoJobs, doHere, edited, rangeAnswer, readScenario, simulate } from '../../../../sim/index.ts';
import { smallScenario } from '../small.ts';

const scenario = smallScenario();
const here = doHere(scenario, {});
const range = (vary: string[], figures: string[] = [], doJobs: DoJobs = here) =>
  rangeAnswer({ scenario, context: {}, doJobs, vary, figures });

describe('a range', () => {
  it('agrees with direct runs at every point', async () => {
    const { points } = await range(['store.bridges=1:3:3']);
    for (const { values, figures } of points) {
      const read = readScenario(edited(scenario, [{ path: 'store.bridges', value: values[0] }]));
      if (!read.ok) throw new Error('refused');
      expect(figures).toEqual(simulate(read.plant).figures);
    }
  });

  it('reaches inputs of a whole that the file leaves to its default', async () => {
    const { points } = await range(['taps.pipe.stands.temperature=50 F:70 F:2']);
    expect(points.map(({ problem }) => problem)).toEqual([null, null]);
    const both = ['taps.pipe.stands.temperature=50 F|70 F', 'taps.pipe.stands.humidity=30 %|60 %'];
    expect((await range(both)).points.map(({ problem }) => problem)).toEqual([null, null, null, null]);
  });

  it('crosses two inputs, the last one running fastest', async () => {
    const { points, done } = await range(['store.lid=closed|ajar', 'coils[0].rolls=1:2:2'], ['loss_J']);
    expect(points.map(({ values }) => values)).toEqual([
      ['closed', 1],
      ['closed', 2],
      ['ajar', 1],
      ['ajar', 2],
    ]);
    expect(done).toBe(4);
    const [closed, , ajar] = points.map(({ figures }) => figures?.loss_J ?? Number.NaN);
    expect(ajar).toBeGreaterThan(closed);
  });

  it('loses less with more insulation, and more with more bridges', async () => {
    const losses = async (spec: string) =>
      (await range([spec])).points.map(({ figures }) => figures?.loss_J ?? Number.NaN);
    const rising = (values: number[]) => values.every((value, i) => i === 0 || value > values[i - 1]);
    const byR = await losses('store.insulation.sides[0].resistance=R-5:R-40:5');
    expect(rising(byR.reverse())).toBe(true);
    expect(rising(await losses('store.bridges=1:4:5'))).toBe(true);
  });

  it('gives the same numbers whatever order the runs are done in', async () => {
    const backwards: DoJobs = async (jobs) => (await here([...jobs].reverse())).reverse();
    const spec = ['taps.showers[0].flow=4 L/min:8 L/min:4'];
    expect(await range(spec, [], backwards)).toEqual(await range(spec));
  });

  it('says of a point that cannot be run why, and keeps the others', async () => {
    const { points } = await range(['coils[0].roll_length=60 ft|900 ft'], ['loss_J']);
    expect(points[0].figures).not.toBeNull();
    expect(points[1]).toMatchObject({
      figures: null,
      problem: expect.stringMatching(/^coils\[0\].* - expected /),
    });
  });

  it('leaves points null that were not done', async () => {
    const stopped: DoJobs = async (jobs) => [
      ...(await here(jobs.slice(0, 1))),
      ...jobs.slice(1).map(() => null),
    ];
    const { points, done } = await range(['store.bridges=1:2:3'], ['loss_J'], stopped);
    expect(done).toBe(1);
    expect(points.map(({ figures }) => figures === null)).toEqual([false, true, true]);
    expect(points[2].problem).toBeNull();
  });

  it('shows the main figures where none is chosen, without those that are nowhere known', async () => {
    const { figures } = await range(['store.bridges=1:2:2']);
    expect(figures).toContain('engine_heat_J');
    expect(figures).not.toContain('solar_heat_J');
  });

  it.each([
    [[], ['loss_J'], /^vary - expected one or two inputs - got 0/],
    [['store.bridges=1:2:2', 'store.bridges=1:2:2'], [], /expected two inputs that differ/],
    [['store.bridges=1:2:200', 'run.start.bottom=40 C:60 C:20'], [], /expected at most 2000 runs - got 4000/],
    [
      ['store.bridges=1:2:2'],
      ['los_J'],
      /^figure - expected the key of a figure - got "los_J" - did you mean loss_J\?/,
    ],
  ])('refuses %j with figures %j', async (vary, figures, message) => {
    await expect(range(vary, figures)).rejects.toThrow(message);
  });
});
