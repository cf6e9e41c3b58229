/** Pressure of liquid that is shut in a tube and warmed: it must swell, and has no room. */
import type { Fluid } from './fluid.ts';
import { fluidProperties } from './fluid.ts';
import { waterCompressibility, waterExpansion } from './water.ts';

/** What a tube's wall does under pressure. Plastics are left out: they stretch, creep and soften. */
interface TubeMetal {
  /** Linear expansion [1/K] and modulus of elasticity [Pa]. */
  expansion_1_K: number;
  elastic_Pa: number;
  poisson: number;
  /** Tension that tears it, and that codes allow at 200 F [Pa]; annealed, as tube sold in rolls is. */
  ultimate_Pa: number;
  allowed_Pa: number;
}

const PA_PER_PSI = 6894.757;
/** Where no code value is at hand: tubing makers rate a sixth of what bursts it (common practice). */
const RATED_SHARE = 1 / 6;

/**
 * Metals by the tube tables' names. Copper: 32,000 psi ultimate (a tube maker's data), 4,900 psi allowed at 200 F
 * (ASME B31 as tabulated by the copper trade); brass 47,000 psi (the same maker); others, moduli and expansion are
 * handbook values from memory.
 */
const METALS: Record<string, TubeMetal> = {
  copper: metal(16.5e-6, 117e9, 0.34, 32_000 * PA_PER_PSI, 4900 * PA_PER_PSI),
  brass: metal(19e-6, 103e9, 0.34, 47_000 * PA_PER_PSI),
  'stainless steel': metal(16e-6, 193e9, 0.29, 515e6),
  steel: metal(12e-6, 200e9, 0.29, 330e6),
  aluminium: metal(23e-6, 69e9, 0.33, 97e6),
};

function metal(
  expansion_1_K: number,
  elastic_Pa: number,
  poisson: number,
  ultimate_Pa: number,
  allowed_Pa = RATED_SHARE * ultimate_Pa,
): TubeMetal {
  return { expansion_1_K, elastic_Pa, poisson, ultimate_Pa, allowed_Pa };
}

export interface ShutTube {
  material: string;
  outside_diameter_m: number;
  inside_diameter_m: number;
}

/** Walls may be a tenth thinner than their standard says (B88's tolerance). */
const THINNEST = 0.9;

/**
 * Pressure a tube is rated for at 200 F, and that which would burst it [Pa]; null for plastics.
 *
 * Rated: 2 S t / (D - 0.8 t), ASME B31, with the thinnest wall of the tolerance; within 4 % of the copper trade's table
 * (tests). Burst: Barlow's 2 S t / D with the ultimate strength.
 * Source: ASME B31 as the copper trade quotes it; Barlow's formula (textbook).
 */
export function tubeRating(tube: ShutTube): { rated_Pa: number; burst_Pa: number } | null {
  const strength = metalOf(tube);
  if (!strength) return null;
  const outside_m = tube.outside_diameter_m;
  const wall_m = (THINNEST * (outside_m - tube.inside_diameter_m)) / 2;
  return {
    rated_Pa: (2 * strength.allowed_Pa * wall_m) / (outside_m - 0.8 * wall_m),
    burst_Pa: (2 * strength.ultimate_Pa * wall_m) / outside_m,
  };
}

/**
 * Rise of pressure per kelvin in a tube shut at both ends and full of liquid at t_C [Pa/K]; null for plastics.
 *
 * dp/dT = (beta - 3 alpha) / (kappa + D / (E t) (5/4 - nu)): the liquid's swelling less the tube's, over the liquid's
 * compressibility and the give of a thin tube with closed ends. Glycol takes its own expansion and water's
 * compressibility, which is some per cent too large for it. Elastic: soft copper yields well below its burst pressure,
 * swells and lets the pressure rise more slowly; joints, valves and pumps fail first.
 * Source: balance of volumes (textbook; the same form in public engineering notes on blocked-in lines).
 */
export function pressurePerKelvin(tube: ShutTube, fluid: Fluid, t_C: number): number | null {
  const strength = metalOf(tube);
  if (!strength) return null;
  const { expansion_1_K, elastic_Pa, poisson } = strength;
  const wall_m = (tube.outside_diameter_m - tube.inside_diameter_m) / 2;
  const give_1_Pa = ((tube.inside_diameter_m + wall_m) / (elastic_Pa * wall_m)) * (1.25 - poisson);
  return (expansionOf(fluid, t_C) - 3 * expansion_1_K) / (waterCompressibility(t_C) + give_1_Pa);
}

/** Warming is summed up in steps of this [K]. */
const STEP_K = 0.25;
const MOST_K = 150;

/**
 * Warming from from_C at which the pressure has risen by rise_Pa [K]; null for plastics, or where 150 K are not enough.
 *
 * `pressurePerKelvin` summed up; water below 4 C shrinks first and then has room. Source: as there.
 */
export function warmingTo(tube: ShutTube, fluid: Fluid, from_C: number, rise_Pa: number): number | null {
  let pressure_Pa = 0;
  for (let warmed_K = 0; warmed_K < MOST_K; warmed_K += STEP_K) {
    const step_Pa = pressurePerKelvin(tube, fluid, from_C + warmed_K + STEP_K / 2);
    if (step_Pa === null) return null;
    const next_Pa = pressure_Pa + step_Pa * STEP_K;
    if (next_Pa >= rise_Pa) return warmed_K + (STEP_K * (rise_Pa - pressure_Pa)) / (next_Pa - pressure_Pa);
    // Below 4 C water shrinks as it warms: it has room then, not suction.
    pressure_Pa = Math.max(0, next_Pa);
  }
  return null;
}

function metalOf({ material }: ShutTube): TubeMetal | null {
  return Object.hasOwn(METALS, material) ? METALS[material] : null;
}

/** Volumetric expansion of a liquid [1/K]; a glycol's from its density half a kelvin on either side. */
function expansionOf(fluid: Fluid, t_C: number): number {
  if (fluid.kind === 'water' || fluid.mass_share === 0) return waterExpansion(t_C);
  const [below, above] = [-0.5, 0.5].map((off) => fluidProperties(fluid, t_C + off).density_kg_m3);
  return Math.log(below / above);
}
