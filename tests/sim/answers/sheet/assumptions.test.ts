import { describe, expect, it } from 'vitest';
import type { Answer, Lever } from '../../../../sim/answers/answer.ts';
import { byInfluence, givenInputs } from '../../../../sim/answers/sheet/index.ts';
import type { FilledDefault } from '../../../../sim/scenario/index.ts';
import { withCoils } from './of-scenario.ts';

const filled = (path: string, more: Partial<FilledDefault> = {}): FilledDefault => ({
  path,
  label: path,
  value: '1',
  source: 'test',
  grade: 'D',
  band: null,
  measure: null,
  ...more,
});
/** An answer whose band is ten wide. */
const answer = (levers: [path: string, low: number, high: number][]): Answer => ({
  key: 'coil',
  facts: { x: { value: 5, low: 0, high: 10, numerical: 0, dimension: 'count' } },
  headline: 'x',
  limit: 'none',
  tables: {},
  curves: {},
  levers: levers.map(
    ([path, low, high]): Lever => ({ path, low: { text: '', value: low }, high: { text: '', value: high } }),
  ),
  cautions: [],
});

describe('assumptions', () => {
  it('come by the share of an answer’s band that they move, whichever way', () => {
    const all = ['store.a', 'store.b', 'store.c'].map((path) => filled(path));
    const answers = [
      answer([['store.b', 9, 1]]),
      answer([
        ['store.a', 4, 6],
        ['store.c', 1, 4],
      ]),
    ];
    expect(byInfluence(all, answers).map(({ path }) => path)).toEqual(['store.b', 'store.c', 'store.a']);
  });

  it('that no answer hangs on come by band, then the least trusted first; prices move no heat', () => {
    const all = [
      filled('store.sure', { grade: 'A' }),
      filled('prices.foam', { band: ['1', '2'], grade: 'C' }),
      filled('store.asserted', { grade: 'C' }),
      filled('store.open', { band: ['1', '2'], grade: 'A' }),
      filled('store.invented', { grade: 'invented' }),
    ];
    expect(byInfluence(all, []).map(({ path }) => path)).toEqual([
      'store.open',
      'store.invented',
      'prices.foam',
      'store.asserted',
      'store.sure',
    ]);
  });

  it('stay in the file’s order where nothing tells them apart, and the list given stays as it is', () => {
    const all = ['c', 'a', 'b'].map((path) => filled(path));
    expect(byInfluence(all, [])).toEqual(all);
    expect(all.map(({ path }) => path)).toEqual(['c', 'a', 'b']);
  });
});

describe('given inputs', () => {
  const scenario = withCoils([{}, { outside_film: 0.7 }], {
    doubts: [
      { unsure: 'a little', input: 'store.water_depth' },
      { unsure: 'between', input: 'coils[1].outside_film', from: '0.6', to: '0.8' },
      { unsure: 'a lot', input: 'coils[0].outside_film' },
    ],
  });

  it('are what a fit would write, with their band, and what is marked as unsure', () => {
    expect(givenInputs(scenario, [])).toEqual([
      { path: 'coils[1].outside_film', value: 0.7, unsure: { from: '0.6', to: '0.8' }, measured: true },
      { path: 'store.water_depth', value: '32 in', unsure: 'a little', measured: false },
    ]);
  });

  it('are doubted where a default is marked, and not called measured', () => {
    const film = filled('coils[0].outside_film', { value: '0.8' });
    const found = givenInputs(scenario, [film]).find(({ path }) => path === film.path);
    expect(found).toEqual({ path: film.path, value: '0.8', unsure: 'a lot', measured: false });
  });

  it('are none in a file that has neither', () => {
    expect(givenInputs(withCoils([{}]), [filled('store.bridges', { value: '1.5' })])).toEqual([]);
  });
});
