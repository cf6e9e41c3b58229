import { describe, expect, it } from 'vitest';
import demo from '../../../scenarios/demo.json' with { type: 'json' };
import { glossary, readScenario, simulate } from '../../../sim/index.ts';
import { cautionWords, eventWords } from '../../../ui/words/index.ts';

/** Every name a run uses has one meaning in the glossary and one label in the words. */
describe('the names of a run', () => {
  const read = readScenario(demo);
  if (!read.ok) throw new Error('the demo does not read');
  const result = simulate({ ...read.plant, run: { ...read.plant.run, days: 2, interval_s: 3600 } });
  const named = (of: string) =>
    glossary
      .filter((entry) => entry.of === of)
      .map((entry) => entry.key)
      .sort();

  it('are the glossary’s, figure by figure', () => {
    expect(Object.keys(result.figures).sort()).toEqual(named('figure'));
  });

  it('are the glossary’s, channel by channel', () => {
    expect(Object.keys(result.series.channels).sort()).toEqual(named('channel'));
  });

  it('are the glossary’s, path by path', () => {
    expect(result.ledger.paths.map((path) => path.key).sort()).toEqual(named('path'));
  });

  it('have words where something happens', () => {
    for (const { name } of result.events) expect(eventWords).toHaveProperty([name]);
    for (const { key } of result.cautions) expect(cautionWords).toHaveProperty([key]);
  });
});
