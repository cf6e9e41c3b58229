import { describe, expect, it } from 'vitest';
import { outlineOf, readEntry, tubeNamed } from '../../../../sim/scenario/index.ts';
import { textOf } from '../files.ts';

const demo: unknown = JSON.parse(textOf('demo.json'));

function read(path: string, text: string) {
  const entry = outlineOf(demo, path);
  if (entry?.kind !== 'entry') throw new Error(path);
  return readEntry(entry.field, text);
}

describe('readEntry', () => {
  it.each([
    ['store.water_depth', ' 32 in ', '32 in', 0.8128],
    ['coils[0].rolls', '3', 3, 3],
    ['store.bridges', '1.25', 1.25, 1.25],
    ['taps.draws[3].days', 'Sat', 'Sat', [5]],
    ['run.from', '2027-01-09', '2027-01-09', { day: 8, weekday: 5 }],
    ['engine.check_valve', 'false', false, null],
    ['store.lid', 'ajar', 'ajar', null],
    ['coils[0].name', 'north coil', 'north coil', null],
  ])('%s takes %j', (path, text, value, means) => {
    expect(read(path, text)).toEqual({ ok: true, value: { value, means } });
  });

  it.each([
    ['store.water_depth', '50 psi', /a length/, '"50 psi"', /measures a pressure/],
    ['store.water_depth', '32', /a length/, '"32"', /add the unit/],
    ['store.water_depth', '99 ft', /to 32.8 ft/, '"99 ft"', /check the number/],
    ['coils[0].rolls', '2.5', /whole number from 1 to 50/, '"2.5"', /choose a number/],
    ['coils[0].rolls', 'two', /whole number/, '"two"', /./],
    ['coils[0].name', '  ', /text of 1 to 80/, 'nothing', /add it/],
    ['store.lid', 'shut', /"closed", "ajar", "open"/, '"shut"', /choose one/],
    ['engine.check_valve', 'maybe', /true or false/, '"maybe"', /./],
  ])('%s refuses %j and says what to do', (path, text, expected, got, fix) => {
    const { ok, ...said } = read(path, text);
    expect(ok).toBe(false);
    expect(said).toEqual({
      expected: expect.stringMatching(expected),
      got,
      fix: expect.stringMatching(fix),
    });
  });
});

describe('tubeNamed', () => {
  // ASTM B280: 3/8 in refrigeration tube is 0.375 in outside with a 0.032 in wall (from memory).
  it('knows a tube of a standard by the words of a file', () => {
    const tube = tubeNamed('refrigeration', '3/8 in');
    expect(tube?.outside_m).toBeCloseTo(0.375 * 0.0254, 6);
    expect(tube?.inside_m).toBeCloseTo(0.311 * 0.0254, 6);
    expect(tube?.label).toBe('3/8 in refrigeration tube');
  });
  it('knows no other', () => {
    expect(tubeNamed('refrigeration', '3/7 in')).toBeNull();
    expect(tubeNamed('own', '3/8 in')).toBeNull();
  });
});
