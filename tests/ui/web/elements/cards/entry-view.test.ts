import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../../../../sim/index.ts';
import {
  type EntryView,
  entryView,
  idOf,
  type Surroundings,
  strayTroubles,
} from '../../../../../ui/web/elements/cards/entry-view.ts';
import { saysUnknown } from '../../../../../ui/words/index.ts';
import { bare, calm, demo, entryOf } from './demo.ts';

function view(path: string, around: Partial<Surroundings> = {}, scenario: Scenario = demo): EntryView {
  const part = /^(?:\w+(?:\[\d+\])?)/.exec(path)?.[0] ?? '';
  const { entry, siblings } = entryOf(scenario, part, path);
  return entryView(entry, 'Label', siblings, { ...calm, ...around });
}
const typed = (path: string, text: string) => view(path, { typed: { [path]: text } });

describe('an entry that the file gives', () => {
  it('stands as it was written, whatever units are read in', () => {
    for (const units of ['US', 'SI', 'mixed'] as const)
      expect(view('store.water_depth', { units })).toMatchObject({ text: '32 in', mark: null, lines: [] });
  });

  it('is understood in both systems, the reader’s first', () => {
    expect(view('store.water_depth').understood).toBe('32 in (813 mm)');
    expect(view('store.water_depth', { units: 'SI' }).understood).toBe('813 mm (32 in)');
    expect(view('engine.typical_load').understood).toBeNull();
  });

  it('is understood anew with every letter typed', () => {
    const draft = (text: string) => view('store.water_depth', { draft: { path: 'store.water_depth', text } });
    expect(draft('2 ft 6 in').understood).toBe('30 in (762 mm)');
    expect(draft('2 ft 6').understood).toBeNull();
    expect(draft('2 ft 6')).toMatchObject({ trouble: null, text: '32 in' });
  });

  it('can be given up for what then stands in, or left out, or replaced by an example', () => {
    expect(view('store.water_depth').forget).toEqual({ label: 'Don’t know', value: undefined });
    expect(view('taps.draws[0].volume').forget).toEqual({ label: 'Leave out', value: undefined });
    expect(view('store.inside.length').forget).toEqual({ label: 'Don’t know', value: '48 in' });
    expect(view('coils[0].name').forget).toBeNull();
    expect(view('store.inside.shape').forget).toBeNull();
  });

  it('is marked where it is only an example', () => {
    const examples = new Set(['store.inside']);
    expect(view('store.inside.length', { examples })).toMatchObject({
      mark: 'example',
      lines: [expect.stringMatching(/^This is only an example/)],
    });
    expect(view('store.water_depth', { examples }).mark).toBeNull();
  });
});

describe('an entry that is assumed', () => {
  it('says so, and where it comes from, how far it can be trusted and believed', () => {
    const { text, mark, lines } = view('supply.pump.open_flow', {}, bare);
    expect([text, mark]).toEqual(['3 gpm', 'assumed']);
    expect(lines).toEqual([
      'Source: 12 V demand pumps (grade B, measured, or known from long practice).',
      'Believable from 2.5 gpm to 3.5 gpm.',
    ]);
  });

  it('is written in the reader’s units', () => {
    expect(view('engine.coldest_return', { units: 'SI' })).toMatchObject({
      text: '60 C',
      lines: [expect.stringMatching(/^Source/), 'Believable from 48.9 °C to 71.1 °C.'],
    });
  });

  it('names the rule it follows from', () => {
    expect(view('store.water_depth', {}, bare).lines[0]).toMatch(/^92 % of the inside height\. Source: /);
  });

  it('leaves its source to the whole that has told it', () => {
    const { entry } = entryOf(bare, 'store', 'store.wall.material');
    const { lines } = entryView(entry, 'Material', [], { ...calm, sourced: entry.assumed });
    expect(lines).toEqual([]);
  });

  it('cannot be given up', () => {
    expect(view('store.water_depth', {}, bare).forget).toBeNull();
  });
});

describe('an entry that may be absent', () => {
  it('says what its absence means', () => {
    expect(view('store.ground')).toMatchObject({
      text: '',
      mark: null,
      lines: ['not given: the same air as around it.'],
    });
  });
});

describe('text that cannot be read', () => {
  it('is kept, with what is wrong and what to do', () => {
    const { text, own, trouble, understood } = typed('store.water_depth', '50 psi');
    expect([text, own, understood]).toEqual(['50 psi', '32 in', null]);
    expect(trouble).toEqual({
      where: 'Label',
      expected: expect.stringMatching(/^a length/),
      got: '"50 psi"',
      fix: expect.stringContaining('measures a pressure'),
    });
  });

  it('is offered with the units a bare number could have', () => {
    expect(typed('store.water_depth', '30').meant).toEqual(['30 in', '30 ft', '30 mm', '30 cm']);
    expect(typed('taps.mixing_valve.set', '50').meant).toEqual(['50 C']);
    expect(typed('store.water_depth', '50 psi').meant).toEqual([]);
    expect(typed('coils[0].rolls', 'two').meant).toEqual([]);
  });
});

describe('a problem of the reading', () => {
  const problem = { path: 'store.water_depth', expected: 'less', got: '99 in', fix: 'fill it less' };
  it('stands at its entry, called by its label', () => {
    expect(view('store.water_depth', { problems: [problem] }).trouble).toEqual({
      where: 'Label',
      expected: 'less',
      got: '99 in',
      fix: 'fill it less',
    });
    expect(view('store.lid', { problems: [problem] }).trouble).toBeNull();
  });
  it('is not lost where the card has no place for it', () => {
    const problems = [problem, { ...problem, path: 'store.colour' }, { ...problem, path: 'storey' }];
    expect(strayTroubles('store', new Set(['store.water_depth']), problems)).toEqual([
      { where: 'store.colour', expected: 'less', got: '99 in', fix: 'fill it less' },
    ]);
  });
});

describe('a tube’s size', () => {
  it('is understood by the standard beside it', () => {
    // ASTM B280 and B88: 3/8 in refrigeration tube is 0.375 in outside, 0.032 in wall; plumbing L is 0.5 in, 0.035 in.
    const path = 'coils[2].tube.size';
    expect(view(path, { draft: { path, text: '3/8 in' } }).understood).toBe(
      '3/8 in refrigeration tube = 3/8 in (9.5 mm) outside, 0.311 in (7.9 mm) inside',
    );
    const plumbing = 'coils[0].tube.size';
    expect(view(plumbing, { draft: { path: plumbing, text: '3/8' } }).understood).toMatch(
      / = 1\/2 in \(12\.7 mm\) outside, 0\.43 in \(10\.9 mm\) inside$/,
    );
    expect(view(path, { draft: { path, text: '3/7 in' } }).understood).toBeNull();
  });
});

it('idOf keeps paths apart', () => {
  expect(idOf('coils[0].tube.size')).toMatch(/^[a-z][\w-]*$/);
  expect(new Set(['coils[0].from', 'coils[1].from', 'coils[0].to'].map(idOf)).size).toBe(3);
});

describe('a price', () => {
  const path = 'prices.diesel_per_litre';
  const priced = (price: number | string): Scenario => ({ ...demo, prices: { diesel_per_litre: price } });

  it('that is a number in the file, a litre’s, is shown for what the reader buys by', () => {
    // 1.20 times 3.785 L to the gallon.
    expect(view(path, {}, priced(1.2)).text).toBe('4.542/gal');
    expect(view(path, { units: 'SI' }, priced(1.2)).text).toBe('1.2/L');
    expect(view(path, {}, demo)).toMatchObject({ text: '4.542/gal', mark: 'assumed' });
    expect(view(path, {}, demo).lines[1]).toBe('Believable from 3.028/gal to 6.814/gal.');
  });

  it('that says what it is for stands as it was written, understood for both', () => {
    const { text, understood } = view(path, {}, priced('$4.50 per gal'));
    expect([text, understood]).toEqual(['$4.50 per gal', '4.5/gal (1.189/L)']);
  });

  it('that is typed as a mere number is asked about, not taken for a litre’s', () => {
    const { trouble, meant } = view(path, { typed: { [path]: '4.50' } }, priced(1.2));
    expect(trouble).toMatchObject({
      got: '"4.50"',
      fix: 'say for how much, as in "4.50/gal" or "4.50/L", or press “Don’t know” beside it',
    });
    expect(meant).toEqual(['4.50/gal', '4.50/L']);
  });
});

describe('what a builder types who does not know, or says it in words', () => {
  it('is told of the button beside it, where there is one', () => {
    expect(typed('store.water_depth', 'knee-high').trouble?.fix).toMatch(
      /, or press “Don’t know” beside it$/,
    );
    expect(typed('taps.draws[0].volume', 'a bathful').trouble?.fix).toMatch(
      /, or press “Leave out” beside it$/,
    );
    const assumed = view('store.water_depth', { typed: { 'store.water_depth': 'knee-high' } }, bare);
    expect(assumed.trouble?.fix).not.toMatch(/press/);
  });

  it('is told with an example of the field’s own', () => {
    const path = 'engine.fuel_use[0].fuel';
    expect(typed(path, '0.4 gal').trouble).toMatchObject({
      expected: expect.stringMatching(/as in "0\.4 gal\/h"$/),
      fix: expect.stringMatching(/^"gal" measures a volume; write it as in "0\.4 gal\/h"/),
    });
    const draft = (text: string) => view(path, { draft: { path, text } }).understood;
    expect(draft('50 gal/h')).toBe('50 gal/h (189 L/h)');
    expect(draft('half a gallon an hour')).toBe('0.5 gal/h (1.89 L/h)');
  });

  it.each(['don’t know', "don't know", 'I dont know', 'unknown', '?', 'Not sure'])(
    'says so by %s',
    (text) => {
      expect(saysUnknown(text)).toBe(true);
    },
  );

  it.each(['32 in', 'know', '', 'no'])('does not say so by %j', (text) => {
    expect(saysUnknown(text)).toBe(false);
  });
});
