/** What heat costs: fuel by its volume, and a kilowatt-hour from a heater. */
import type { BackupDescription, Fuel, Prices } from '../parts/description.ts';
import { FUELS } from '../physics/combustion.ts';

const J_PER_KWH = 3.6e6;

/** The field catalogue's own heater, where the household has none: vented, on propane. */
const USUAL_BACKUP = { fuel: FUELS.propane, efficiency: 0.8 };

/** Price of a cubic metre of a fuel. */
export function fuelPrice_m3(prices: Prices, fuel: Pick<Fuel, 'name'>): number {
  return 1000 * prices.fuel_per_litre[fuel.name as keyof Prices['fuel_per_litre']];
}

/** Price of a kilowatt-hour of heat in the water from the backup heater, or from a usual one. */
export function backupPrice_kWh(prices: Prices, backup: BackupDescription | null): number {
  const { fuel, efficiency } = backup ?? USUAL_BACKUP;
  const heat_J_m3 = fuel.lower_heating_value_J_kg * fuel.density_kg_m3 * efficiency;
  return (fuelPrice_m3(prices, fuel) / heat_J_m3) * J_PER_KWH;
}

export function perKWh(money: number, heat_J: number): number | null {
  return heat_J > 0 ? (money / heat_J) * J_PER_KWH : null;
}
