/** Runs of the example scenarios for measurements, and how far two of them are apart. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../../../scripts/build.mjs';
import { type PlantDescription, type Result, readScenario, simulate } from '../../../sim/index.ts';

/** What of a run is varied; `layers` may go beyond what a file may ask for. */
export interface Variation {
  days: number;
  layers?: number;
  tolerance?: number;
}

/** The plant of an example scenario, hourly samples. */
function exampleOf(name: string, { days, layers, tolerance }: Variation): PlantDescription {
  const json = JSON.parse(readFileSync(join(root, 'scenarios', `${name}.json`), 'utf8'));
  const read = readScenario({ ...json, run: { ...json.run, days, interval: '1 h' } });
  if (!read.ok) throw new Error(`${name} - ${read.problems.map((p) => `${p.path}: ${p.got}`).join('; ')}`);
  const { run } = read.plant;
  return {
    ...read.plant,
    run: { ...run, layers: layers ?? run.layers, tolerance: tolerance ?? run.tolerance },
  };
}

export function runExample(name: string, variation: Variation): Result {
  return simulate(exampleOf(name, variation));
}

/** Figure of a run as a share of the reference's, less 1. */
export function apart(key: string, run: Result, reference: Result): number {
  return (run.figures[key] ?? Number.NaN) / (reference.figures[key] ?? Number.NaN) - 1;
}

/** Differences of all layers at all samples [K], sorted by size; the reference's layers are averaged to the run's. */
export function layerErrors(run: Result, reference: Result): Float64Array {
  const { layers, layer_C, time_s } = run.series;
  const fine = reference.series;
  const per = fine.layers / layers;
  const errors = new Float64Array(time_s.length * layers);
  for (let i = 0; i < errors.length; i++) {
    let mean = 0;
    for (let k = 0; k < per; k++) mean += fine.layer_C[i * per + k] / per;
    errors[i] = Math.abs(layer_C[i] - mean);
  }
  return errors.sort();
}

export function rms(errors: Float64Array): number {
  return Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length);
}

/** Value below which a share of the sorted errors lies. */
export function quantile(sorted: Float64Array, share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
}
