/**
 * The household's own coil, pump, pipe and valve on the bench: one draw in steady flow from a store held at a
 * profile. Built of the simulation's parts and evaluated by its right-hand side, so it cannot differ from a run.
 */
import { findRoot } from '../../numerics/root.ts';
import type { CoilDescription, Draw, PlantDescription } from '../../parts/description.ts';
import { lookUp } from '../../parts/liquid.ts';
import type { Taps } from '../../parts/taps.ts';
import { Plant } from '../../plant/plant.ts';

export interface Held {
  bottom_C: number;
  top_C: number;
}

/** What a draw gets, steadily. */
export interface SteadyDraw {
  /** At the tap, mixed to what is wanted where that can be. */
  outlet_C: number;
  /** At the end of the hot pipe, before the hand mixes it. */
  hot_line_C: number;
  coil_outlet_C: number;
  cold_C: number;
  /** At the tap, and of it what went through the coil. */
  flow_m3_s: number;
  coil_flow_m3_s: number;
  /** Left at the tap. */
  pressure_Pa: number;
  coil_loss_Pa: number;
  speed_m_s: number;
}

/** Tank temperatures are found to within this [K]. */
const CLOSE_K = 0.02;
/** Layers of the held store. */
const BENCH_LAYERS = 40;

export class ShowerBench {
  readonly draw: Draw;
  readonly boiling_C: number;
  readonly cold_C: number;
  readonly #plant: Plant;
  readonly #taps: Taps;
  readonly #y: number[];
  readonly #rates: number[];
  readonly #open;

  /**
   * @param coil takes the place of the household's coil, if given
   * @throws RangeError without a household
   */
  constructor(
    description: PlantDescription,
    draw: Draw,
    { coil, layers = BENCH_LAYERS }: { coil?: CoilDescription; layers?: number } = {},
  ) {
    const { taps } = description;
    if (!taps) {
      throw new RangeError(
        'taps - expected a household that draws water - got none - add "taps" to the scenario',
      );
    }
    this.draw = draw;
    this.#plant = new Plant({
      ...description,
      coils: coil ? description.coils.map((own) => (own.name === taps.coil ? coil : own)) : description.coils,
      engine: null,
      collector: null,
      backup: null,
      taps: { ...taps, draws: [draw] },
      run: { ...description.run, days: 1, layers },
    });
    this.#taps = this.#plant.taps as Taps;
    this.#y = this.#plant.layout.initial();
    this.#rates = this.#y.slice();
    this.#open = [{ draw, from_s: 0, to_s: draw.duration_s }];
    this.boiling_C = this.#plant.store.boiling_C;
    this.cold_C = this.#plant.supply.cold_C(0, this.#y);
    this.#change();
    // Both fronts have long passed.
    this.#taps.coil.mode = 'steady';
    this.#taps.plug = false;
  }

  #change(): void {
    const { taps, air } = this.#plant;
    const room = air.around_C(this.#taps.description.pipe.surroundings, 0);
    this.#plant.store.prepare(this.#y);
    taps?.change(0, this.#y, this.#open, { room });
  }

  /** The draw from a store held at a profile, linear between bottom and top. */
  at({ bottom_C, top_C }: Held): SteadyDraw {
    const { store, supply } = this.#plant;
    for (let i = 0; i < store.layers; i++) {
      const t = bottom_C + ((top_C - bottom_C) * (i + 0.5)) / store.layers;
      this.#y[store.first + i] = lookUp(store.water.enthalpy, t);
    }
    this.#change();
    this.#plant.rates(0, this.#y, this.#rates);
    const taps = this.#taps;
    const { coil } = taps;
    const flowing = taps.drawing;
    const mean_C = (this.cold_C + taps.coil_outlet_C) / 2;
    const density = lookUp(store.water.density, 40);
    return {
      outlet_C: flowing ? taps.outlet_C : this.cold_C,
      hot_line_C: flowing ? taps.hot_line_C : this.cold_C,
      coil_outlet_C: flowing ? taps.coil_outlet_C : this.cold_C,
      cold_C: supply.cold_C(0, this.#y),
      flow_m3_s: flowing ? taps.mixed_kg_s / density : 0,
      coil_flow_m3_s: flowing ? taps.coil_kg_s / density : 0,
      pressure_Pa: flowing ? taps.pressure_Pa : 0,
      coil_loss_Pa: flowing && taps.coil_kg_s > 0 ? coil.pressureLoss(taps.coil_kg_s, mean_C) : 0,
      speed_m_s: flowing ? coil.velocity(taps.coil_kg_s, mean_C) : 0,
    };
  }

  /** The draw from a store of one temperature. */
  atTank(tank_C: number): SteadyDraw {
    return this.at({ bottom_C: tank_C, top_C: tank_C });
  }

  /**
   * Coldest store of one temperature from which the draw is as warm as wanted [C]; null where even a boiling
   * one is not enough, or nothing flows.
   */
  lowestTank(): number | null {
    const short = (tank_C: number) => {
      const { hot_line_C, flow_m3_s } = this.atTank(tank_C);
      return flow_m3_s > 0 ? hot_line_C - this.draw.wanted_C : -1;
    };
    const low = Math.min(this.cold_C, this.draw.wanted_C);
    if (short(low) >= 0) return low;
    if (short(this.boiling_C) < 0) return null;
    return findRoot(short, {
      low,
      high: this.boiling_C,
      tolerance: CLOSE_K,
      name: 'lowest store temperature for the shower',
      unit: 'C',
    });
  }
}
