/** Seeded logs with known values drawn from their priors: how often the fit's band holds them. */
import { fitAnswer } from '../../../../sim/answers/fit/fit.ts';
import { doHere, type Edit } from '../../../../sim/index.ts';
import { normalDeviates, seededRandom } from '../../../../sim/numerics/random.ts';
import { logged, madeLog } from './made-log.ts';

export interface Recovery {
  /** Told values whose band holds the true one, and all told values. */
  held: number;
  told: number;
  /** Logs that told nothing. */
  refused: number;
}

/** Every other log is a cool-down of a night; the rest are a day and a half with draws and the engine. */
export async function recoveries(seeds: readonly number[]): Promise<Recovery> {
  const found = { held: 0, told: 0, refused: 0 };
  const scenario = logged();
  for (const seed of seeds) {
    const coolDown = seed % 2 === 0;
    const uniform = seededRandom(seed);
    const normal = normalDeviates(uniform);
    const within = (low: number, high: number) => low * (high / low) ** uniform();
    const truth = {
      'store.bridges': within(1.1, 2.5),
      'coils[0].outside_film': within(0.5, 1.2),
      'coils[1].outside_film': within(0.5, 1.2),
      'engine.jacket_share': within(0.18, 0.33),
    };
    const edits: Edit[] = Object.entries(truth).map(([path, value]) => ({
      path,
      value: path === 'engine.jacket_share' ? `${100 * value} %` : value,
    }));
    const still = [
      { path: 'taps', value: undefined },
      { path: 'engine.runs', value: { kind: 'timetable', spans: [] } },
    ];
    const log = madeLog(scenario, {
      truth: coolDown ? [...still, ...edits] : edits,
      seed: seed + 1000,
      from_h: coolDown ? 20 : 12,
      to_h: coolDown ? 32 : 48,
      every_min: coolDown ? 20 : 30,
      noise_K: 0.15,
      offsets_K: [0.3 * normal(), 0.3 * normal()],
      gaps: 0.2,
    });
    try {
      const { inputs } = await fitAnswer({
        scenario,
        context: {},
        doJobs: doHere(scenario, {}),
        log,
        coolDown,
      });
      for (const { path, told, low, high } of inputs) {
        if (!told) continue;
        const value = truth[path as keyof typeof truth];
        found.told++;
        if (low <= value && value <= high) found.held++;
      }
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      found.refused++;
    }
  }
  return found;
}
