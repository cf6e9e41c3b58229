import { describe, expect, it } from 'vitest';
import demo from '../../../scenarios/demo.json' with { type: 'json' };
import toteSun from '../../../scenarios/tote-sun.json' with { type: 'json' };
import { buildSheet, readScenario, sectionFacts, simulate } from '../../../sim/index.ts';
import { inBothUnits, sayCaution, speakIn } from '../../../ui/words/index.ts';
import { waterLine } from '../../../ui/words/section-legend.ts';
import { weightBlock } from '../../../ui/words/sheet.ts';

/** What each place says of one design's water. */
function told(scenario: unknown) {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error('a scenario does not read');
  const { plant, sketch } = read;
  const facts = sectionFacts(plant, sketch);
  const run = simulate({ ...plant, run: { ...plant.run, days: 1, interval_s: 3600 } });
  const caution = run.cautions.find(({ key }) => key === 'weight');
  if (!caution) throw new Error('no weight is told of');
  return {
    drawing: waterLine(facts, 'US'),
    sheet: weightBlock(buildSheet(facts), inBothUnits()).lines[0],
    caution: sayCaution(caution, speakIn('US')).says,
  };
}

describe('the water and the weight of one design', () => {
  // Demo: 48 x 36 x 32 in are 239.4 gal. Of 55,296 in3 tube takes 1417, which leaves 1946 lb; 91 lb of copper, 41 lb in it.
  it.each([
    ['demo', demo, '239 gal', '2080 lb'],
    ['tote-sun', toteSun, '254 gal', null],
  ])('are the same in drawing, sheet and caution: %s', (_, scenario, gallons, by_hand) => {
    const { drawing, sheet, caution } = told(scenario);
    const [, volume, filled] = /^(.* gal), filled (.* lb)$/.exec(drawing) ?? [];
    expect(volume).toBe(gallons);
    if (by_hand !== null) expect(filled).toBe(by_hand);
    expect(sheet).toMatch(new RegExp(`^Filled to its line, ${volume} .* it weighs ${filled} `));
    expect(caution).toMatch(new RegExp(`^Filled, water and coils weigh ${filled}, `));
  });
});
