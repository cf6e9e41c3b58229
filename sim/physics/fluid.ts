/** One door to the liquids of the coils and loops. */
import {
  type Glycol,
  glycolBoilingPoint,
  glycolConductivity,
  glycolDensity,
  glycolFreezingPoint,
  glycolHeatCapacity,
  glycolViscosity,
} from './glycol.ts';
import {
  waterBoilingPoint,
  waterConductivity,
  waterDensity,
  waterHeatCapacity,
  waterViscosity,
} from './water.ts';

/** A liquid in a coil or loop: glycol by mass share, 0 for plain water. */
export interface Fluid {
  kind: 'water' | Glycol;
  mass_share: number;
}

export interface FluidProperties {
  density_kg_m3: number;
  heat_capacity_J_kgK: number;
  conductivity_W_mK: number;
  viscosity_Pa_s: number;
  prandtl: number;
}

/** Largest glycol share the property fits cover. */
const LARGEST_SHARE = 0.6;

/** The glycol of a fluid, or null where it is plain water. */
function glycolOf(fluid: Fluid): Glycol | null {
  if (!(fluid.mass_share >= 0 && fluid.mass_share <= LARGEST_SHARE)) {
    throw new RangeError(
      `fluid.mass_share - expected 0 to ${LARGEST_SHARE} - got ${fluid.mass_share} - thin the mixture: more glycol carries less heat`,
    );
  }
  return fluid.kind === 'water' || fluid.mass_share === 0 ? null : fluid.kind;
}

/**
 * Properties of a liquid at t_C [C], named and in SI.
 *
 * Water -20..145 C, glycol freezing point..130 C; sane outside (see water.ts, glycol.ts). Source: those files.
 * @throws RangeError for a share outside 0..0.6
 */
export function fluidProperties(fluid: Fluid, t_C: number): FluidProperties {
  const glycol = glycolOf(fluid);
  const w = fluid.mass_share;
  const density_kg_m3 = glycol ? glycolDensity(glycol, w, t_C) : waterDensity(t_C);
  const heat_capacity_J_kgK = glycol ? glycolHeatCapacity(glycol, w, t_C) : waterHeatCapacity(t_C);
  const conductivity_W_mK = glycol ? glycolConductivity(glycol, w, t_C) : waterConductivity(t_C);
  const viscosity_Pa_s = glycol ? glycolViscosity(glycol, w, t_C) : waterViscosity(t_C);
  return {
    density_kg_m3,
    heat_capacity_J_kgK,
    conductivity_W_mK,
    viscosity_Pa_s,
    prandtl: (heat_capacity_J_kgK * viscosity_Pa_s) / conductivity_W_mK,
  };
}

/**
 * Temperature [C] at which the first crystals form; 0 for water. Source: glycol.ts.
 */
export function fluidFreezingPoint(fluid: Fluid): number {
  const glycol = glycolOf(fluid);
  return glycol ? glycolFreezingPoint(glycol, fluid.mass_share) : 0;
}

/**
 * Boiling point [C] under p_Pa [Pa]. Source: water.ts, glycol.ts.
 */
export function fluidBoilingPoint(fluid: Fluid, p_Pa: number): number {
  const glycol = glycolOf(fluid);
  return glycol ? glycolBoilingPoint(glycol, fluid.mass_share, p_Pa) : waterBoilingPoint(p_Pa);
}
