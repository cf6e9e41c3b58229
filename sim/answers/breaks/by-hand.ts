/** Failures that are no matter of a run: what physics says in closed form of a plant's own tubes, pipes and liquids. */
import type { PlantDescription } from '../../parts/description.ts';
import { fluidFreezingPoint } from '../../physics/fluid.ts';
import { type StillPipe, timeToIce, timeToSolid } from '../../physics/freezing.ts';
import { pressurePerKelvin, tubeRating, warmingTo } from '../../physics/trapped.ts';
import type { Facts } from '../band.ts';
import { NIGHT_C, shutCoils } from './failures.ts';

/** A coil shut at both ends while the store around it is hot. */
export interface TrappedCoil {
  coil: string;
  household: boolean;
  /** As the valves are shut: cold water of the household, or a loop that stands as warm as the store. */
  from_C: number;
  per_K_Pa: number;
  rated_Pa: number;
  burst_Pa: number;
  /** Warming that reaches them, if the tube does not give; null where 150 K are not enough. */
  rated_K: number | null;
  burst_K: number | null;
}

/** Loops are shut as warm as this, while they heat [C]; what matters is how little more it takes. */
const LOOP_C = 60;

/** Cold water where the supply does not say it for every day [C]: as it starts, or January's. */
export function coldOf({ supply: { cold } }: PlantDescription): number {
  if (cold.kind === 'fixed') return cold.temperature_C;
  return cold.kind === 'cistern' ? cold.start_C : cold.temperature_C[0];
}

/** Every coil that can be shut off, the household's first. @param cold_C of the household's water */
export function trappedCoils(plant: PlantDescription, cold_C: number): TrappedCoil[] {
  return shutCoils(plant).flatMap(({ coil, fluid, household }) => {
    const from_C = household ? cold_C : LOOP_C;
    const rating = tubeRating(coil.tube);
    const per_K_Pa = pressurePerKelvin(coil.tube, fluid, LOOP_C);
    if (!rating || per_K_Pa === null) return [];
    const { rated_Pa, burst_Pa } = rating;
    const [rated_K, burst_K] = [rated_Pa, burst_Pa].map((Pa) => warmingTo(coil.tube, fluid, from_C, Pa));
    return [{ coil: coil.name, household, from_C, per_K_Pa, rated_Pa, burst_Pa, rated_K, burst_K }];
  });
}

/** Still water in the pipe to the taps, were it in the air of the cold night; and where a loop's liquid freezes. */
export function freezingFacts({ taps, collector }: PlantDescription, cold_C: number): Facts {
  const pipe: StillPipe | null = taps && {
    inside_diameter_m: taps.pipe.tube.inside_diameter_m,
    conductance_W_mK: taps.pipe.conductance_W_mK,
  };
  const loop = collector?.loop === 'filled' ? collector.fluid : null;
  return {
    pipe_ice_s: pipe && timeToIce(pipe, cold_C, NIGHT_C),
    pipe_solid_s: pipe && timeToIce(pipe, cold_C, NIGHT_C) + timeToSolid(pipe, NIGHT_C),
    night_freezes_C: loop && fluidFreezingPoint(loop),
    weak_freezes_C: loop && fluidFreezingPoint({ ...loop, mass_share: loop.mass_share / 2 }),
  };
}
