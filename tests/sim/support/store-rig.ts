/** One store by itself, evaluated by hand. */
import { Air } from '../../../sim/parts/air.ts';
import type { StoreDescription } from '../../../sim/parts/description.ts';
import { Layout, PATHS, type PathKey, placeOf } from '../../../sim/parts/layout.ts';
import { liquid, lookUp, REFERENCE_HEAT_CAPACITY } from '../../../sim/parts/liquid.ts';
import { Store } from '../../../sim/parts/store/store.ts';
import { storeOf } from './plant.ts';
import { steadyWeather } from './weather.ts';

export class StoreRig {
  readonly store: Store;
  readonly y: number[];
  readonly out: number[];

  constructor(over: Partial<StoreDescription> = {}, layers = 10, altitude_m = 0, outdoors_C = 5) {
    const layout = new Layout();
    const air = new Air(steadyWeather(outdoors_C), altitude_m, 0);
    this.store = new Store(storeOf(over), layers, { bottom_C: 50, top_C: 50 }, air, layout);
    this.y = layout.initial();
    this.out = this.y.map(() => 0);
  }

  /** Sets the layers [C], bottom first. */
  set(layers_C: ArrayLike<number>): this {
    const { enthalpy } = liquid({ kind: 'water', mass_share: 0 });
    for (let i = 0; i < layers_C.length; i++) {
      this.y[this.store.first + i] = lookUp(enthalpy, layers_C[i]);
    }
    return this;
  }

  /** Evaluates with heat [W] put into layers; `out` is left to read. */
  rates(heat_W: number[] = []): this {
    this.out.fill(0);
    this.store.prepare(this.y);
    for (const [i, heat] of heat_W.entries()) this.store.heat_W[i] += heat;
    this.store.finish(0, this.out);
    return this;
  }

  /** Rate at which the store's energy changes [W]. */
  get gain_W(): number {
    let sum = 0;
    for (let i = 0; i < this.store.layers; i++) {
      sum += this.store.mass_kg[i] * this.out[this.store.first + i] * REFERENCE_HEAT_CAPACITY;
    }
    return sum;
  }

  path(key: PathKey): number {
    return this.out[placeOf[key]];
  }

  /** What the ledger says goes in less what goes out [W]. */
  get booked_W(): number {
    return (Object.keys(PATHS) as PathKey[]).reduce((sum, key) => {
      if (PATHS[key] === 'inside') return sum;
      return sum + (PATHS[key] === 'in' ? 1 : -1) * this.path(key);
    }, 0);
  }
}
