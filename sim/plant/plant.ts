/** The parts put together: one right-hand side, one list of things to watch, one way through a restart. */
import { Air } from '../parts/air.ts';
import { Coil } from '../parts/coil/coil.ts';
import { Collector } from '../parts/collector.ts';
import type { PlantDescription } from '../parts/description.ts';
import { drawCalendar } from '../parts/draw-calendar.ts';
import { Engine } from '../parts/engine.ts';
import { withoutFailedDraws } from '../parts/faults.ts';
import { Layout } from '../parts/layout.ts';
import { liquid } from '../parts/liquid.ts';
import { Store } from '../parts/store/store.ts';
import { Supply } from '../parts/supply.ts';
import { Taps } from '../parts/taps.ts';
import { planeOfArray } from '../parts/weather/plane-of-array.ts';

const WATER = { kind: 'water', mass_share: 0 } as const;

export class Plant {
  readonly description: PlantDescription;
  readonly layout = new Layout();
  readonly air: Air;
  readonly store: Store;
  readonly supply: Supply;
  readonly coils: Coil[];
  readonly engine: Engine | null = null;
  readonly collector: Collector | null = null;
  readonly taps: Taps | null = null;
  readonly openings;
  /** Coils that nothing flows through. */
  readonly #idle: Coil[];

  constructor(description: PlantDescription) {
    this.description = description;
    const { run, site, weather } = description;
    const { layout } = this;
    this.air = new Air(weather, site.altitude_m, run.first_day, run.faults);
    this.store = new Store(description.store, run.layers, run.start, this.air, layout);
    this.supply = new Supply(description.supply, this.air, run.first_day, layout);
    this.coils = description.coils.map((coil) => {
      const inside = liquid(this.#fluidIn(coil.name));
      return new Coil(coil, inside, liquid(WATER), this.store.geometry, this.store.layer_C, layout);
    });
    const coilNamed = (name: string) => this.coils.find((c) => c.description.name === name) as Coil;
    const used = new Set<Coil>();
    const take = (name: string) => {
      const coil = coilNamed(name);
      used.add(coil);
      return coil;
    };
    if (description.engine) {
      const { engine } = description;
      this.engine = new Engine(
        engine,
        take(engine.coil),
        this.air,
        site.altitude_m,
        run.first_weekday,
        layout,
      );
    }
    if (description.collector) {
      const { collector } = description;
      // A day more on either side: the curve through hourly means looks at its neighbours.
      const days = { first: run.first_day - 1, count: run.days + 2 };
      const sun = planeOfArray(weather, site, collector, days);
      this.collector = new Collector(collector, take(collector.coil), sun, this.air, layout);
    }
    if (description.taps) {
      const { supply, store, air } = this;
      const coil = take(description.taps.coil);
      this.taps = new Taps(description.taps, description.backup, coil, { supply, store, air }, layout);
    }
    const draws = drawCalendar(description.taps?.draws ?? [], run.days, run.first_weekday);
    this.openings = withoutFailedDraws(draws, run.faults);
    this.#idle = this.coils.filter((coil) => !used.has(coil));
  }

  #fluidIn(coil: string) {
    const { engine, collector } = this.description;
    if (engine?.coil === coil) return engine.coolant;
    if (collector?.coil === coil) return collector.fluid;
    return WATER;
  }

  /** Right-hand side: derivative of every state and integral at time t [s]. */
  rates(t: number, y: number[], out: number[]): void {
    for (let i = 0; i < out.length; i++) out[i] = 0;
    this.store.prepare(y);
    if (this.taps) this.taps.rates(t, y, out);
    else this.supply.rates(t, y, 0, out);
    this.engine?.rates(t, y, this.store, out);
    this.collector?.rates(t, y, this.store, out);
    for (const coil of this.#idle) coil.flow(y, 0, 0, this.store.layer_C, null, out);
    this.store.finish(t, out);
  }

  /** Energy held by store, coils, engine, collectors and tap pipe [J, 0 at 0 C]. */
  energy(y: ArrayLike<number>): number {
    let energy = this.store.energy(y);
    for (const coil of this.coils) energy += coil.energy(y);
    energy += this.engine?.energy(y) ?? 0;
    energy += this.collector?.energy(y) ?? 0;
    energy += this.taps?.energy(y) ?? 0;
    return energy;
  }

  /** What is flowing, as a small number: runs of one kind share a first step. */
  regime(): number {
    const drawing = this.taps?.drawing ? (this.taps.coil.mode === 'filling' ? 3 : this.taps.plug ? 2 : 1) : 0;
    const loops = (this.engine?.running ? 2 : 0) + (this.collector?.pumping ? 1 : 0);
    return (this.store.steaming ? 16 : 0) + drawing * 4 + loops;
  }
}
