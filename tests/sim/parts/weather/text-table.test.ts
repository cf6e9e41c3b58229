import { describe, expect, it } from 'vitest';
import { fillGaps } from '../../../../sim/parts/weather/fill-gaps.ts';
import { ProblemList, quote } from '../../../../sim/parts/weather/problems.ts';
import { readNumber, readTable, splitLine } from '../../../../sim/parts/weather/text-table.ts';

describe('splitLine', () => {
  it('trims cells and keeps separators and quotes inside quotes', () => {
    expect(splitLine(' a , "b, c" ,"say ""x""",', ',')).toEqual(['a', 'b, c', 'say "x"', '']);
    expect(splitLine('a\tb', '\t')).toEqual(['a', 'b']);
  });
});

describe('readTable', () => {
  it('finds the separator and keeps the file’s line numbers over blank lines', () => {
    const table = readTable('\uFEFFa;b,x;c\r\n\r\n1;2;3\r4;5;6\n', 0, new ProblemList());
    expect(table?.separator).toBe(';');
    expect(table?.lines.map(({ number }) => number)).toEqual([1, 3, 4]);
    expect(table?.lines[0].text).toBe('a;b,x;c');
  });

  it('refuses what is too big before it looks inside', () => {
    const problems = new ProblemList();
    expect(readTable('x'.repeat(60_000_001), 0, problems)).toBeUndefined();
    expect(problems.all()[0].expected).toBe('at most 60 million characters');
  });
});

describe('readNumber', () => {
  it('reads numbers, and a decimal comma where it is one', () => {
    expect(readNumber('-1.5e2', false)).toBe(-150);
    expect(readNumber('.5', false)).toBe(0.5);
    expect(readNumber('1,5', true)).toBe(1.5);
    expect(readNumber('1,5', false)).toBeUndefined();
  });

  it.each(['', '-', '--', 'NaN', 'N/A', 'null', '-9999', '-9900', '-9999.0', '***'])(
    'knows %s as missing',
    (cell) => {
      expect(readNumber(cell, false)).toBeNaN();
    },
  );

  it.each(['x', '1 2', '0x10', '1.2.3', 'Infinity', '+', '1e'])('knows that %s is no number', (cell) => {
    expect(readNumber(cell, false)).toBeUndefined();
  });
});

describe('quote', () => {
  it('shortens and tames what it shows', () => {
    expect(quote('a\tb')).toBe('"a b"');
    expect(quote('x'.repeat(100))).toHaveLength(42);
  });
});

describe('fillGaps', () => {
  const hole = Number.NaN;
  it('bridges over the turn of the year and reports what is longer', () => {
    const series = Float64Array.of(hole, 4, 5, hole, hole, hole, hole, 9, 1, hole);
    const { filled, gaps } = fillGaps(series);
    expect(filled).toBe(2);
    expect(gaps).toEqual([{ from: 3, hours: 4 }]);
    expect(series[9]).toBeCloseTo(2, 12);
    expect(series[0]).toBeCloseTo(3, 12);
    expect(series[3]).toBeNaN();
  });

  it('has one gap where there is nothing, and none where all is there', () => {
    expect(fillGaps(Float64Array.of(hole, hole)).gaps).toEqual([{ from: 0, hours: 2 }]);
    expect(fillGaps(Float64Array.of(1, 2))).toEqual({ filled: 0, gaps: [] });
  });
});
