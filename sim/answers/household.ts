/** What the answers take of a household: its coil and the shower they ask about. */
import type { CoilDescription, Draw, PlantDescription, TapsDescription } from '../parts/description.ts';

/** @throws RangeError without a household */
export function householdOf(plant: PlantDescription): {
  taps: TapsDescription;
  coil: CoilDescription;
  index: number;
} {
  const { taps } = plant;
  if (!taps) {
    throw new RangeError(
      'taps - expected a household that draws water - got none - add "taps" to the scenario',
    );
  }
  const index = plant.coils.findIndex((coil) => coil.name === taps.coil);
  return { taps, coil: plant.coils[index], index };
}

/** The field catalogue's own shower, for a household that names none: 8 min of 1.75 gpm at 105 F, 20 psi. */
const USUAL_SHOWER: Draw = {
  name: 'shower',
  days: [0, 1, 2, 3, 4, 5, 6],
  at_s: 7 * 3600,
  duration_s: 480,
  flow_m3_s: (1.75 * 3.785411784e-3) / 60,
  wanted_C: (105 - 32) / 1.8,
  outlet: { kind: 'head', rated_Pa: 20 * 6894.757 },
  shower: true,
};

/** The shower the answers ask about: the household's first of the day, or the usual one where it names none. */
export function showerOf({ draws }: TapsDescription): Draw {
  return draws.find((draw) => draw.shower) ?? USUAL_SHOWER;
}

/** A usual store, where the scenario starts with one that has not been heated yet [C]. */
const USUAL_TANK_C = 60;
/** A store no further than this from the cold water has not been heated [K]. */
const UNHEATED_K = 5;

/** Store of one temperature that answers ask about unless told: the mean the scenario starts with, once heated [C]. */
export function usualTank({ run }: PlantDescription, cold_C: number): number {
  const mean_C = (run.start.bottom_C + run.start.top_C) / 2;
  return mean_C > cold_C + UNHEATED_K ? mean_C : USUAL_TANK_C;
}
