import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvText, headOf } from '../../../../../ui/web/app/files/csv.ts';

describe('csvText', () => {
  it('writes numbers to six digits and nothing where there is none', () => {
    const rows = [
      [1 / 3, Number.NaN, null],
      [Number.NEGATIVE_INFINITY, 1e-7, 'x'],
    ];
    expect(csvText({ head: ['a', 'b', 'c'], rows })).toBe('a,b,c\r\n0.333333,,\r\n,1e-7,x\r\n');
  });

  it('is read back by another reader, whatever the words', () => {
    const word = fc.string({ unit: 'grapheme' }).filter((text) => !/^[=+@\t\r-]/.test(text));
    fc.assert(
      fc.property(fc.array(fc.array(word, { minLength: 3, maxLength: 3 }), { minLength: 1 }), (rows) => {
        expect(csvParseRows(csvText({ head: ['a', 'b', 'c'], rows })).slice(1)).toEqual(rows);
      }),
      { seed: 3 },
    );
  });

  it.each(['=1+1', '+1', '-1+1', '-a', '@a', '\t=1'])('gives a spreadsheet no formula: %j', (text) => {
    const [, [cell]] = csvParseRows(csvText({ head: ['a'], rows: [[text]] }));
    expect(cell).toBe(`'${text}`);
  });

  it.each([-1, '-1', '-1.5e-7', '-'])('leaves a number as it is: %j', (value) => {
    expect(csvText({ head: ['a'], rows: [[value]] })).toBe(`a\r\n${value}\r\n`);
  });
});

describe('headOf', () => {
  it.each([
    ['top', '°F', 'top (F)'],
    ['sun', 'W/m²', 'sun (W/m2)'],
    ['count', '', 'count'],
  ])('names %s in %j', (label, unit, head) => {
    expect(headOf(label, unit)).toBe(head);
  });
});
