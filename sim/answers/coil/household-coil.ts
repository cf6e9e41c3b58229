/** How one coil serves the household: at a store temperature, and how cold the store may be. */
import type { CoilDescription, Draw, PlantDescription } from '../../parts/description.ts';
import { coilOf, type SteadyCoil } from './coil-of.ts';
import { ShowerBench, type SteadyDraw } from './shower-bench.ts';

export interface Asked {
  /** Store of one temperature. */
  tank_C: number;
  shower: Draw;
  /** Flow through the coil for the coil's own figures; left out, what the pump gives the shower. */
  flow_m3_s?: number;
}

export interface HouseholdCoil {
  coil: CoilDescription;
  /** The coil alone, the shower's whole flow through it. */
  steady: SteadyCoil;
  cold_C: number;
  flow_m3_s: number;
  /** At the tap from the store asked about. */
  now: SteadyDraw;
  /** At the tap from the layers that the scenario starts with. */
  layered: SteadyDraw;
  /** With the whole flow through the coil, as from the coldest store that will do. */
  full: SteadyDraw;
  lowest_tank_C: number | null;
  boiling_C: number;
}

/** Share of the wanted flow below which a coil starves the tap. */
const ENOUGH_FLOW = 0.95;

/** Whether the pump gives the shower much less than it wants through this coil. */
export function starved({ full }: Pick<HouseholdCoil, 'full'>, { shower }: Pick<Asked, 'shower'>): boolean {
  return full.flow_m3_s < ENOUGH_FLOW * shower.flow_m3_s;
}

/** The household's coil, or `coil` in its place. */
export function householdCoil(
  plant: PlantDescription,
  coil: CoilDescription,
  asked: Asked,
  layers?: number,
): HouseholdCoil {
  const bench = new ShowerBench(plant, asked.shower, layers === undefined ? { coil } : { coil, layers });
  const lowest_tank_C = bench.lowestTank();
  const full = bench.atTank(lowest_tank_C ?? bench.boiling_C);
  const flow_m3_s = asked.flow_m3_s ?? full.flow_m3_s;
  const { cold_C, boiling_C } = bench;
  if (!(flow_m3_s > 0)) {
    throw new RangeError(
      'supply.pump - expected pressure enough to lift water to the outlet - got no flow at all - check "cut_out" and "lift"',
    );
  }
  return {
    coil,
    steady: coilOf({ ...coil, flow_m3_s, tank_C: asked.tank_C, cold_C }),
    cold_C,
    flow_m3_s,
    now: bench.atTank(asked.tank_C),
    layered: bench.at(plant.run.start),
    full,
    lowest_tank_C,
    boiling_C,
  };
}
