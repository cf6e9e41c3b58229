/** One coil in still water of one temperature, at a flow: what it gives and what it costs in pressure. */
import { Coil } from '../../parts/coil/coil.ts';
import type { CoilDescription, Fluid } from '../../parts/description.ts';
import { tubeMass } from '../../parts/filled-weight.ts';
import { Layout } from '../../parts/layout.ts';
import { liquid, lookUp, REFERENCE_HEAT_CAPACITY } from '../../parts/liquid.ts';
import { storeGeometry } from '../../parts/store/geometry.ts';

const WATER: Fluid = { kind: 'water', mass_share: 0 };
/** Sections the coil is marched in: with twice as many the outlet moves by less than 0.01 K (tested). */
const SECTIONS = 120;
/** Flows are by the bucket: water of about this temperature [C], as the taps count it. */
const BUCKET_C = 40;

export interface CoilCase extends CoilDescription {
  /** Through all its paths together. */
  flow_m3_s: number;
  tank_C: number;
  /** Of the liquid that enters. */
  cold_C: number;
  /** Water unless said. */
  fluid?: Fluid;
}

export interface SteadyCoil {
  outlet_C: number;
  /** Share of the way from the entering temperature to the tank's: the piece of an endless coil one gets. */
  effectiveness: number;
  UA_W_K: number;
  pressure_drop_kPa: number;
  velocity_m_s: number;
  /** Into the liquid; negative where the coil charges the tank. */
  heat_W: number;
  /** Liquid held: the first slug. */
  content_m3: number;
  /** Of the tube, empty. */
  mass_kg: number;
}

/**
 * A coil in steady flow through water of one temperature, by the same march as the simulation's.
 *
 * effectiveness = (outlet - cold)/(tank - cold); heat = m (h(outlet) - h(cold)); UA = -m cp ln(1 - effectiveness),
 * cp the mean between entering and leaving. Where the outlet is the tank's temperature to nine digits, UA is at
 * least what is given. Source: the definitions; range: 0-100 C, flows above none.
 *
 * @throws RangeError for a flow that is none, or a tank as warm as what enters
 */
export function coilOf(given: CoilCase): SteadyCoil {
  const { flow_m3_s, tank_C, cold_C, fluid = WATER } = given;
  if (!(flow_m3_s > 0)) {
    throw new RangeError(
      `flow - expected a flow above 0 m3/s - got ${flow_m3_s} - give the flow by the bucket`,
    );
  }
  if (!(Math.abs(tank_C - cold_C) > 1e-3)) {
    throw new RangeError(
      `tank - expected another temperature than what enters, ${cold_C} C - got ${tank_C} C - nothing would flow between them`,
    );
  }
  const depth = Math.max(given.top_m, given.bottom_m + given.tube.outside_diameter_m);
  const stack = storeGeometry({ kind: 'box', length_m: 1, width_m: 1, height_m: depth }, depth, SECTIONS);
  const layer_C = new Float64Array(SECTIONS).fill(tank_C);
  const inside = liquid(fluid);
  // Hung over the whole stack: in water of one temperature the heights do not matter, the sections do.
  const hung = { ...given, bottom_m: 0, top_m: depth };
  const layout = new Layout();
  const coil = new Coil(hung, inside, liquid(WATER), stack, layer_C, layout);
  coil.mode = 'steady';
  const flow_kg_s = flow_m3_s * lookUp(inside.density, BUCKET_C);
  const outlet_C = coil.flow(layout.initial(), flow_kg_s, cold_C, layer_C, null, null);
  const heat_W =
    flow_kg_s *
    REFERENCE_HEAT_CAPACITY *
    (lookUp(inside.enthalpy, outlet_C) - lookUp(inside.enthalpy, cold_C));
  const effectiveness = (outlet_C - cold_C) / (tank_C - cold_C);
  const capacity_W_K = outlet_C === cold_C ? 0 : heat_W / (outlet_C - cold_C);
  const mean_C = (cold_C + outlet_C) / 2;
  return {
    outlet_C,
    effectiveness,
    UA_W_K: -capacity_W_K * Math.log(Math.max(1e-9, 1 - effectiveness)),
    pressure_drop_kPa: coil.pressureLoss(flow_kg_s, mean_C) / 1000,
    velocity_m_s: coil.velocity(flow_kg_s, mean_C),
    heat_W,
    content_m3: coil.volume_m3,
    mass_kg: tubeMass(given),
  };
}
