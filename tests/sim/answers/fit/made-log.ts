/** Logs as an owner might have kept them, made from runs with known values, noise, offsets and gaps. */
import { doJob, type Edit, type Scenario } from '../../../../sim/index.ts';
import { normalDeviates, seededRandom } from '../../../../sim/numerics/random.ts';
import { smallScenario } from '../small.ts';

export interface MadeLog {
  truth: Edit[];
  seed: number;
  from_h: number;
  to_h: number;
  every_min: number;
  noise_K: number;
  /** By probe, bottom first. */
  offsets_K: [number, number];
  /** Share of rows that are missing. */
  gaps: number;
  fahrenheit?: boolean;
}

const HEIGHTS_CM = [10, 70];

/** The small box with nothing given that a fit should find. */
export function logged(over: Record<string, unknown> = {}): Scenario {
  return smallScenario(over);
}

export function madeLog(scenario: Scenario, made: MadeLog): string {
  const { seed, from_h, to_h, every_min, noise_K, offsets_K, gaps, fahrenheit = false } = made;
  const uniform = seededRandom(seed);
  const normal = normalDeviates(uniform);
  const times_s: number[] = [];
  for (let t = from_h * 3600; t <= to_h * 3600; t += every_min * 60) {
    if (times_s.length === 0 || uniform() >= gaps) times_s.push(t);
  }
  const points = times_s.flatMap((time_s) =>
    HEIGHTS_CM.map((cm) => ({ time_s, place: { kind: 'height' as const, height_m: cm / 100 } })),
  );
  const days = { path: 'run.days', value: Math.ceil(to_h / 24) };
  const often = { path: 'run.interval', value: '5 min' };
  const log = { begins_s: from_h * 3600, points };
  const done = doJob(scenario, { edits: [days, often, ...made.truth], log }, {});
  if (!done.ok) throw new Error(done.problem);
  const values = done.modelled_C ?? [];
  const rows = times_s.map((time_s, row) => {
    const day = 10 + Math.floor(time_s / 86_400);
    const minutes = Math.round((time_s % 86_400) / 60);
    const clock = `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
    const read = HEIGHTS_CM.map((_, probe) => {
      const value = values[2 * row + probe];
      if (value === null) return '';
      const celsius = value + offsets_K[probe] + noise_K * normal();
      return (fahrenheit ? 32 + 1.8 * celsius : celsius).toFixed(2);
    });
    return `2027-01-${day} ${clock},${read.join(',')}`;
  });
  const unit = fahrenheit ? 'F' : 'C';
  return [`time,at 10 cm (${unit}),at 70 cm (${unit})`, ...rows].join('\n');
}
