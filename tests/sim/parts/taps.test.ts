/** The household: what the taps mix to, what they call for, and how long the dead water in the pipe lasts. */
import { describe, expect, it } from 'vitest';
import type { BackupDescription, Draw, PlantDescription } from '../../../sim/parts/description.ts';
import { placeOf } from '../../../sim/parts/layout.ts';
import { lookUp } from '../../../sim/parts/liquid.ts';
import type { Taps } from '../../../sim/parts/taps.ts';
import { Plant } from '../../../sim/plant/plant.ts';
import { simulate } from '../../../sim/run/simulation.ts';
import {
  backupOf,
  coilOf,
  drawOf,
  plantOf,
  roomAt,
  storeOf,
  supplyOf,
  tapsOf,
  tubeOf,
} from '../support/plant.ts';

interface Case {
  tube?: PlantDescription['coils'][0]['tube'];
  length_m?: number;
  valve?: number | null;
  backup?: BackupDescription | null;
  top_C?: number;
  cold_C?: number;
  draws?: Partial<Draw>[];
}

/** Plants by what they are made of: a year of weather each is worth keeping. */
const known = new Map<string, Plant>();

function household(c: Case): Plant {
  const key = JSON.stringify([c.tube?.label, c.length_m, c.valve, c.backup, c.cold_C]);
  const plant =
    known.get(key) ??
    new Plant(
      plantOf({
        coils: [
          coilOf('h', { tube: c.tube ?? tubeOf('plumbing L', '3/4'), roll_length_m: c.length_m ?? 30 }),
        ],
        supply: supplyOf({ cold: { kind: 'fixed', temperature_C: c.cold_C ?? 8 } }),
        backup: c.backup ?? null,
        taps: tapsOf('h', { mixing_valve_C: c.valve ?? null }),
      }),
    );
  known.set(key, plant);
  return plant;
}

/** Opens all draws at once and evaluates. `fronts`: still in the coil and pipe, passed the pipe, or passed both. */
function opened(c: Case, fronts: 'both ahead' | 'pipe passed' | 'both passed' = 'both passed') {
  const plant = household(c);
  const { store } = plant;
  const taps = plant.taps as Taps;
  const y = plant.layout.initial();
  const out = y.map(() => 0);
  const top_C = c.top_C ?? 60;
  for (let i = 0; i < store.layers; i++) {
    y[store.first + i] = lookUp(store.water.enthalpy, top_C - 12 + (12 * (i + 0.5)) / store.layers);
  }
  store.prepare(y);
  const room = 18;
  taps.change(0, y, [], { room });
  const open = (c.draws ?? [{}]).map((draw) => ({ draw: drawOf(draw), from_s: 0, to_s: 500 }));
  taps.change(0, y, open, { room });
  if (fronts !== 'both ahead') taps.plug = false;
  if (fronts === 'both passed') taps.coil.mode = 'steady';
  // As at the restart at which a front arrives.
  if (fronts !== 'both ahead') taps.change(0, y, open, { room });
  plant.rates(0, y, out);
  return { plant, taps, y, out };
}

const tubes = [
  [tubeOf('refrigeration', '3/8'), 15],
  [tubeOf('refrigeration', '1/2'), 15],
  [tubeOf('plumbing L', '3/4'), 30],
] as const;

describe.each(['both ahead', 'pipe passed', 'both passed'] as const)(
  'mixed water with fronts %s',
  (fronts) => {
    it.each([
      ['no backup', null],
      ['a strong backup', backupOf()],
      ['a weak backup', backupOf({ max_heat_W: 9000 })],
    ] as const)('is within 0.1 K of what is wanted wherever the hot pipe allows: %s', (_name, backup) => {
      const wrong: string[] = [];
      let met = 0;
      for (const [tube, length_m] of tubes)
        for (const valve of [null, 48, 42])
          for (const top_C of [30, 45, 60, 85])
            for (const flow_m3_s of [2e-5, 6e-5, 1e-4, 1.8e-4])
              for (const wanted_C of [34, 40, 46])
                for (const cold_C of [2, 15]) {
                  const { taps } = opened(
                    { tube, length_m, valve, backup, top_C, cold_C, draws: [{ flow_m3_s, wanted_C }] },
                    fronts,
                  );
                  // Where the hot pipe is colder than what is wanted, all of it is the best there is.
                  const best = Math.min(wanted_C, taps.hot_line_C);
                  if (best === wanted_C) met++;
                  if (!(Math.abs(taps.outlet_C - best) < 0.1)) {
                    wrong.push(
                      `${tube.label} ${valve} ${top_C} ${flow_m3_s} ${wanted_C} ${cold_C}: ${taps.outlet_C}`,
                    );
                  }
                }
      expect(wrong).toEqual([]);
      // Dead water in the pipe is as cold as its room; without it most cases can be met.
      expect(met > 300).toBe(fronts !== 'both ahead');
    });
  },
);

describe('the hot line', () => {
  it('gives no more than the valve lets through', () => {
    for (const valve of [40, 48, 55]) {
      const { taps } = opened({ valve, top_C: 85, draws: [{ wanted_C: 60 }] });
      expect(taps.hot_line_C).toBeLessThan(valve);
      expect(taps.hot_line_C).toBeGreaterThan(valve - 0.5);
      expect(taps.coil_kg_s).toBeLessThan(taps.mixed_kg_s);
    }
  });

  it('is heated to the backup’s set point, and no further than its power', () => {
    const { taps, out } = opened({ backup: backupOf(), top_C: 30 });
    expect(taps.hot_line_C).toBeGreaterThan(47);
    expect(taps.hot_line_C).toBeLessThan(48);
    const weak = opened({ backup: backupOf({ max_heat_W: 3000 }), top_C: 30 });
    // Heat capacity is taken at the inlet: 0.1 % of the power.
    const power = weak.out[placeOf.backup_to_water];
    expect(Math.abs(power / 3000 - 1)).toBeLessThan(1e-3);
    expect(out[placeOf.backup_to_water]).toBeGreaterThan(3000);
    // 46.3 MJ/kg at 82 %.
    expect(weak.out[placeOf.backup_fuel_kg]).toBeCloseTo(power / (0.82 * 46.3e6), 12);
  });

  it('passes the backup by where the coil is hot enough', () => {
    expect(opened({ backup: backupOf(), top_C: 85 }).out[placeOf.backup_to_water]).toBe(0);
  });
});

describe('what flows', () => {
  it('is what the tap wants, of which the coil’s share is by energy', () => {
    const { taps, out } = opened({ top_C: 70, draws: [{ flow_m3_s: 1e-4, wanted_C: 40 }] });
    // 0.1 L/s at 40 C: 992.2 kg/m3 (IAPWS-95).
    expect(taps.mixed_kg_s).toBeCloseTo(0.09922, 5);
    const heat = out[placeOf.household_to_taps] - out[placeOf.household_cold_in];
    // 4,186 J/(kg K) between 8 and 40 C within 0.2 % (steam tables).
    expect(heat / (taps.mixed_kg_s * 4186 * 32)).toBeCloseTo(1, 2);
    expect(out[placeOf.household_heat]).toBeCloseTo(heat + out[placeOf.tap_pipe_to_air], 3);
  });

  it('adds up over taps open at once, each mixed to its own wish', () => {
    const both = opened({
      draws: [
        { flow_m3_s: 6e-5, wanted_C: 45 },
        { flow_m3_s: 4e-5, wanted_C: 35 },
      ],
    }).taps;
    expect(both.mixed_kg_s).toBeCloseTo(0.09922, 5);
    expect(both.outlet_C).toBeCloseTo(0.6 * 45 + 0.4 * 35, 1);
  });

  it('is all cold where cold water is warm enough', () => {
    const { taps } = opened({ cold_C: 24, draws: [{ wanted_C: 20 }] });
    expect(taps.coil_kg_s).toBeLessThan(0.005 * taps.mixed_kg_s);
    expect(taps.outlet_C).toBeCloseTo(24, 1);
  });

  it('is all hot where the store is colder than the water drawn', () => {
    const { taps } = opened({ cold_C: 20, top_C: 16, draws: [{ wanted_C: 40 }] });
    expect(taps.coil_kg_s).toBeCloseTo(taps.mixed_kg_s, 9);
    expect(taps.outlet_C).toBeLessThan(20);
  });

  it('is less behind a longer and thinner coil', () => {
    const head = { flow_m3_s: 2e-4, outlet: { kind: 'head', rated_Pa: 300_000 } } as const;
    const wide = opened({ draws: [head] }).taps;
    const thin = opened({ draws: [head], tube: tubeOf('refrigeration', '3/8'), length_m: 40 }).taps;
    expect(thin.mixed_kg_s).toBeLessThan(0.9 * wide.mixed_kg_s);
    expect(thin.pressure_Pa).toBeLessThan(wide.pressure_Pa);
  });
});

describe('dead water', () => {
  const draws = [drawOf({ at_s: 25_200, duration_s: 120, flow_m3_s: 1e-4, wanted_C: 40 })];
  /** Seconds until the tap is halfway warm. */
  const wait = (over: { valve: number | null; at?: number; more?: Draw[] }) => {
    const { series } = simulate(
      plantOf({
        store: storeOf({ surroundings: roomAt(60) }),
        coils: [coilOf('h')],
        taps: tapsOf('h', { mixing_valve_C: over.valve, draws: [...draws, ...(over.more ?? [])] }),
        run: { interval_s: 1, layers: 8, start: { bottom_C: 75, top_C: 75 } },
      }),
    );
    const from = (over.at ?? 25_200) + 1;
    return series.channels.outlet_C.slice(from).findIndex((t) => t > 30) + 1;
  };
  // 8 m of 1/2 in PEX, 0.485 in by 0.625 in (ASTM F876): water of 992 kg/m3 and 4,179 J/(kg K), wall of 940 and 2,300.
  const bore = (Math.PI / 4) * (0.485 * 0.0254) ** 2;
  const wall = (Math.PI / 4) * (0.625 * 0.0254) ** 2 - bore;
  const capacity = 8 * (bore * 992 * 4179 + wall * 940 * 2300);
  const expected = capacity / (0.0992 * 4179);

  it('lasts until the pipe’s own content has been drawn', () => {
    expect(Math.abs(wait({ valve: null }) - expected)).toBeLessThan(1.5);
  });

  it('lasts no longer behind a valve that adds cold water', () => {
    expect(Math.abs(wait({ valve: 45 }) - expected)).toBeLessThan(1.5);
  });

  it('is warm yet a minute after the last draw', () => {
    const more = [drawOf({ at_s: 25_380, duration_s: 60, flow_m3_s: 1e-4, wanted_C: 40 })];
    expect(wait({ valve: 45, at: 25_380, more })).toBe(1);
  });
});
