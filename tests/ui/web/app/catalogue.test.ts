import { describe, expect, it } from 'vitest';
import { catalogueOf, opening } from '../../../../ui/web/app/catalogue.ts';

describe('the catalogue of the page', () => {
  it('begins with the opening scenario, and has no broken one', () => {
    const ids = catalogueOf([]).map(({ id }) => id);
    expect(ids[0]).toBe(opening.id);
    expect(ids.length).toBeGreaterThan(2);
    expect(ids.filter((id) => id.endsWith('_broken'))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('takes the names that were found when the page was built, in their order', () => {
    const [, ...others] = catalogueOf([]).map(({ id }) => id);
    const named = others.map((id, i) => ({ id, name: `${9 - i}`, note: `about ${id}` }));
    const [, first] = catalogueOf(named);
    expect(first).toMatchObject({ id: others.at(-1), note: `about ${others.at(-1)}` });
  });

  it('loads each scenario as its file has it', async () => {
    for (const { id, load } of catalogueOf([])) {
      expect((await load()).format, id).toBe('tankful');
    }
  });
});
