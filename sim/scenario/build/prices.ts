/** Prices as the plant's description has them, all in one currency. */
import type { Prices } from '../../parts/description.ts';
import { readPrice } from '../../quantity/index.ts';
import type { Desk } from '../desk.ts';
import type { ScenarioValues } from '../fields/index.ts';
import { prices } from '../fields/prices.ts';
import { valueAt } from '../value-at.ts';

export function pricesFrom(read: ScenarioValues['prices']): Prices {
  const { diesel_per_litre, gasoline_per_litre, propane_per_litre, ...others } = read;
  return {
    ...others,
    fuel_per_litre: { diesel: diesel_per_litre, gasoline: gasoline_per_litre, propane: propane_per_litre },
  };
}

/** Refuses a price with the sign of another currency than the file's: nothing here knows what it would come to. */
export function checkCurrency(desk: Desk, json: unknown, { currency }: ScenarioValues['prices']): void {
  for (const [key, field] of Object.entries(prices.fields)) {
    const text = valueAt(json, ['prices', key]);
    if (field.kind !== 'number' || !('per' in field) || typeof text !== 'string') continue;
    const read = readPrice(text, field.per);
    if (!read.ok || read.sign === null || read.sign === currency) continue;
    desk.problem(
      ['prices', key],
      `a price in ${currency}, the currency of the file`,
      `"${text}"`,
      'leave out its sign, or write it in that currency',
    );
  }
}
