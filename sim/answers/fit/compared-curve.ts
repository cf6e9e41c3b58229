/** A log's readings beside what the run has at the same instants, as a curve to draw. */
import type { Curve } from '../answer.ts';
import type { FitAnswer } from './fit.ts';

/** One probe's readings and what the run has there. */
export function comparedCurve({ compared }: FitAnswer, probe: number): Curve {
  const own = compared.filter((each) => each.probe === probe);
  const y = { key: 'temperature_C', dimension: 'temperature' } as const;
  return {
    x: { key: 'time_s', dimension: 'time' },
    lines: [
      { name: 'measured', y, values: own.map(({ measured_C }) => measured_C) },
      { name: 'simulated', y, values: own.map(({ simulated_C }) => simulated_C) },
    ],
    at: own.map(({ time_s }) => time_s),
    present: null,
    knee: null,
  };
}
