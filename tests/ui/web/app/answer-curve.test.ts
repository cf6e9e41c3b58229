import { describe, expect, it } from 'vitest';
import type { Curve } from '../../../../sim/index.ts';
import { answerCurve } from '../../../../ui/web/app/answer-curve.ts';
import { sayIn } from '../../../../ui/words/index.ts';

const byLength = (more: Partial<Curve> = {}): Curve => ({
  x: { key: 'length_m', dimension: 'length' },
  lines: [
    { name: 'outlet_C', y: { key: 'outlet_C', dimension: 'temperature' }, values: [20, 35, null, 45] },
    { name: 'unsaid', y: { key: 'unsaid', dimension: 'temperature' }, values: [0, 0, 0, 0] },
  ],
  at: [0, 15.24, 30.48, 60.96],
  present: 30.48,
  knee: 15.24,
  ...more,
});
const names = { lines: { outlet_C: 'outlet' }, knee: 'more stops paying' };

describe('a curve in the reader’s units', () => {
  it('has its numbers in them, as text too', () => {
    // 15.24 m are 50 ft; 35 °C are 95 °F.
    const found = answerCurve(byLength(), names, sayIn('US'));
    expect(found?.at.map((x) => Math.round(x))).toEqual([0, 50, 100, 200]);
    expect(found?.lines).toHaveLength(1);
    expect(found?.lines[0].words).toEqual(['68 °F', '95 °F', '–', '113 °F']);
    expect(found?.atWords).toEqual(['0 ft', '50 ft', '100 ft', '200 ft']);
    expect([found?.x.unit, found?.y.unit]).toEqual(['ft', '°F']);
    const si = answerCurve(byLength(), names, sayIn('SI'));
    expect(si?.lines[0].words).toEqual(['20 °C', '35 °C', '–', '45 °C']);
    expect(si?.presentWords).toBe('as it is: 30.5 m');
  });

  it('reaches over all its values, on round numbers', () => {
    const found = answerCurve(byLength(), names, sayIn('SI'));
    const { low, high } = found?.y.range ?? { low: Number.NaN, high: Number.NaN };
    expect(low).toBeLessThanOrEqual(20);
    expect(high).toBeGreaterThanOrEqual(45);
    for (const mark of found?.x.range.at ?? []) expect(mark).toBeGreaterThanOrEqual(0);
  });

  it('marks neither a design nor a knee that lies outside of it', () => {
    const found = answerCurve(byLength({ present: 100, knee: -1 }), names, sayIn('SI'));
    expect([found?.present, found?.knee]).toEqual([null, null]);
  });

  it('marks no knee that has no words', () => {
    expect(answerCurve(byLength(), { lines: names.lines }, sayIn('SI'))?.knee).toBeNull();
  });

  it('names months, and counts long times in hours', () => {
    const found = answerCurve(
      {
        x: { key: 'month', dimension: 'month' },
        lines: [{ name: 'hours_s', y: { key: 'hours_s', dimension: 'time' }, values: [7200, 14_400] }],
        at: [1, 2],
        present: null,
        knee: null,
      },
      { lines: { hours_s: 'needed' } },
      sayIn('US'),
    );
    expect(found?.atWords).toEqual(['Jan', 'Feb']);
    expect(found?.lines[0].words).toEqual(['2 h', '4 h']);
    expect(found?.y.unit).toBe('h');
  });

  it('keeps lines of many apart from the others, and reaches over them too', () => {
    const [line] = byLength().lines;
    const run = { ...line, name: 'run 7', values: [10, 20, 30, 90] };
    const thin = (name: string) => (name.startsWith('run') ? name : null);
    const found = answerCurve(byLength({ lines: [line, run] }), { ...names, thin }, sayIn('SI'));
    expect(found?.lines.map(({ label }) => label)).toEqual(['outlet']);
    expect(found?.thin).toEqual([
      { label: 'run 7', values: run.values, words: ['10 °C', '20 °C', '30 °C', '90 °C'] },
    ]);
    expect(found?.y.range.high).toBeGreaterThanOrEqual(90);
    expect(answerCurve(byLength({ lines: [line, run] }), names, sayIn('SI'))?.thin).toEqual([]);
  });

  it('is none where fewer than two numbers are known', () => {
    const [line] = byLength().lines;
    const values = [null, 35, null, null];
    expect(answerCurve(byLength({ lines: [{ ...line, values }] }), names, sayIn('US'))).toBeNull();
    expect(answerCurve(byLength(), { lines: {} }, sayIn('US'))).toBeNull();
  });
});
