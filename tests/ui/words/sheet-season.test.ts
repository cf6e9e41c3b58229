import { describe, expect, it } from 'vitest';
import { sayIn, seasonBlock } from '../../../ui/words/index.ts';
import { breaks, season } from '../hand-made-failures.ts';

describe('the year by months on the build sheet', () => {
  it('is a small table with a unit in each head, a row a month', () => {
    const block = seasonBlock([breaks, season], sayIn('SI'));
    expect(block?.table?.heads).toEqual(['month', 'engine, h', 'fuel, L', 'cold showers', 'hottest, C']);
    expect(block?.table?.rows).toHaveLength(12);
    expect(block?.table?.rows[0]).toEqual(['Jan', '62', '42.0', '0', '80']);
  });

  it('is left out where nobody asked for it', () => {
    expect(seasonBlock([breaks], sayIn('US'))).toBeNull();
  });
});
