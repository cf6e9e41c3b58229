/** How far a log's readings moved. */
import { formatBoth } from '../../quantity/index.ts';
import type { Log } from './read-log.ts';

/** Of the probe that moves most [K]: what lies between two probes is not heat that went. */
export function mostMoved(readings: Log['readings']): number {
  const ends = new Map<number, [number, number]>();
  for (const { probe, value_C } of readings) {
    const [low, high] = ends.get(probe) ?? [value_C, value_C];
    ends.set(probe, [Math.min(low, value_C), Math.max(high, value_C)]);
  }
  return Math.max(...Array.from(ends.values(), ([low, high]) => high - low));
}

/** In both systems: `3.2 °F (1.8 K)`. */
export function differenceText(value_K: number): string {
  return formatBoth(value_K, 'temperature_difference', { digits: 2 });
}
