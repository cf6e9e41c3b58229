import { describe, expect, it } from 'vitest';
import type { FitAnswer, FittedInput } from '../../../sim/index.ts';
import { fitCautions } from '../../../ui/words/index.ts';

const fitted = (path: string, value: number, more: Partial<FittedInput> = {}): FittedInput => ({
  path,
  form: 'number',
  before: { value: 1.5, low: 1, high: 2.45 },
  value,
  low: 0.9 * value,
  high: 1.1 * value,
  left: 0.3,
  told: true,
  usual: [1.1, 2.5],
  ...more,
});
const answer = (inputs: FittedInput[], beside: FittedInput[] = []): FitAnswer => ({
  inputs,
  beside,
  together: [],
  probes: [],
  rms_K: { before: 1, after: 0.1 },
  compared: [],
  edits: [],
  ignored: [],
  settled: true,
});
const said = (...given: Parameters<typeof answer>) =>
  fitCautions(answer(...given), [], (path) => path).join('\n');

describe('what to mind of a fit', () => {
  it.each([
    [3.69, true],
    [1.02, true],
    [2.2, false],
  ])('is a value of %f beyond what is usual: %s', (value, unusual) => {
    const text = said([fitted('store.bridges', value)]);
    expect(/lies beyond what is usual, 1\.10 to 2\.50/.test(text)).toBe(unusual);
  });

  it('is the vapour past the lid, and how to part it from the walls, where the walls are told', () => {
    const vapour = fitted('store.vapour_escape', 0.02, {
      form: 'share',
      before: { value: 0.02, low: 0.006, high: 0.065 },
    });
    const text = said([fitted('store.bridges', 2)], [vapour]);
    expect(text).toContain('2.0 % is taken to get past it; the band holds 0.6 % to 6.5 %');
    expect(text).toContain('tape the lid shut all round, leave the vent open');
    expect(said([fitted('store.bridges', 2)])).toBe('');
    expect(said([fitted('store.bridges', 2, { told: false })], [vapour])).toBe('');
  });
});
