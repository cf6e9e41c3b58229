/** What to mind beside the coil's answer, and what cannot be asked at all. */
import type { CoilDescription, PlantDescription } from '../../parts/description.ts';
import { tubeRating } from '../../physics/trapped.ts';
import { formatBoth } from '../../quantity/index.ts';
import { LEAST_PRESSURE, NEAR_BOILING_K, PEX_C, TUBE_SPEED } from '../../run/limits.ts';
import { SCALD_FROM } from '../../run/tally.ts';
import type { FilledDefault } from '../../scenario/index.ts';
import type { AnswerCaution } from '../answer.ts';
import { householdOf } from '../household.ts';
import { minds } from '../minds.ts';
import { refusal } from '../refusal.ts';
import { namesake } from './candidates.ts';
import { type Asked, type HouseholdCoil, starved } from './household-coil.ts';

/** A mixing valve that nobody said is there. */
const VALVE = 'taps.mixing_valve';
const GRAVITY_Pa_m = 9806.65;

/** What a store so hot is too hot for, if anything: its coil's tube, or staying clear of boiling. */
export function tooHotFor(
  { tube }: Pick<CoilDescription, 'tube'>,
  tank_C: number | null,
  boiling_C: number,
): 'tube' | 'boiling' | null {
  if (tank_C === null) return null;
  if (tube.material === 'PEX' && tank_C > PEX_C) return 'tube';
  return tank_C > boiling_C - NEAR_BOILING_K ? 'boiling' : null;
}

/** Hottest store that the answer speaks of [C]: the one asked about, or the coldest that will do. */
export function hottestStore({ lowest_tank_C }: HouseholdCoil, { tank_C }: Asked): number {
  return Math.max(tank_C, lowest_tank_C ?? tank_C);
}

/** Hottest water that leaves the coil for the valve [C]. */
export function hottestOutlet({ steady, now, layered }: HouseholdCoil): number {
  return Math.max(steady.outlet_C, now.coil_outlet_C, layered.coil_outlet_C);
}

/** All the pump can give at the taps' height, with nothing flowing [Pa]. */
export function mostPressure({ supply: { pump, lift_m } }: PlantDescription): number {
  return pump.cut_out_Pa - GRAVITY_Pa_m * lift_m;
}

export function coilCautions(
  plant: PlantDescription,
  own: HouseholdCoil,
  asked: Asked,
  filled: readonly FilledDefault[],
): AnswerCaution[] {
  const valve_C = householdOf(plant).taps.mixing_valve_C;
  const { full, steady, coil } = own;
  const hottest_C = hottestStore(own, asked);
  const scalds = hottestOutlet(own) > SCALD_FROM;
  const beyond = steady.pressure_drop_kPa * 1000 > mostPressure(plant);
  const invented = filled.some(({ path }) => path.startsWith(VALVE));
  return minds([
    ['namesake', namesake(coil.tube) !== null],
    ['no_store_hot_enough', own.lowest_tank_C === null],
    ['valve_below_wanted', valve_C !== null && valve_C < asked.shower.wanted_C],
    ['flow_beyond_pump', beyond],
    ['pump_at_limit', !beyond && starved(own, asked)],
    ['tap_pressure_low', full.pressure_Pa < LEAST_PRESSURE],
    ['tube_speed', steady.velocity_m_s > TUBE_SPEED],
    ['plastic_tube', tooHotFor(coil, hottest_C, own.boiling_C) === 'tube'],
    ['boil_over', hottest_C > own.boiling_C - NEAR_BOILING_K],
    ['scald_no_valve', valve_C === null],
    ['scald', valve_C !== null && scalds],
    ['valve_assumed', valve_C !== null && scalds && invented],
    ['trapped_coil', true],
  ]);
}

/** Water leaves a store of water at its boiling point a little below or above it, as pressure goes [K]. */
const BOILING_K = 0.5;

/** @throws RangeError for a store that was asked about and is past boiling */
export function refuseBoiling(tank_C: number, boiling_C: number): void {
  if (tank_C < boiling_C + BOILING_K) return;
  throw refusal(
    'tank',
    `a store no hotter than boiling water, ${formatBoth(boiling_C, 'temperature')} at this height`,
    formatBoth(tank_C, 'temperature'),
    'ask about a cooler store',
  );
}

/**
 * Refuses a store or a flow that was asked about and cannot be.
 *
 * @throws RangeError for a store no warmer than the cold water or past boiling, or a flow that tears the tube
 */
export function refuseImpossible(
  { tank_C, flow_m3_s }: { tank_C?: number; flow_m3_s?: number },
  { coil, steady, cold_C, boiling_C }: HouseholdCoil,
): void {
  if (tank_C !== undefined) {
    refuseBoiling(tank_C, boiling_C);
    if (!(tank_C > cold_C)) {
      throw refusal(
        'tank',
        `a store warmer than the cold water of ${formatBoth(cold_C, 'temperature')}`,
        formatBoth(tank_C, 'temperature'),
        'ask about a store that can heat the water',
      );
    }
  }
  const { burst_Pa = Number.POSITIVE_INFINITY } = tubeRating(coil.tube) ?? {};
  const drop_Pa = steady.pressure_drop_kPa * 1000;
  if (flow_m3_s !== undefined && drop_Pa > burst_Pa) {
    throw refusal(
      'flow',
      `a flow that this coil stands: its tube tears at about ${formatBoth(burst_Pa, 'pressure')}`,
      `${formatBoth(flow_m3_s, 'flow')}, which takes ${formatBoth(drop_Pa, 'pressure')}`,
      'ask about less flow, wider tube, or rolls in parallel',
    );
  }
}
