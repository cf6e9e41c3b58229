/** Random engines and collectors. */
import type { Scenario } from '../../../../sim/scenario/index.ts';
import { type Chance, digits } from './chance.ts';
import { randomPlace } from './store.ts';

type Part<K extends keyof Scenario> = NonNullable<Scenario[K]>;

export function randomEngine(chance: Chance, coil: string, depth_m: number): Part<'engine'> {
  const rated = chance.between(1000, 20_000);
  const fuel = chance.pick(['diesel', 'gasoline', 'propane'] as const);
  const span = () => {
    const days = chance.days();
    const from = chance.clock(0, 21);
    const to = chance.pick(['22:30', '24:00', '1:15']);
    return { days, from, to: to === from ? '24:00' : to };
  };
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

export function randomCollector(chance: Chance, coil: string): Part<'collector'> {
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
