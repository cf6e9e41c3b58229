import { describe, expect, it } from 'vitest';
import { readScenario } from '../../../../sim/scenario/index.ts';

const least = {
  format: 'tankful',
  version: 1,
  name: 'prices',
  site: { latitude: '44 N' },
  store: { inside: { shape: 'tote' } },
};

function priced(prices: unknown) {
  return readScenario(prices === undefined ? least : { ...least, prices });
}

describe('prices', () => {
  it('are all filled in and all called invented when the file is silent', () => {
    const read = priced(undefined);
    if (!read.ok) throw new Error(read.problems[0].path);
    const told = read.filled.filter(({ path }) => path.startsWith('prices.'));
    expect(told.length).toBeGreaterThanOrEqual(10);
    expect(new Set(told.map(({ grade }) => grade))).toEqual(new Set(['invented']));
    expect(read.plant.prices.currency).toBe('$');
  });

  it('are taken as typed, in any currency', () => {
    const read = priced({
      currency: 'kr',
      dated: 'last March',
      copper_per_kg: 101.5,
      diesel_per_litre: 19,
      collector_per_tube: 300,
    });
    if (!read.ok) throw new Error(read.problems[0].path);
    expect(read.plant.prices).toMatchObject({
      currency: 'kr',
      dated: 'last March',
      copper_per_kg: 101.5,
      collector_per_tube: 300,
    });
    expect(read.plant.prices.fuel_per_litre.diesel).toBe(19);
  });

  it.each([
    [{ copper_per_kg: '20 $' }, 'prices.copper_per_kg'],
    [{ pex_per_m: -1 }, 'prices.pex_per_m'],
    [{ coper_per_kg: 1 }, 'prices'],
    [{ currency: 'shillings' }, 'prices.currency'],
  ])('are refused where they are no price: %j', (prices, path) => {
    const read = priced(prices);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.problems.map((problem) => problem.path).join()).toContain(path);
  });
});
