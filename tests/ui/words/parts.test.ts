import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../../sim/index.ts';
import {
  bandText,
  inBoth,
  itemLabel,
  partTitle,
  sourceText,
  tubeText,
  understoodText,
} from '../../../ui/words/index.ts';
import { demo } from '../web/elements/cards/demo.ts';

function field(path: string) {
  const entry = outlineOf(demo, path);
  if (entry?.kind !== 'entry') throw new Error(path);
  return entry.field;
}

describe('inBoth', () => {
  // Exact by definition: 0 C = 32 F, 1 in = 25.4 mm, a difference of 1.8 F = 1 K, 1 psi = 6894.757 Pa.
  it.each([
    [48.8889, 'temperature', '120 °F (48.9 °C)', '48.9 °C (120 °F)'],
    [10 / 1.8, 'temperature_difference', '10 °F (5.56 K)', '5.56 K (10 °F)'],
    [0.0254 * 0.625, 'length', '5/8 in (15.9 mm)', '15.9 mm (5/8 in)'],
    [0.0254 * 0.545, 'length', '0.545 in (13.8 mm)', '13.8 mm (0.545 in)'],
    [50 * 6894.757, 'pressure', '50 psi (345 kPa)', '345 kPa (50 psi)'],
    [480, 'time', '8 min', '8 min'],
  ] as const)('%d %s', (value, dimension, us, si) => {
    expect(inBoth(value, dimension, 'US')).toBe(us);
    expect(inBoth(value, dimension, 'SI')).toBe(si);
  });

  it('reads heat in kilowatts first where units are mixed', () => {
    expect(inBoth(2930.71, 'power', 'mixed')).toBe('2.93 kW (10 kBtu/h)');
    expect(inBoth(0.5, 'length', 'mixed')).toMatch(/ in \(500 mm\)$/);
  });
});

describe('understoodText', () => {
  it.each([
    ['store.water_depth', '2 ft 8 in', '32 in (813 mm)'],
    ['taps.draws[0].temperature', '50 C', '122 °F (50 °C)'],
    ['taps.draws[0].at', '8:15 am', '8:15 am (8:15)'],
    ['taps.draws[3].days', 'Mon-Wed', 'Mon, Tue, Wed'],
    ['run.from', '2027-01-09', 'Sat Jan 9'],
    ['run.from', '03-01', 'Mar 1'],
  ])('%s: %s', (path, text, words) => {
    expect(understoodText(field(path), text, 'US')).toBe(words);
  });

  it('is silent where it could only repeat, or cannot read', () => {
    expect(understoodText(field('taps.draws[3].days'), 'every day', 'US')).toBeNull();
    expect(understoodText(field('coils[0].rolls'), '2', 'US')).toBeNull();
    expect(understoodText(field('store.water_depth'), '2 ft 8', 'US')).toBeNull();
  });
});

describe('tubeText', () => {
  // ASTM B280: 3/8 in tube is 0.375 in outside and has a 0.032 in wall; 1 in = 25.4 mm.
  const tube = { label: '3/8 in tube', outside_m: 0.375 * 0.0254, inside_m: 0.311 * 0.0254 };
  it('gives both diameters in both systems', () => {
    expect(tubeText(tube, 'US')).toBe('3/8 in tube = 3/8 in (9.5 mm) outside, 0.311 in (7.9 mm) inside');
    expect(tubeText(tube, 'SI')).toBe('3/8 in tube = 9.5 mm (3/8 in) outside, 7.9 mm (0.311 in) inside');
  });
});

describe('an assumption in words', () => {
  const assumed = { value: '3 gpm', how: null, source: 'a label', grade: 'B', band: null } as const;
  it('names rule, source and grade', () => {
    expect(sourceText(assumed)).toBe('Source: a label (grade B, measured, or known from long practice).');
    expect(sourceText({ ...assumed, how: 'half the rated output', grade: 'invented' })).toBe(
      'Half the rated output. Source: a label (invented, to be replaced).',
    );
  });
  it('gives its band in the reader’s units', () => {
    expect(bandText(field('taps.showers[0].flow'), ['1 gpm', '2 gpm'], 'SI')).toBe(
      'Believable from 3.79 L/min to 7.57 L/min.',
    );
    expect(bandText(field('store.bridges'), ['1.1', '2.5'], 'SI')).toBe('Believable from 1.1 to 2.5.');
  });
});

it('partTitle calls a part by kind and name', () => {
  expect(partTitle('coils[3]', 'north')).toBe('Coil: north');
  expect(partTitle('prices', null)).toBe('Prices');
});

it('itemLabel names months and numbers others', () => {
  expect(itemLabel('month', 11, [12, 12])).toBe('Dec');
  expect(itemLabel('sheet', 0, [0, 8])).toBe('Sheet 1');
});
