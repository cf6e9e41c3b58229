/** What a run has where and when an owner's log was read. */
import type { Series } from '../../run/result.ts';

/** Where a probe hangs: at a height above the inside bottom, in a stirred store, or in the coil's outlet. */
export type ProbePlace = { kind: 'height'; height_m: number } | { kind: 'stirred' } | { kind: 'outlet' };

export interface LogPoint {
  /** Since the run's first midnight. */
  time_s: number;
  place: ProbePlace;
}

/** The points of a log, and when in the first day it begins: the start temperatures hold then. */
export interface LogPoints {
  begins_s: number;
  points: LogPoint[];
}

/** Temperatures of a run at points of a log [C], linear between samples; null where the run has none. */
export function modelled(series: Series, points: readonly LogPoint[]): (number | null)[] {
  const { time_s, interval_s } = series;
  return points.map(({ time_s: at, place }) => {
    const steps = (at - time_s[0]) / interval_s;
    if (!(steps >= -1e-6 && steps <= time_s.length - 1 + 1e-6)) return null;
    const before = Math.min(time_s.length - 1, Math.max(0, Math.floor(steps + 1e-6)));
    const after = Math.min(time_s.length - 1, before + 1);
    const share = Math.min(1, Math.max(0, steps - before));
    const [from, to] = [before, after].map((sample) => atSample(series, sample, place));
    // A tap opens or closes between two samples: only one of them has an outlet.
    const value = Number.isNaN(from) ? to : Number.isNaN(to) ? from : from + share * (to - from);
    return Number.isFinite(value) ? value : null;
  });
}

function atSample(series: Series, sample: number, place: ProbePlace): number {
  if (place.kind === 'outlet') return series.channels.coil_outlet_C?.[sample] ?? Number.NaN;
  const { layers, height_m, layer_C } = series;
  const layer = (k: number) => layer_C[sample * layers + k];
  if (place.kind === 'stirred') {
    let sum = 0;
    for (let k = 0; k < layers; k++) sum += layer(k);
    return sum / layers;
  }
  let above = 0;
  while (above < layers && height_m[above] < place.height_m) above++;
  if (above === 0) return layer(0);
  if (above === layers) return layer(layers - 1);
  const share = (place.height_m - height_m[above - 1]) / (height_m[above] - height_m[above - 1]);
  return layer(above - 1) + share * (layer(above) - layer(above - 1));
}
