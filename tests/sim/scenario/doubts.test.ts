import { describe, expect, it } from 'vitest';
import { type Edit, edited, parseQuantity, readScenario } from '../../../sim/index.ts';
import { smallScenario } from '../answers/small.ts';

/** The small scenario with marks, and whatever else is put into it. */
function read(doubts: unknown[], edits: Edit[] = []) {
  const found = readScenario(edited(smallScenario(), [...edits, { path: 'doubts', value: doubts }]));
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found;
}
const bandOf = (doubt: object, edits?: Edit[]) => read([doubt], edits).marks[0]?.band;
const meters = (text: string) => {
  const found = parseQuantity(text, 'length');
  return found.ok ? found.value : Number.NaN;
};

describe('a mark', () => {
  it('is a tenth or three tenths of a value either way', () => {
    const depth = { input: 'store.water_depth' };
    expect(bandOf({ ...depth, unsure: 'a little' })?.map(meters)).toEqual([
      expect.closeTo(0.72, 9),
      expect.closeTo(0.88, 9),
    ]);
    expect(bandOf({ ...depth, unsure: 'a lot' })?.map(meters)).toEqual([
      expect.closeTo(0.56, 9),
      expect.closeTo(1.04, 9),
    ]);
  });

  it('is degrees of a temperature, minutes of a clock, whole ones of a count', () => {
    expect(bandOf({ input: 'supply.cold.temperature', unsure: 'a little' })).toEqual(['6 C', '10 C']);
    expect(bandOf({ input: 'engine.runs.spans[0].from', unsure: 'a lot' })).toEqual(['15:00', '17:00']);
    expect(bandOf({ input: 'taps.showers[0].people', unsure: 'a little' })).toEqual(['1', '3']);
  });

  it('keeps to what the input may be', () => {
    // Bridges multiply by 1 at the least; of one person there is none less.
    expect(
      bandOf({ input: 'store.bridges', unsure: 'a lot' }, [{ path: 'store.bridges', value: 1.2 }]),
    ).toEqual(['1', '1.56']);
  });

  it('stands on a default as well, also one that follows from the rest', () => {
    expect(bandOf({ input: 'engine.jacket_share', unsure: 'a little' })).toEqual(['22.5 %', '27.5 %']);
    expect(
      bandOf({ input: 'taps.pipe.stands.temperature', unsure: 'between', from: '10 C', to: '20 C' }),
    ).toEqual(['10 C', '20 C']);
  });

  it('keeps the ends that its author names as they were written', () => {
    const doubt = { input: 'store.bridges', unsure: 'between', from: '1.10', to: '2' };
    expect(bandOf(doubt)).toEqual(['1.10', '2']);
  });

  it('waits, with a note, while its part is not there', () => {
    const { marks, notes } = read([{ input: 'collector.tilt', unsure: 'a lot' }]);
    expect(marks).toEqual([]);
    expect(notes.map(({ path, text }) => `${path}: ${text}`)).toContain(
      'doubts[0]: "collector.tilt" is not in this scenario: its mark waits',
    );
  });

  it('is told of a value that lies outside its ends', () => {
    const { marks, notes } = read([{ input: 'store.bridges', unsure: 'between', from: '2', to: '3' }]);
    expect(marks).toHaveLength(1);
    expect(notes.find(({ path }) => path === 'doubts[0]')?.text).toContain('1.5, lies outside 2 to 3');
  });

  it('changes nothing of the plant', () => {
    const marked = read([{ input: 'store.bridges', unsure: 'a lot' }]);
    expect(marked.plant).toEqual(read([]).plant);
  });
});
