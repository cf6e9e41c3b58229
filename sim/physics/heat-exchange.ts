/** Exchangers, mixing valve, shower head, pump and inlet: small algebra, no state. */
import { power } from '../numerics/alike.ts';

/**
 * Effectiveness [-] of a tube in water of one temperature: 1 - exp(-NTU), NTU = UA / (m cp).
 *
 * Source: Kays & London, Cr = 0; checks.json ntu.bath.
 */
export function bathEffectiveness(ntu: number): number {
  return -Math.expm1(-ntu);
}

/**
 * Effectiveness [-] of a counterflow exchanger: (1 - e) / (1 - cr e), e = exp(-NTU (1 - cr)); NTU / (1 + NTU) at cr = 1.
 *
 * cr is the smaller over the larger capacity flow, 0..1. Source: Kays & London; checks.json hx.counter.
 */
export function counterflowEffectiveness(ntu: number, cr: number): number {
  if (cr > 1 - 1e-9) return ntu / (1 + ntu);
  const e = Math.exp(-ntu * (1 - cr));
  return (1 - e) / (1 - cr * e);
}

/**
 * Effectiveness [-] of a crossflow exchanger, neither side mixed (fins on a coolant radiator or exhaust):
 * 1 - exp(NTU^0.22 (exp(-cr NTU^0.78) - 1) / cr), 0 < cr <= 1.
 *
 * Source: Incropera & DeWitt eq. 11.33 (from memory); checks.json ex.incropera11.3.
 */
export function crossflowEffectiveness(ntu: number, cr: number): number {
  return -Math.expm1((power(ntu, 0.22) * Math.expm1(-cr * power(ntu, 0.78))) / cr);
}

/**
 * Share [0..1] of hot water in a mix at wanted_C [C] from hot_C and cold_C [C]: (Tm - Tc) / (Th - Tc).
 *
 * All hot where the hot is not hot enough, none where the cold is already warm enough. Equal heat capacities (within
 * 0.5 %). Source: energy balance; checks.json mix.
 */
export function hotShare(hot_C: number, cold_C: number, wanted_C: number): number {
  if (wanted_C <= cold_C) return 0;
  if (hot_C <= wanted_C) return 1;
  return (wanted_C - cold_C) / (hot_C - cold_C);
}

/**
 * Flow [same unit as rated] of a fixed orifice (a shower head) at pressure_Pa [Pa]: rated sqrt(p / p_rated); 0 below 0.
 *
 * Many heads hold their flow instead; this is the low-pressure case. Source: Bernoulli; checks.json shower.
 */
export function orificeFlow(pressure_Pa: number, rated: number, ratedPressure_Pa: number): number {
  return pressure_Pa > 0 ? rated * Math.sqrt(pressure_Pa / ratedPressure_Pa) : 0;
}

/** Share of its open flow that a small diaphragm pump still gives just below its cut-out pressure. */
const FLOW_LEFT_AT_CUT_OUT = 0.525;

/**
 * Pressure [Pa] a small demand pump holds at a flow [m3/s].
 *
 * A diaphragm pump gives up flow in a straight line, from its open flow at no pressure to about half of it at cut-out,
 * where its switch stops it. For less than that half it cycles, and an accumulator holds the pressure near cut-out.
 * None above the open flow. Flow follows the voltage in proportion: pass the open flow at the voltage at the pump.
 * Source: Q = Q0 (1 - 0.0095 p[psi]) and a cut-out of 45-55 psi, data sheets from memory +-15 %, shared/physics.md 5.
 */
export function demandPumpPressure(flow_m3_s: number, openFlow_m3_s: number, cutOut_Pa: number): number {
  const share = flow_m3_s / openFlow_m3_s;
  if (share <= FLOW_LEFT_AT_CUT_OUT) return cutOut_Pa;
  return (cutOut_Pa * Math.max(0, 1 - share)) / (1 - FLOW_LEFT_AT_CUT_OUT);
}

/**
 * Densimetric Froude number [-] of water entering a store: v / sqrt(g |d rho| / rho h), opening height_m [m].
 *
 * The layers stay if it is below 1, stir above 2; the Richardson number is its inverse square.
 * Source: Wildin & Truman 1989 (from memory), shared/physics.md 6.
 */
export function inletFroude(
  velocity_m_s: number,
  densityDifference_kg_m3: number,
  density_kg_m3: number,
  height_m: number,
): number {
  return velocity_m_s / Math.sqrt((9.80665 * Math.abs(densityDifference_kg_m3) * height_m) / density_kg_m3);
}
