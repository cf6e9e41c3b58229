import { describe, expect, it } from 'vitest';
import type { Caution } from '../../../sim/index.ts';
import { titleOf, together } from '../../../ui/words/index.ts';

const trapped = (part: string, value = 90): Caution => ({
  key: 'trapped_coil',
  part,
  severity: 'danger',
  figure: 'store_top_C_max',
  value,
});

describe('together', () => {
  it('tells once what is alike of several parts, and names them', () => {
    const weight: Caution = { key: 'weight', part: 'store', severity: 'note' };
    const [coils, other, ...more] = together([trapped('household'), weight, trapped('charging')]);
    expect(coils.parts).toEqual(['household', 'charging']);
    expect(other).toEqual({ caution: weight, parts: [] });
    expect(more).toEqual([]);
    expect(titleOf('Water trapped in a coil', coils.parts)).toBe(
      'Water trapped in a coil (household, charging)',
    );
    expect(titleOf('Weight', other.parts)).toBe('Weight');
  });

  it('keeps apart what has another number', () => {
    expect(together([trapped('household', 90), trapped('charging', 80)])).toHaveLength(2);
  });
});
