/** The parts put together: whatever flows, what the plant holds changes by what crosses its edge. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PATHS, type PathKey, placeOf } from '../../../sim/parts/layout.ts';
import { lookUp } from '../../../sim/parts/liquid.ts';
import { edgesOfDay } from '../../../sim/plant/edges.ts';
import { Plant } from '../../../sim/plant/plant.ts';
import {
  backupOf,
  coilOf,
  drawOf,
  EVERY_DAY,
  engineOf,
  fullPlant,
  plantOf,
  storeOf,
  tapsOf,
} from '../support/plant.ts';

const DAY = 86_400;

/** A plant with everything that can leak energy switched on. */
const leaky = new Plant(
  fullPlant({
    store: storeOf({ lid: 'ajar', vapour_share: 0.1 }),
    coils: [
      coilOf('household'),
      coilOf('engine', { roll_length_m: 18, fed_from: 'top' }),
      coilOf('collector', { roll_length_m: 15, fed_from: 'top' }),
      coilOf('idle', { roll_length_m: 10 }),
    ],
    backup: backupOf(),
    engine: engineOf('engine', { standby_loss_W_K: 2, thermostat_open_C: 40, thermostat_full_C: 60 }),
    supply: {
      cold: {
        kind: 'cistern',
        volume_m3: 0.5,
        start_C: 6,
        conductance_W_K: 5,
        surroundings: { kind: 'outdoors' },
        refill_C: 5,
      },
      pump: { open_flow_m3_s: 2.5e-4, cut_out_Pa: 345_000, power_W: 90 },
      lift_m: 2,
    },
  }),
);
const places = new Map(
  Array.from({ length: leaky.layout.size }, (_, i) => [leaky.layout.nameOf(i), i] as const),
);

const net = (out: number[]) =>
  (Object.keys(PATHS) as PathKey[]).reduce((sum, key) => {
    if (PATHS[key] === 'inside') return sum;
    return sum + (PATHS[key] === 'in' ? out[placeOf[key]] : -out[placeOf[key]]);
  }, 0);

const temperature = fc.double({ min: 1, max: 98, noNaN: true });

describe('the plant', () => {
  it('gains what comes in less what goes out, in every mode and state', () => {
    let clock = 0;
    fc.assert(
      fc.property(
        fc.record({
          layers: fc.array(temperature, { minLength: 20, maxLength: 20 }),
          block: temperature,
          outlet: fc.double({ min: -20, max: 180, noNaN: true }),
          running: fc.boolean(),
          pumping: fc.boolean(),
          open: fc.integer({ min: 0, max: 3 }),
          front: fc.double({ min: 0, max: 1, noNaN: true }),
          steady: fc.boolean(),
          plug: fc.boolean(),
        }),
        (s) => {
          const { store, engine, collector, taps, layout } = leaky;
          // Time only goes forward: a coil remembers when it stopped.
          clock += 4127;
          const t = clock;
          if (!engine || !collector || !taps) throw new Error('the plant has lost a part');
          const y = layout.initial();
          const out = y.map(() => 0);
          s.layers.forEach((layer_C, i) => {
            y[store.first + i] = lookUp(store.water.enthalpy, layer_C);
          });
          store.settle(y);
          y[places.get('set.block') as number] = s.block;
          y[places.get('panels.outlet') as number] = s.outlet;
          for (const coil of ['household', 'engine', 'collector']) {
            y[places.get(`${coil}.front`) as number] = s.front;
          }
          taps.change(t, y, [], { room: 18 });
          const draws = leaky.description.taps?.draws.slice(0, s.open) ?? [];
          taps.change(
            t,
            y,
            draws.map((draw) => ({ draw, from_s: t, to_s: t + 60 })),
            { room: 18 },
          );
          if (taps.drawing) taps.plug = s.plug;
          engine.running = s.running;
          collector.pumping = s.pumping;
          for (const { coil } of [engine, collector, taps]) coil.mode = s.steady ? 'steady' : 'filling';
          leaky.rates(t, y, out);
          const moved = y.map((v, i) => v + out[i]);
          const gain = leaky.energy(moved) - leaky.energy(y);
          // The energy of the store is some 1e8 J: its difference carries 1e-7 J of rounding.
          const scale = Object.keys(PATHS).reduce(
            (sum, key) => sum + Math.abs(out[placeOf[key as PathKey]]),
            1,
          );
          expect(Math.abs(gain - net(out))).toBeLessThan(1e-9 * scale + 1e-5);
        },
      ),
      { numRuns: 400 },
    );
  });

  it('at rest and as warm as its surroundings keeps still', () => {
    const still = new Plant(
      plantOf({
        store: storeOf({ surroundings: { kind: 'outdoors' } }),
        coils: [coilOf('h'), coilOf('e')],
        engine: engineOf('e', { surroundings: { kind: 'outdoors' } }),
        taps: tapsOf('h', {
          pipe: {
            length_m: 8,
            tube: coilOf('h').tube,
            conductance_W_mK: 0.2,
            surroundings: { kind: 'outdoors' },
          },
        }),
        run: { start: { bottom_C: 5, top_C: 5 } },
      }),
    );
    const y = still.layout.initial();
    const out = y.map(() => 0);
    still.rates(0, y, out);
    expect(Math.max(...out.map(Math.abs))).toBeLessThan(1e-12);
  });

  it('counts a coil that nothing flows through among what it holds', () => {
    const bare = new Plant(plantOf());
    const idle = new Plant(plantOf({ coils: [coilOf('idle')] }));
    const more = idle.energy(idle.layout.initial()) - bare.energy(bare.layout.initial());
    // 30 m of 3/4 in type L: 9.4 kg of water and 18 kg of copper at about 55 C.
    expect(more / ((9.4 * 4180 + 18 * 385) * 55)).toBeGreaterThan(0.9);
    expect(more / ((9.4 * 4180 + 18 * 385) * 55)).toBeLessThan(1.15);
  });
});

describe('the edges of a day', () => {
  const plant = new Plant(
    fullPlant({
      engine: engineOf('engine', {
        load: [
          { from_s: 0, output_W: 1000 },
          { from_s: 60_333, output_W: 5000 },
        ],
        runs: { kind: 'timetable', spans: [{ days: EVERY_DAY, from_s: 54_001, to_s: DAY }] },
      }),
      taps: tapsOf('household', {
        draws: [
          drawOf({ at_s: 86_200, duration_s: 600 }),
          drawOf({ at_s: 25_211, duration_s: 77, days: [1] }),
        ],
      }),
      run: { days: 3 },
    }),
  );
  const edges = (day: number) => edgesOfDay(plant, day);

  it('rise from midnight to midnight through every hour', () => {
    for (const day of [0, 1, 2]) {
      const list = edges(day);
      expect(list[0]).toBe(day * DAY);
      expect(list.at(-1)).toBe((day + 1) * DAY);
      for (let i = 1; i < list.length; i++) expect(list[i]).toBeGreaterThan(list[i - 1]);
      for (let h = 0; h <= 24; h++) expect(list).toContain(day * DAY + h * 3600);
    }
  });

  it('hold where draws open and close, also those that run past midnight', () => {
    expect(edges(0)).toContain(86_200);
    expect(edges(1)).toContain(DAY + 400);
    expect(edges(1)).toContain(DAY + 25_211);
    expect(edges(1)).toContain(DAY + 25_288);
    expect(edges(0)).not.toContain(25_211);
  });

  it('hold the timetable’s and the load’s', () => {
    for (const second of [54_001, 60_333]) expect(edges(2)).toContain(2 * DAY + second);
  });
});
