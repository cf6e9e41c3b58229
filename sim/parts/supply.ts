/** Cold water: how cold it is, and how much of it a small demand pump can push through coil, pipes and head. */
import { findRoot } from '../numerics/root.ts';
import { demandPumpPressure, orificeFlow } from '../physics/heat-exchange.ts';
import { waterDensity } from '../physics/water.ts';
import type { Air } from './air.ts';
import type { Draw, SupplyDescription } from './description.ts';
import type { Layout } from './layout.ts';
import { liquid, lookUp, REFERENCE_HEAT_CAPACITY, temperatureOf } from './liquid.ts';

/** Latent heat of freezing [J/kg] (IAPWS, from memory) as kelvin of the reference heat capacity. */
const FREEZING_DROP = 333_550 / REFERENCE_HEAT_CAPACITY;
const ICE_HEAT_CAPACITY = 2100;
const GRAVITY = 9.80665;
/** A hand tap gives what is wanted while at least this pressure stands at it [Pa] (10 psi; common practice). */
const TAP_PRESSURE = 69_000;
/** Pressure at the taps is found to within this [Pa]. */
const CROSSING_PRESSURE = 200;
const DAYS_TO_MONTH = [31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

export class Supply {
  readonly description: SupplyDescription;
  readonly #air: Air;
  readonly #state: number | null;
  readonly #firstDay: number;
  readonly #water = liquid({ kind: 'water', mass_share: 0 });
  readonly #mass_kg: number;

  constructor(description: SupplyDescription, air: Air, firstDay: number, layout: Layout) {
    this.description = description;
    this.#air = air;
    this.#firstDay = firstDay;
    const { cold } = description;
    if (cold.kind === 'cistern') {
      this.#mass_kg = cold.volume_m3 * waterDensity(cold.start_C);
      this.#state = layout.claim('cistern', 'water', [lookUp(this.#water.enthalpy, cold.start_C)]);
    } else {
      this.#mass_kg = 0;
      this.#state = null;
    }
  }

  /** Temperature of the cold water [C] at a time of the run; freezing water in a cistern stays at 0. */
  cold_C(t: number, y: ArrayLike<number>): number {
    const { cold } = this.description;
    if (cold.kind === 'fixed') return cold.temperature_C;
    if (cold.kind === 'by month') {
      const day = (this.#firstDay + Math.floor(t / 86_400)) % 365;
      return cold.temperature_C[DAYS_TO_MONTH.findIndex((end) => day < end)];
    }
    return Math.max(0, this.#cistern_C(y[this.#state as number]));
  }

  #cistern_C(x: number): number {
    if (x >= 0) return temperatureOf(this.#water, x);
    if (x >= -FREEZING_DROP) return 0;
    return ((x + FREEZING_DROP) * REFERENCE_HEAT_CAPACITY) / ICE_HEAT_CAPACITY;
  }

  /** Share of a cistern that is ice. */
  ice(y: ArrayLike<number>): number {
    if (this.#state === null) return 0;
    return Math.min(1, Math.max(0, -y[this.#state] / FREEZING_DROP));
  }

  /** Cistern's rate of change; what is drawn is refilled. */
  rates(t: number, y: ArrayLike<number>, drawn_kg_s: number, out: number[]): void {
    const { cold } = this.description;
    if (cold.kind !== 'cistern' || this.#state === null) return;
    const x = y[this.#state];
    const gain = cold.conductance_W_K * (this.#air.around_C(cold.surroundings, t) - this.#cistern_C(x));
    const refill = lookUp(this.#water.enthalpy, cold.refill_C) - Math.max(0, x);
    out[this.#state] = (gain / REFERENCE_HEAT_CAPACITY + drawn_kg_s * refill) / this.#mass_kg;
  }

  /**
   * Where pump and pipes cross: pressure at the taps [Pa] and the share of each draw's wanted flow it gives.
   *
   * @param draws open now
   * @param loss pressure lost [Pa] between pump and taps at a total mixed flow [m3/s]
   */
  crossing(
    draws: readonly Draw[],
    loss: (flow_m3_s: number) => number,
  ): { pressure_Pa: number; flows_m3_s: number[] } {
    const { pump, lift_m } = this.description;
    const lift_Pa = GRAVITY * 1000 * lift_m;
    const flowsAt = (p: number) => draws.map((draw) => outletFlow(draw, p));
    const left = (flow: number) =>
      demandPumpPressure(flow, pump.open_flow_m3_s, pump.cut_out_Pa) - lift_Pa - loss(flow);
    // Mostly all get what they want, and what is left beside it is the pressure: nothing to search for.
    const most = left(draws.reduce((sum, draw) => sum + draw.flow_m3_s, 0));
    if (draws.every((draw) => most >= fullFlowPressure_Pa(draw)))
      return { pressure_Pa: most, flows_m3_s: draws.map((draw) => draw.flow_m3_s) };
    const surplus = (p: number) => left(flowsAt(p).reduce((sum, f) => sum + f, 0)) - p;
    if (surplus(0) <= 0) return { pressure_Pa: 0, flows_m3_s: draws.map(() => 0) };
    // The more pressure the taps stand at, the more they let through and the less is left: one crossing.
    const pressure_Pa = findRoot(surplus, {
      low: 0,
      // A cistern above the taps adds its own pressure.
      high: pump.cut_out_Pa + Math.max(0, -lift_Pa),
      tolerance: CROSSING_PRESSURE,
      name: 'pressure at the taps',
      unit: 'Pa',
    });
    return { pressure_Pa, flows_m3_s: flowsAt(pressure_Pa) };
  }
}

/** Pressure from which an open outlet gives all that is wanted [Pa]. */
function fullFlowPressure_Pa({ outlet }: Draw): number {
  return outlet.kind === 'head' ? outlet.rated_Pa : TAP_PRESSURE;
}

/** Flow of one open outlet [m3/s] at a pressure [Pa]: an orifice, throttled to what is wanted. */
function outletFlow(draw: Draw, pressure_Pa: number): number {
  return Math.min(draw.flow_m3_s, orificeFlow(pressure_Pa, draw.flow_m3_s, fullFlowPressure_Pa(draw)));
}
