import { describe, expect, it } from 'vitest';
import { duplication, edited, movedMarks, removal, removing, type Scenario } from '../../../sim/index.ts';
import { sunnyScenario } from '../answers/small.ts';

const marks = ['coils[0].outside_film', 'coils[1].fouling', 'coils[2].coil_diameter', 'store.bridges'];
const json = sunnyScenario({ doubts: marks.map((input) => ({ input, unsure: 'a lot' })) });
const inputs = ({ doubts = [] }: Scenario) => doubts.map(({ input }) => input);

describe('marks', () => {
  it('follow the items of a list that move, and go with one that goes', () => {
    expect(inputs(edited(json, movedMarks(json, 'coils', 1, -1)))).toEqual([
      'coils[0].outside_film',
      'coils[1].coil_diameter',
      'store.bridges',
    ]);
    expect(inputs(edited(json, movedMarks(json, 'coils', 1, 1)))).toEqual([
      'coils[0].outside_film',
      'coils[2].fouling',
      'coils[3].coil_diameter',
      'store.bridges',
    ]);
  });

  it('need no edit where none moves, and leave the file when the last one goes', () => {
    expect(movedMarks(json, 'taps.showers', 0, -1)).toEqual([]);
    expect(movedMarks({}, 'coils', 0, 1)).toEqual([]);
    const one = { doubts: [{ input: 'coils[0].fouling', unsure: 'a lot' }] };
    expect(movedMarks(one, 'coils', 0, -1)).toEqual([{ path: 'doubts', value: undefined }]);
  });

  it('stay on their coil when another is doubled or taken away', () => {
    const doubled = duplication(json, 'coils[0]');
    if ('no' in doubled) throw new Error(doubled.no);
    expect(inputs(edited(json, doubled.edits))).toContain('coils[3].coil_diameter');
    const spare = edited(json, doubled.edits);
    const gone = removal(spare, 'coils[1]');
    if ('no' in gone) throw new Error(gone.no);
    expect(inputs(edited(spare, gone.edits))).toEqual(marks);
  });

  it('stay on their draw when a card takes another out of its list', () => {
    const two = edited(json, [
      { path: 'taps.showers[1]', value: { at: '7:00' } },
      { path: 'doubts', value: [{ input: 'taps.showers[1].people', unsure: 'a little' }] },
    ]);
    expect(inputs(edited(two, removing(two, 'taps.showers', 0, []).edits))).toEqual([
      'taps.showers[0].people',
    ]);
  });
});
