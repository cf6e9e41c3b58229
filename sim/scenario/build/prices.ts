/** Prices as the plant's description has them. */
import type { Prices } from '../../parts/description.ts';
import type { ScenarioValues } from '../fields/index.ts';

export function pricesFrom(read: ScenarioValues['prices']): Prices {
  const { diesel_per_litre, gasoline_per_litre, propane_per_litre, ...others } = read;
  return {
    ...others,
    fuel_per_litre: { diesel: diesel_per_litre, gasoline: gasoline_per_litre, propane: propane_per_litre },
  };
}
