/** Random scenarios, valid by construction, over the whole space a file can describe. Same seed, same scenario. */
import { seededRandom } from '../../../sim/numerics/random.ts';
import { MATERIALS } from '../../../sim/physics/materials.ts';
import {
  dailyExtraterrestrial_J_m2,
  declinationSpencer_rad,
  extraterrestrialNormal_W_m2,
} from '../../../sim/physics/sun-by-day.ts';
import { findTube, TUBE_MATERIALS, TUBE_STANDARDS, tubeSizes } from '../../../sim/physics/tubes.ts';
import type { Scenario } from '../../../sim/scenario/index.ts';
import { PATTERN_NAMES } from '../../../sim/scenario/patterns.ts';

type Part<K extends keyof Scenario> = NonNullable<Scenario[K]>;
type Coil = Part<'coils'>[number];

/** A seeded source of choices, in the units of one of the two systems. */
class Chance {
  readonly #uniform: () => number;
  readonly us: boolean;

  constructor(seed: number) {
    this.#uniform = seededRandom(seed);
    this.us = this.yes(0.5);
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.#uniform();
  }
  whole(low: number, high: number): number {
    return Math.floor(this.between(low, high + 1));
  }
  yes(share: number): boolean {
    return this.#uniform() < share;
  }
  pick<T>(items: readonly T[]): T {
    return items[Math.floor(this.#uniform() * items.length)];
  }
  shuffled<T>(items: readonly T[]): T[] {
    return items
      .map((item) => [this.#uniform(), item] as const)
      .sort(([a], [b]) => a - b)
      .map(([, item]) => item);
  }
  /** The part, or nothing: to be spread into an object. */
  maybe<T extends object>(share: number, part: () => T): Partial<T> {
    return this.yes(share) ? part() : {};
  }

  length(m: number): string {
    return this.us ? `${digits(m / 0.0254)} in` : `${digits(m)} m`;
  }
  temperature(t_C: number): string {
    return this.us ? `${digits(t_C * 1.8 + 32)} F` : `${digits(t_C)} C`;
  }
  difference(k: number): string {
    return this.us ? `${digits(k * 1.8)} F` : `${digits(k)} K`;
  }
  flow(litres_a_minute: number): string {
    return this.us ? `${digits(litres_a_minute / 3.785411784)} gpm` : `${digits(litres_a_minute)} L/min`;
  }
  volume(litres: number): string {
    return this.us ? `${digits(litres / 3.785411784)} gal` : `${digits(litres)} L`;
  }
  power(watts: number): string {
    return `${digits(watts)} W`;
  }
  share(low: number, high: number): string {
    return `${digits(100 * this.between(low, high))} %`;
  }
  clock(low_h = 0, high_h = 23.9): string {
    const minutes = Math.floor(60 * this.between(low_h, high_h));
    return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
  }
  days(): string {
    return this.pick(['every day', 'weekdays', 'weekends', 'Mon Wed Fri', 'Sat']);
  }
}

/** Six digits, never in a form a reader could mistake. */
function digits(x: number): string {
  return String(Number(x.toPrecision(6)));
}

export function randomScenario(seed: number): Scenario {
  const chance = new Chance(seed);
  const latitude = chance.between(-58, 62);
  const store = randomStore(chance);
  const coils = randomCoils(chance, store);
  const [a, b, c] = chance.shuffled(coils).map((coil) => coil.name);
  const taps = a !== undefined && chance.yes(0.85) ? { taps: randomTaps(chance, a) } : {};
  return {
    format: 'tankful',
    version: 1,
    name: `random ${seed}`,
    site: randomSite(chance, latitude),
    weather: randomWeather(chance, latitude),
    run: randomRun(chance),
    store: store.part,
    coils,
    ...(b !== undefined && chance.yes(0.75) ? { engine: randomEngine(chance, b, store.depth_m) } : {}),
    ...(c !== undefined && chance.yes(0.75) ? { collector: randomCollector(chance, c) } : {}),
    ...chance.maybe(0.8, () => ({ supply: randomSupply(chance) })),
    ...taps,
    ...(taps.taps && chance.yes(0.3)
      ? {
          backup: {
            max_heat: chance.power(chance.between(2000, 25_000)),
            set: chance.temperature(chance.between(35, 55)),
          },
        }
      : {}),
  };
}

function randomSite(chance: Chance, latitude: number): Part<'site'> {
  const longitude = chance.between(-170, 170);
  const half = (degrees: number, plus: string, minus: string) =>
    `${digits(Math.abs(degrees))} ${degrees < 0 ? minus : plus}`;
  return {
    latitude: half(latitude, 'N', 'S'),
    ...chance.maybe(0.8, () => ({ longitude: half(longitude, 'E', 'W') })),
    altitude: chance.us
      ? `${digits(chance.between(-100, 13_000))} ft`
      : `${digits(chance.between(-30, 4000))} m`,
  };
}

function randomWeather(chance: Chance, latitude: number): Part<'weather'> {
  const seed = chance.whole(0, 4_294_967_295);
  if (chance.yes(0.5))
    return { kind: 'by latitude', climate: chance.pick(['cloudy', 'average', 'clear']), seed };
  const mean = chance.between(-5, 25);
  const half = chance.between(2, 18) * (latitude < 0 ? -1 : 1);
  const months = Array.from({ length: 12 }, (_, month) => month);
  const sun = months.map((month) => {
    const day = 30.4 * month + 15;
    const above = dailyExtraterrestrial_J_m2({
      latitude_rad: (latitude * Math.PI) / 180,
      declination_rad: declinationSpencer_rad(day),
      normal_W_m2: extraterrestrialNormal_W_m2(day),
    });
    return (above * chance.between(0.25, 0.6)) / 3.6e6;
  });
  return {
    kind: 'monthly',
    air: months.map((month) =>
      chance.temperature(mean - half * Math.cos((2 * Math.PI * (month - 0.5)) / 12)),
    ),
    sun: sun.map((kWh) => `${digits(kWh)} kWh/m2 per day`),
    ...chance.maybe(0.5, () => ({ swing: months.map(() => chance.difference(chance.between(2, 18))) })),
    ...chance.maybe(0.5, () => ({ humidity: months.map(() => chance.share(0.3, 0.95)) })),
    ...chance.maybe(0.5, () => ({
      wind: months.map(() =>
        chance.us ? `${digits(chance.between(1, 20))} mph` : `${digits(chance.between(0.5, 9))} m/s`,
      ),
    })),
    ...chance.maybe(0.5, () => ({ snow: months.map(() => chance.share(0, 1)) })),
    seed,
  };
}

function randomRun(chance: Chance): Part<'run'> {
  const bottom = chance.between(2, 75);
  return {
    from: `${chance.pick(['2027-', '2024-', ''])}${String(chance.whole(1, 12)).padStart(2, '0')}-${String(chance.whole(1, 28)).padStart(2, '0')}`,
    days: chance.whole(1, 5),
    interval: `${chance.pick([1, 5, 10, 30])} min`,
    layers: chance.whole(3, 40),
    start: {
      bottom: chance.temperature(bottom),
      ...chance.maybe(0.7, () => ({ top: chance.temperature(chance.between(bottom, 85)) })),
    },
  };
}

interface RandomStore {
  part: Part<'store'>;
  width_m: number;
  depth_m: number;
}

function randomStore(chance: Chance): RandomStore {
  const { inside, width_m, height_m } = randomInside(chance);
  const depth_m = height_m * chance.between(0.5, 0.96);
  const lid = chance.pick(['closed', 'ajar', 'open'] as const);
  return {
    width_m,
    depth_m,
    part: {
      inside,
      water_depth: chance.length(depth_m),
      ...chance.maybe(0.6, () => ({
        wall: {
          material: chance.pick(materials('wall')),
          thickness: chance.length(chance.between(0.001, 0.03)),
        },
      })),
      ...chance.maybe(0.5, () => ({ liner: { material: chance.pick(materials('liner')) } })),
      ...chance.maybe(0.9, () => ({
        insulation: {
          ...chance.maybe(0.9, () => ({ sides: randomSheets(chance) })),
          ...chance.maybe(0.8, () => ({ bottom: randomSheets(chance) })),
          ...chance.maybe(0.8, () => ({ lid: randomSheets(chance) })),
        },
      })),
      lid,
      ...(lid === 'open' ? {} : chance.maybe(0.3, () => ({ vapour_escape: chance.share(0, 0.9) }))),
      stands: randomPlace(chance),
      ...chance.maybe(0.3, () => ({ ground: chance.temperature(chance.between(0, 20)) })),
      ...chance.maybe(0.5, () => ({ bridges: chance.between(1, 3) })),
      make_up: chance.pick(['float', 'by hand']),
    },
  };
}

function randomInside(chance: Chance): {
  inside: Part<'store'>['inside'];
  width_m: number;
  height_m: number;
} {
  const [length, width, height] = [
    chance.between(0.3, 2.5),
    chance.between(0.3, 1.5),
    chance.between(0.3, 1.9),
  ];
  switch (chance.whole(0, 3)) {
    case 0:
      return { inside: { shape: 'tote' }, width_m: 0.95, height_m: 1 };
    case 1:
      return {
        inside: { shape: 'upright cylinder', diameter: chance.length(width), height: chance.length(height) },
        width_m: width,
        height_m: height,
      };
    case 2:
      return {
        inside: { shape: 'lying cylinder', diameter: chance.length(width), length: chance.length(length) },
        width_m: Math.min(width, length),
        height_m: width,
      };
    default:
      return {
        inside: {
          shape: 'box',
          length: chance.length(length),
          width: chance.length(width),
          height: chance.length(height),
        },
        width_m: Math.min(length, width),
        height_m: height,
      };
  }
}

function materials(use: 'insulation' | 'wall' | 'liner'): string[] {
  return Object.keys(MATERIALS).filter((name) => MATERIALS[name].use === use);
}

function randomSheets(chance: Chance) {
  return Array.from({ length: chance.whole(0, 3) }, () => ({
    material: chance.pick(materials('insulation')),
    thickness: chance.length(chance.between(0.01, 0.2)),
    ...chance.maybe(0.2, () => ({ resistance: `R-${chance.whole(1, 30)}` })),
  }));
}

function randomPlace(chance: Chance) {
  if (chance.yes(0.3)) return { where: 'outdoors' as const };
  return {
    where: 'room' as const,
    temperature: chance.temperature(chance.between(-5, 30)),
    swing: chance.difference(chance.between(0, 12)),
    ...chance.maybe(0.5, () => ({ humidity: chance.share(0.2, 0.95) })),
  };
}

function randomCoils(chance: Chance, store: RandomStore): Coil[] {
  const wanted = chance.whole(0, 4);
  return Array.from({ length: wanted }, (_, i) => randomCoil(chance, store, `coil ${i + 1}`)).filter(
    (coil) => coil !== null,
  );
}

const CLEAR_M = { touching: 0, 'finger gap': 0.019, spread: 0.051 };

/** A coil that fits, or null where the store is too small for the tube that chance picked. */
function randomCoil(chance: Chance, store: RandomStore, name: string): Coil | null {
  const { tube, outside_m } = randomTube(chance);
  const widest = 0.98 * store.width_m - outside_m;
  const tightest = 6.2 * outside_m;
  const spacing = chance.pick(['touching', 'finger gap', 'spread'] as const);
  const side_by_side = chance.pick([1, 1, 1, 2, 3]);
  const pitch = outside_m + CLEAR_M[spacing];
  const from = chance.between(0, 0.6 * store.depth_m);
  const room = 0.97 * store.depth_m - from - outside_m;
  if (widest < tightest || room < 0.3 * pitch) return null;
  const diameter = chance.between(tightest, widest);
  const turns = (room / pitch) * chance.between(0.2, 1) * side_by_side;
  const rolls = chance.pick([1, 1, 2, 4]);
  const roll_length = (turns * Math.hypot(Math.PI * diameter, pitch)) / rolls;
  if (roll_length < 0.31) return null;
  return {
    name,
    tube,
    rolls,
    roll_length: chance.length(Math.min(400, roll_length)),
    ...(rolls > 1 ? { join: chance.pick(['series', 'parallel']) } : {}),
    coil_diameter: chance.length(diameter),
    spacing,
    side_by_side,
    from: chance.length(from),
    ...chance.maybe(0.3, () => ({ to: chance.length(0.99 * store.depth_m) })),
    ...chance.maybe(0.5, () => ({ fed_from: chance.pick(['bottom', 'top']) })),
    ...chance.maybe(0.3, () => ({ fouling: `${digits(chance.between(0, 0.001))} m2 K/W` })),
    ...chance.maybe(0.3, () => ({
      outside_film: chance.between(0.5, 1.2),
      inside_film: chance.between(0.8, 1.2),
    })),
  };
}

function randomTube(chance: Chance): { tube: Coil['tube']; outside_m: number } {
  if (chance.yes(0.2)) {
    const outside_m = chance.between(0.006, 0.04);
    return {
      outside_m,
      tube: {
        kind: 'own',
        material: chance.pick(Object.keys(TUBE_MATERIALS)),
        outside: chance.length(outside_m),
        inside: chance.length(outside_m * chance.between(0.6, 0.93)),
      },
    };
  }
  const kind = chance.pick(TUBE_STANDARDS);
  const size = chance.pick(tubeSizes(kind));
  return { tube: { kind, size }, outside_m: findTube(kind, size)?.outside_diameter_m ?? Number.NaN };
}

function randomEngine(chance: Chance, coil: string, depth_m: number): Part<'engine'> {
  const rated = chance.between(1000, 20_000);
  const fuel = chance.pick(['diesel', 'gasoline', 'propane'] as const);
  const span = () => ({
    days: chance.days(),
    from: chance.clock(0, 21),
    to: chance.pick(['22:30', '24:00', '1:15']),
  });
  const below = chance.between(25, 60);
  const thermostat = chance.between(65, 90);
  return {
    coil,
    fuel,
    rated_output: chance.power(rated),
    ...(chance.yes(0.5)
      ? { typical_load: chance.power(rated * chance.between(0.05, 1)) }
      : {
          load_by_hour: [
            { from: '0:00', output: chance.power(rated * chance.between(0, 1)) },
            { from: chance.clock(1, 23), output: chance.power(rated * chance.between(0, 1)) },
          ],
        }),
    ...chance.maybe(0.4, () => ({ jacket_share: chance.share(0.15, 0.35) })),
    ...chance.maybe(0.3, () => ({ exhaust_exchanger: true })),
    coolant: chance.yes(0.2)
      ? { kind: 'water' }
      : { kind: chance.pick(['propylene glycol', 'ethylene glycol']), share: chance.share(0.1, 0.55) },
    ...chance.maybe(0.4, () => ({ coolant_flow: chance.flow(chance.between(2, 40)) })),
    thermostat: chance.temperature(thermostat),
    check_valve: chance.yes(0.5),
    pipes: { length: chance.length(chance.between(0, 40)), foam: chance.length(chance.between(0, 0.05)) },
    stands: randomPlace(chance),
    runs: chance.yes(0.5)
      ? { kind: 'timetable', spans: Array.from({ length: chance.whole(1, 3) }, span) }
      : {
          kind: 'call for heat',
          below: chance.temperature(below),
          until: chance.temperature(below + chance.between(2, 30)),
          probe: chance.length(depth_m * chance.between(0, 0.98)),
          ...chance.maybe(0.6, () => ({ allowed: [span()] })),
        },
  };
}

function randomCollector(chance: Chance, coil: string): Part<'collector'> {
  const off = chance.between(0.5, 6);
  const drained = chance.yes(0.3);
  return {
    coil,
    kind: chance.pick(['evacuated tubes', 'flat plate']),
    size: chance.yes(0.5)
      ? { by: 'tubes', tubes: chance.whole(5, 120) }
      : {
          by: 'area',
          area: chance.us ? `${digits(chance.between(8, 300))} ft2` : `${digits(chance.between(0.8, 28))} m2`,
          basis: chance.pick(['gross', 'aperture', 'absorber']),
        },
    ...chance.maybe(0.4, () => ({
      rating: {
        eta0: chance.between(0.4, 0.85),
        a1: `${digits(chance.between(0.5, 6))} W/(m2 K)`,
        a2: `${digits(chance.between(0, 0.03))} W/(m2 K2)`,
      },
    })),
    ...chance.maybe(0.2, () => ({ incidence: { kind: 'single' as const, b0: chance.between(0, 0.3) } })),
    ...chance.maybe(0.7, () => ({ tilt: `${digits(chance.between(0, 90))} deg` })),
    ...chance.maybe(0.7, () => ({ facing: `${digits(chance.between(0, 359))} deg` })),
    ...chance.maybe(0.3, () => ({
      horizon: [0, 90, 200, 300].map((direction) => ({
        direction: `${direction} deg`,
        height: `${chance.whole(0, 40)} deg`,
      })),
    })),
    ...chance.maybe(0.3, () => ({ shade: Array.from({ length: 12 }, () => chance.share(0, 1)) })),
    loop: drained ? 'drain-back' : 'filled',
    ...chance.maybe(0.5, () => ({
      fluid: chance.yes(0.3)
        ? { kind: 'water' as const }
        : {
            kind: chance.pick(['propylene glycol', 'ethylene glycol'] as const),
            share: chance.share(0.1, 0.55),
          },
    })),
    ...chance.maybe(0.5, () => ({ pump_flow: chance.flow(chance.between(0.3, 20)) })),
    on: chance.difference(off + chance.between(2.5, 8)),
    off: chance.difference(off),
    high_limit: chance.temperature(chance.between(50, 94)),
    pipes: {
      length: chance.length(chance.between(0, 60)),
      foam: chance.length(chance.between(0, 0.05)),
      outdoor_share: chance.share(0, 1),
    },
    check_valve: chance.yes(0.6),
  };
}

function randomSupply(chance: Chance): Part<'supply'> {
  const cold = () => chance.temperature(chance.between(0.5, 25));
  const kinds: (() => NonNullable<Part<'supply'>['cold']>)[] = [
    () => ({ kind: 'fixed', temperature: cold() }),
    () => ({ kind: 'by month', temperature: Array.from({ length: 12 }, cold) }),
    () => ({
      kind: 'cistern',
      volume: chance.volume(chance.between(100, 6000)),
      start: cold(),
      stands: randomPlace(chance),
    }),
  ];
  return {
    cold: chance.pick(kinds)(),
    ...chance.maybe(0.6, () => ({
      pump: {
        open_flow: chance.flow(chance.between(4, 25)),
        cut_out: chance.us ? `${chance.whole(15, 70)} psi` : `${digits(chance.between(1, 5))} bar`,
      },
    })),
    lift: chance.length(chance.between(-2, 8)),
  };
}

function randomTaps(chance: Chance, coil: string): Part<'taps'> {
  return {
    coil,
    ...chance.maybe(0.8, () => ({
      showers: Array.from({ length: chance.whole(1, 3) }, () => ({
        at: chance.clock(),
        days: chance.days(),
        people: chance.whole(1, 5),
        lasts: `${chance.whole(1, 15)} min`,
        flow: chance.flow(chance.between(3, 14)),
        temperature: chance.temperature(chance.between(35, 45)),
      })),
    })),
    ...chance.maybe(0.6, () => ({
      draws: Array.from({ length: chance.whole(1, 6) }, (_, i) => ({
        name: `draw ${i + 1}`,
        at: chance.clock(),
        days: chance.days(),
        flow: chance.flow(chance.between(1, 15)),
        ...(chance.yes(0.5)
          ? { lasts: `${chance.whole(5, 900)} s` }
          : { volume: chance.volume(chance.between(1, 80)) }),
        temperature: chance.temperature(chance.between(20, 60)),
        outlet: chance.pick(['tap', 'head'] as const),
      })),
    })),
    ...chance.maybe(0.3, () => ({ pattern: { name: chance.pick(PATTERN_NAMES) } })),
    mixing_valve: { fitted: chance.yes(0.7) },
    pipe: { length: chance.length(chance.between(0, 40)), foam: chance.length(chance.between(0, 0.03)) },
  };
}
