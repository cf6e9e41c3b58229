/**
 * The engine, its loop and its coil on the bench: running steadily beside a store held at one temperature. Built
 * of the simulation's parts and evaluated by its right-hand side; the block's own temperature is solved for.
 */
import { findRoot } from '../../numerics/root.ts';
import type { PlantDescription } from '../../parts/description.ts';
import type { Engine } from '../../parts/engine.ts';
import { placeOf } from '../../parts/layout.ts';
import { lookUp } from '../../parts/liquid.ts';
import { Plant } from '../../plant/plant.ts';

/** Where the running engine's heat goes. */
export interface SteadyCharge {
  tank_C: number;
  /** From the fuel into the coolant. */
  jacket_W: number;
  to_store_W: number;
  radiator_W: number;
  pipes_W: number;
  block_C: number;
  /** Coolant coming back to the engine. */
  return_C: number;
  flow_m3_s: number;
  coil_loss_Pa: number;
}

/** Temperatures are found to within this [K]. */
const CLOSE_K = 0.01;
/** The block closer, since the thermostat's opening hangs on it [K]. */
const CLOSE_BLOCK_K = 1e-4;
/** Coolant is taken no hotter than this [C]: a cap's pressure holds it liquid somewhat beyond 100 C. */
const HOTTEST_COOLANT = 150;
const BENCH_LAYERS = 40;
/** Coldest store that is asked about [C]. */
const COLDEST = 1;

export class ChargeBench {
  readonly boiling_C: number;
  /** At this electrical output [W]. */
  readonly output_W: number;
  readonly #plant: Plant;
  readonly #engine: Engine;
  readonly #y: number[];
  readonly #rates: number[];
  readonly #block: number;

  /** @throws RangeError without an engine */
  constructor(
    description: PlantDescription,
    output_W: number,
    { layers = BENCH_LAYERS }: { layers?: number } = {},
  ) {
    const { engine } = description;
    if (!engine) {
      throw new RangeError(
        'engine - expected an engine whose heat goes into the store - got none - add "engine"',
      );
    }
    this.#plant = new Plant({
      ...description,
      engine: { ...engine, load: [{ from_s: 0, output_W }] },
      collector: null,
      taps: null,
      backup: null,
      run: { ...description.run, days: 1, layers },
    });
    this.#engine = this.#plant.engine as Engine;
    this.#engine.running = true;
    this.#engine.coil.mode = 'steady';
    this.#y = this.#plant.layout.initial();
    this.#rates = this.#y.slice();
    const { layout } = this.#plant;
    this.#block = this.#y.findIndex((_, i) => layout.nameOf(i) === `${engine.name}.block`);
    this.boiling_C = this.#plant.store.boiling_C;
    this.output_W = this.#engine.output_W(0);
  }

  /** The engine's steady state beside a store of one temperature [C]. */
  at(tank_C: number): SteadyCharge {
    const { store } = this.#plant;
    const y = this.#y;
    for (let i = 0; i < store.layers; i++) y[store.first + i] = lookUp(store.water.enthalpy, tank_C);
    const warming = (block_C: number) => {
      y[this.#block] = block_C;
      this.#plant.rates(0, y, this.#rates);
      return this.#rates[this.#block];
    };
    // Below the thermostat nothing but the pipes' air takes heat, so a running engine always warms up to it.
    const low = Math.min(this.#engine.description.thermostat_open_C - 5, tank_C);
    const block_C =
      warming(HOTTEST_COOLANT) >= 0
        ? HOTTEST_COOLANT
        : findRoot(warming, {
            low,
            high: HOTTEST_COOLANT,
            tolerance: CLOSE_BLOCK_K,
            name: 'steady coolant temperature',
            unit: 'C',
          });
    warming(block_C);
    const out = this.#rates;
    const { coil, flow_kg_s } = this.#engine;
    const mean_C = (block_C + this.#engine.return_C) / 2;
    return {
      tank_C,
      jacket_W: out[placeOf.fuel_to_coolant],
      to_store_W: out[placeOf.engine_to_store],
      radiator_W: out[placeOf.radiator_to_air],
      pipes_W: out[placeOf.engine_pipes_to_air],
      block_C,
      return_C: this.#engine.return_C,
      flow_m3_s: flow_kg_s / lookUp(coil.inside.density, mean_C),
      coil_loss_Pa: flow_kg_s > 0 ? coil.pressureLoss(flow_kg_s, mean_C) : 0,
    };
  }

  /**
   * Store temperature above which the engine's heat no longer all fits and the radiator takes over [C]: `always`
   * where even a cold store cannot take it, `never` where a boiling one still does.
   */
  radiatorFrom(): number | 'always' | 'never' {
    const { starts_C } = this.#engine.description.radiator;
    const over = (tank_C: number) => this.at(tank_C).block_C - starts_C;
    if (over(COLDEST) >= 0) return 'always';
    if (over(this.boiling_C) <= 0) return 'never';
    return findRoot(over, {
      low: COLDEST,
      high: this.boiling_C,
      tolerance: CLOSE_K,
      name: 'store temperature at which the radiator takes over',
      unit: 'C',
    });
  }

  /** Coldest store from which coolant comes back no colder than the engine likes [C]; null where all are. */
  warmEnoughFrom(): number | null {
    const { coldest_return_C } = this.#engine.description;
    const short = (tank_C: number) => this.at(tank_C).return_C - coldest_return_C;
    if (short(COLDEST) >= 0) return COLDEST;
    if (short(this.boiling_C) < 0) return null;
    return findRoot(short, {
      low: COLDEST,
      high: this.boiling_C,
      tolerance: CLOSE_K,
      name: 'store temperature for a warm return',
      unit: 'C',
    });
  }
}
