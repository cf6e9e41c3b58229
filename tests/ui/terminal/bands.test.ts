import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Result, readScenario, simulate } from '../../../sim/index.ts';
import { type Bands, doubtful, figureBands } from '../../../ui/terminal/bands.ts';
import type { Loaded } from '../../../ui/terminal/load.ts';

const boat = JSON.parse(readFileSync(new URL('../../../scenarios/boat.json', import.meta.url), 'utf8'));

function loaded(json: Record<string, unknown>): Loaded {
  const read = readScenario(json);
  if (!read.ok) throw new Error('the example is broken');
  return { json, context: {}, read };
}

/** Of all doubts only those whose path starts so. */
function only(from: Loaded, start: string): Loaded {
  const filled = from.read.filled.filter(({ path }) => path.startsWith(start));
  return { ...from, read: { ...from.read, filled } };
}

describe('figureBands', () => {
  const whole = loaded(boat);
  let base: Result['figures'] = {};
  let bands: Bands;
  const told: number[] = [];
  beforeAll(() => {
    base = simulate(whole.read.plant).figures;
    bands = figureBands(whole, base, (fraction) => told.push(fraction));
  }, 60_000);

  it('hold the figure between their ends', () => {
    expect(bands.figures.size).toBeGreaterThan(5);
    for (const [key, { low, high }] of bands.figures) {
      expect(low, key).toBeLessThanOrEqual(base[key] ?? Number.NaN);
      expect(high, key).toBeGreaterThanOrEqual(base[key] ?? Number.NaN);
    }
  });

  it('try every doubt, and tell how far they are', () => {
    const doubts = doubtful(whole.read.filled);
    expect(doubts.length).toBeGreaterThan(10);
    expect(bands.untried.map(({ path }) => path)).toEqual([]);
    expect(bands.tried).toHaveLength(doubts.length);
    expect(told).toHaveLength(doubts.length);
    expect(told.at(-1)).toBe(1);
  });

  it('leave alone what the doubts cannot move', () => {
    // The file names the hours it runs.
    expect(bands.figures.has('engine_s')).toBe(false);
  });

  it('of one doubt reach exactly as far as the two runs do', () => {
    const one = only(whole, 'store.bridges');
    expect(one.read.filled).toHaveLength(1);
    const ends = [1.1, 2.5].map((bridges) => {
      const { plant } = loaded({ ...boat, store: { ...boat.store, bridges } }).read;
      return simulate(plant).figures.loss_J ?? Number.NaN;
    });
    const band = figureBands(one, base, () => {}).figures.get('loss_J');
    expect(band?.low).toBeCloseTo(ends[0], 6);
    expect(band?.high).toBeCloseTo(ends[1], 6);
    expect(band?.most.path).toBe('store.bridges');
  });

  it('never reach past what a figure can be', () => {
    for (const [key, { low }] of bands.figures) {
      if (/_(s|kg|m3)$/.test(key)) expect(low, key).toBeGreaterThanOrEqual(0);
    }
  });

  it('leave the scenario as it was', () => {
    expect(whole.json).toEqual(
      JSON.parse(readFileSync(new URL('../../../scenarios/boat.json', import.meta.url), 'utf8')),
    );
  });
});
