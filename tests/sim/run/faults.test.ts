import { describe, expect, it } from 'vitest';
import type { Fault, PlantDescription } from '../../../sim/parts/description.ts';
import { simulate } from '../../../sim/run/simulation.ts';
import { fullPlant } from '../support/plant.ts';

const DAY = 86_400;
const MONTH = 30 * DAY;

function playing(...faults: Fault[]): PlantDescription {
  return fullPlant({ run: { days: 2, layers: 5, tolerance: 1e-3, faults } });
}

const plain = simulate(playing());

describe('a run that plays a fault', () => {
  it('is the plain run to the bit where the fault begins after its end', () => {
    for (const kind of ['collector pump', 'engine', 'household'] as const) {
      const later = simulate(playing({ kind, from_s: MONTH, to_s: 2 * MONTH }));
      expect(later.figures).toEqual(plain.figures);
      expect(later.series).toEqual(plain.series);
    }
  });

  it('is the plain run to the bit until the fault begins', () => {
    const { series } = simulate(playing({ kind: 'engine', from_s: DAY, to_s: 2 * DAY }));
    const samples = series.time_s.findIndex((time_s) => time_s >= DAY);
    const first = (of: typeof series) => of.layer_C.slice(0, samples * of.layers);
    expect(samples).toBeGreaterThan(10);
    expect(first(series)).toEqual(first(plain.series));
    expect(series.layer_C).not.toEqual(plain.series.layer_C);
  });

  it('keeps the collectors’ pump, the engine or the taps still, and closes its balance', () => {
    const dead = simulate(playing({ kind: 'collector pump', from_s: 0, to_s: MONTH }));
    expect(plain.figures.collector_s).toBeGreaterThan(3600);
    expect(dead.figures.collector_s).toBe(0);
    expect(dead.figures.collector_C_max).toBeGreaterThan(plain.figures.collector_C_max ?? 0);
    const off = simulate(playing({ kind: 'engine', from_s: 0, to_s: MONTH }));
    expect(off.figures.engine_s).toBe(0);
    expect(off.figures.fuel_kg).toBe(0);
    const away = simulate(playing({ kind: 'household', from_s: 0, to_s: MONTH }));
    expect(away.figures.wanted_m3).toBe(0);
    for (const { ledger } of [dead, off, away]) expect(ledger.residual_percent).toBeLessThan(1e-6);
  });

  it('stops a pump or an engine that runs, and says so in the list of what happened', () => {
    const from_s = DAY + 13 * 3600;
    const { events } = simulate(playing({ kind: 'collector pump', from_s, to_s: from_s + 3600 }));
    const told = events.filter(({ part }) => part === 'collector pump');
    expect(told.map(({ name, time_s }) => [name, time_s])).toEqual([
      ['fault.begins', from_s],
      ['fault.over', from_s + 3600],
    ]);
  });

  it('cools the collector to a cold spell, and warns that failures are played', () => {
    const { figures, cautions } = simulate(
      playing({ kind: 'cold spell', from_s: DAY, to_s: 2 * DAY, temperature_C: -30 }),
    );
    expect(figures.collector_C_min).toBeGreaterThan(-30.5);
    expect(figures.collector_C_min).toBeLessThan(-20);
    expect(cautions.map(({ key }) => key)).toContain('faults_played');
    expect(plain.cautions.map(({ key }) => key)).not.toContain('faults_played');
  });

  it('never has a warmer store the longer the engine is off', () => {
    const ends = [0, 6, 18, 30, 48].map((hours) => {
      const { figures } = simulate(playing({ kind: 'engine', from_s: 0, to_s: hours * 3600 }));
      return figures.store_mean_C_end ?? Number.NaN;
    });
    for (let i = 1; i < ends.length; i++) expect(ends[i]).toBeLessThanOrEqual(ends[i - 1] + 0.05);
    expect(ends[4]).toBeLessThan(ends[0] - 2);
  });
});
