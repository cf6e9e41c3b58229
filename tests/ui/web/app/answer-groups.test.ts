import { describe, expect, it } from 'vitest';
import { grouped } from '../../../../ui/web/app/answer-groups.ts';
import { answerKeys } from '../../../../ui/web/app/asking.ts';

describe('groups of answers', () => {
  it('hold every answer once, those of every day first and without a heading', () => {
    const groups = grouped(answerKeys);
    expect(groups.flatMap(({ keys }) => keys).sort()).toEqual([...answerKeys].sort());
    expect(groups[0]).toEqual({ heading: '', keys: ['showers', 'coil', 'charging'] });
    for (const { heading } of groups.slice(1)) expect(heading).not.toBe('');
  });

  it('leave out groups without an answer', () => {
    expect(grouped(['store'])).toHaveLength(1);
    expect(grouped([])).toEqual([]);
  });
});
