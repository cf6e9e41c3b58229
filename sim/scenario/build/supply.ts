/** The cold supply and the backup heater. */
import type { BackupDescription, ColdWater, SupplyDescription } from '../../parts/description.ts';
import type { Desk } from '../desk.ts';
import type { ScenarioValues } from '../fields/index.ts';
import { supply as field } from '../fields/supply.ts';
import { fuelNamed } from './fuel.ts';
import { surroundingsFrom } from './shared.ts';

export function supplyFrom(desk: Desk, read: ScenarioValues['supply']): SupplyDescription {
  const { open_flow, cut_out, power } = read.pump;
  return {
    cold: coldFrom(desk, read.cold),
    pump: { open_flow_m3_s: open_flow, cut_out_Pa: cut_out, power_W: power },
    lift_m: read.lift,
  };
}

/** Still air and radiation over a cistern's surface [m2 K/W]: common practice. */
const SURFACE_M2K_W = 0.12;

function coldFrom(desk: Desk, cold: ScenarioValues['supply']['cold']): ColdWater {
  if (cold.kind === 'fixed') return { kind: 'fixed', temperature_C: cold.temperature };
  if (cold.kind === 'by month') return { kind: 'by month', temperature_C: cold.temperature };
  const fields = field.fields.cold.cases.cistern;
  return {
    kind: 'cistern',
    volume_m3: cold.volume,
    start_C: cold.start,
    // A cube of that volume behind its insulation.
    conductance_W_K: (6 * Math.cbrt(cold.volume) ** 2) / (cold.insulation + SURFACE_M2K_W),
    surroundings: surroundingsFrom(cold.stands),
    refill_C: desk.complete({ fields }, ['supply', 'cold'], 'refill', cold.refill, () => ({
      value: cold.start,
    })),
  };
}

export function backupFrom(read: NonNullable<ScenarioValues['backup']>): BackupDescription {
  const { name, fuel, efficiency, max_heat, set } = read;
  return { name, fuel: fuelNamed(fuel), efficiency, max_heat_W: max_heat, set_C: set };
}
