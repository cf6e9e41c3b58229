import { describe, expect, it } from 'vitest';
import {
  edited,
  type OutlineEntry,
  outlineOf,
  readScenario,
  type Scenario,
} from '../../../../../sim/index.ts';
import {
  canDoubt,
  doubtAt,
  doubtEdit,
  endEdit,
  reachText,
  type Sureness,
} from '../../../../../ui/web/elements/cards/doubt-spec.ts';
import { smallScenario } from '../../../../sim/answers/small.ts';

const bare = smallScenario();
function entryOf(path: string, scenario: Scenario = bare): OutlineEntry {
  const read = readScenario(scenario);
  const node = outlineOf(scenario, path, read.ok ? read.filled : []);
  if (node?.kind !== 'entry') throw new Error(path);
  return node;
}
const marked = (path: string, sureness: Sureness, scenario = bare) =>
  edited(scenario, [doubtEdit({ scenario, filled: [] }, entryOf(path, scenario), sureness, 'SI')]);

describe('how sure', () => {
  it('can be said of quantities and numbers of parts, and of nothing else', () => {
    expect(
      ['store.bridges', 'store.water_depth', 'coils[0].roll_length'].map((path) => canDoubt(entryOf(path))),
    ).toEqual([true, true, true]);
    expect(
      ['store.lid', 'coils[0].name', 'run.days', 'weather.seed'].map((path) => canDoubt(entryOf(path))),
    ).toEqual([false, false, false, false]);
  });

  it('puts a mark into the file that the file’s reader takes, and takes it out again', () => {
    for (const sureness of ['a little', 'a lot', 'between'] as const) {
      const scenario = marked('store.water_depth', sureness);
      const read = readScenario(scenario);
      if (!read.ok) throw new Error(JSON.stringify(read.problems));
      expect(read.marks.map(({ path }) => path)).toEqual(['store.water_depth']);
      expect(marked('store.water_depth', 'sure', scenario).doubts).toBeUndefined();
    }
  });

  it('keeps the other marks in their order', () => {
    const both = marked('store.bridges', 'a little', marked('store.water_depth', 'a lot'));
    const again = marked('store.water_depth', 'a little', both);
    expect(again.doubts?.map(({ input, unsure }) => [input, unsure])).toEqual([
      ['store.water_depth', 'a little'],
      ['store.bridges', 'a little'],
    ]);
  });

  it('begins between with the band that the default came with', () => {
    expect(doubtAt(marked('store.bridges', 'between'), 'store.bridges')).toEqual({
      input: 'store.bridges',
      unsure: 'between',
      from: '1.1',
      to: '2.5',
    });
  });

  it('tells what a word reaches to in the reader’s units', () => {
    expect(reachText(entryOf('store.water_depth'), 'a lot', 'SI')).toEqual(['560 mm', '1.04 m']);
    expect(reachText(entryOf('supply.cold.temperature'), 'a little', 'US')).toEqual(['42.8 °F', '50 °F']);
    expect(reachText(entryOf('store.bridges'), 'a lot', 'US')).toEqual(['1.05', '1.95']);
  });

  it('takes an end that can be read, and says of others what is wrong', () => {
    const scenario = marked('store.water_depth', 'between');
    const entry = entryOf('store.water_depth', scenario);
    const good = endEdit(scenario, entry, 'to', ' 85 cm ');
    if (!good.ok) throw new Error(good.trouble.got);
    expect(doubtAt(edited(scenario, [good.edit]), 'store.water_depth')).toMatchObject({ to: '85 cm' });
    expect(endEdit(scenario, entry, 'to', '30')).toMatchObject({ ok: false, trouble: { where: 'Highest' } });
    expect(endEdit(scenario, entry, 'from', '9 m')).toMatchObject({
      ok: false,
      trouble: { expected: 'more than the lowest', fix: expect.stringContaining('swap') },
    });
  });
});
