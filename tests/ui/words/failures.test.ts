import { describe, expect, it } from 'vitest';
import { FAILURES } from '../../../sim/answers/breaks/failures.ts';
import { RECIPES } from '../../../sim/index.ts';
import { failureWords, notApplyingWords, recipeWords } from '../../../ui/words/index.ts';

describe('words of failures', () => {
  it('are there for each that is tried, in its order, and say what protects', () => {
    expect(Object.keys(failureWords)).toEqual([...FAILURES]);
    for (const { title, protects } of Object.values(failureWords)) {
      expect(title).toMatch(/^[A-Z][^.]+$/);
      expect(protects).toMatch(/^[A-Z].+\.$/);
      expect(protects).not.toMatch(/\b(is|are) safe|certif|guarantee|approved/i);
    }
  });

  it('say nothing of a failure whose runs were left undone', () => {
    const plain = { units: 'US' } as never;
    for (const { story, brief } of Object.values(failureWords)) {
      expect(story({}, plain, '')).toBe('');
      expect(brief?.({}, plain) ?? '').toBe('');
    }
  });

  it('name every reason for which one does not apply', async () => {
    const { readFileSync } = await import('node:fs');
    const source = readFileSync(new URL('../../../sim/answers/breaks/failures.ts', import.meta.url), 'utf8');
    const [, reasons] = /export type NotApplying =\n([^;]+);/.exec(source) ?? [];
    const keys = [...(reasons ?? '').matchAll(/'([a-z_]+)'/g)].map(([, key]) => key);
    expect(keys.length).toBeGreaterThan(8);
    expect(Object.keys(notApplyingWords).sort()).toEqual(keys.sort());
  });
});

describe('words of recipes', () => {
  it('name every field that is asked for, and no other', () => {
    for (const [kind, fields] of Object.entries(RECIPES)) {
      const words = recipeWords[kind as keyof typeof RECIPES];
      expect(Object.keys(words.fields), kind).toEqual(fields.map(({ key }) => key));
      expect(words.how).toMatch(/\.$/);
    }
  });
});
