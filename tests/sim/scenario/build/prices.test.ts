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

  // A US gallon holds 3.785411784 L, a pound 0.45359237 kg, a foot is 0.3048 m.
  it.each([
    ['diesel_per_litre', '4.50 per gal', 4.5 / 3.785411784],
    ['diesel_per_litre', '$4.50/gal', 4.5 / 3.785411784],
    ['diesel_per_litre', '4.50 a gallon', 4.5 / 3.785411784],
    ['diesel_per_litre', '1.2 per L', 1.2],
    ['diesel_per_litre', 1.2, 1.2],
    ['copper_per_kg', '$9 a pound', 9 / 0.45359237],
    ['pex_per_m', '$3/ft', 3 / 0.3048],
    ['foam_per_m2_25mm', '1.50 per square foot', 1.5 / 0.3048 ** 2],
  ])('are for what they say they are for: %s %j', (key, written, value) => {
    const read = priced({ [key]: written });
    if (!read.ok) throw new Error(read.problems[0].got);
    const { fuel_per_litre, ...others } = read.plant.prices;
    const taken = { ...others, diesel_per_litre: fuel_per_litre.diesel }[key as 'copper_per_kg'];
    expect(taken).toBeCloseTo(value, 9);
  });

  it('may be marked as unsure with ends that say what they are for', () => {
    const read = readScenario({
      ...least,
      prices: { diesel_per_litre: '4/gal' },
      doubts: [{ input: 'prices.diesel_per_litre', unsure: 'between', from: '3/gal', to: '1.5/L' }],
    });
    if (!read.ok) throw new Error(read.problems[0].got);
    expect(read.marks).toEqual([{ path: 'prices.diesel_per_litre', band: ['3/gal', '1.5/L'] }]);
    expect(read.notes).toEqual([]);
  });

  it('in another currency than the file’s are refused', () => {
    const read = priced({ currency: '€', diesel_per_litre: '$4.50/gal' });
    expect(read).toMatchObject({
      ok: false,
      problems: [{ path: 'prices.diesel_per_litre', expected: 'a price in €, the currency of the file' }],
    });
    expect(priced({ currency: '€', diesel_per_litre: '€1.50/L' }).ok).toBe(true);
  });

  it.each([
    [{ copper_per_kg: '20 $' }, 'prices.copper_per_kg'],
    [{ diesel_per_litre: '4.50' }, 'prices.diesel_per_litre'],
    [{ diesel_per_litre: '4.50/lb' }, 'prices.diesel_per_litre'],
    [{ mixing_valve_each: '90/ft' }, 'prices.mixing_valve_each'],
    [{ pex_per_m: -1 }, 'prices.pex_per_m'],
    [{ coper_per_kg: 1 }, 'prices'],
    [{ currency: 'shillings' }, 'prices.currency'],
  ])('are refused where they are no price: %j', (prices, path) => {
    const read = priced(prices);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.problems.map((problem) => problem.path).join()).toContain(path);
  });
});
