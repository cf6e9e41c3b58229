/** A result as the charts of the Days panel want it: in the reader's units, by height, in and out. */
import type { Result, Series } from '../../../sim/index.ts';
import { storeWords, type Units } from '../../words/index.ts';
import type { TimeSpan } from '../charts/frame.ts';
import type { HeatData } from '../charts/heat-chart.ts';
import type { FieldData } from '../charts/height-field.ts';
import type { FieldScale } from '../charts/palette.ts';
import type { TemperatureData } from '../charts/temperature-chart.ts';
import { type ScreenUnit, screenUnits } from './screen-units.ts';

export interface DaysData {
  span: TimeSpan;
  temperature: TemperatureData;
  field: FieldData;
  fieldScale: FieldScale;
  /** Highest temperature wanted at the tap, in the reader's units; null where nothing is drawn. */
  usable: number | null;
  heat: HeatData;
  units: { temperature: ScreenUnit; power: ScreenUnit; length: ScreenUnit };
}

/** Comfortable at a tap: where the field's colours turn when nobody draws and nothing is wanted. */
const comfortable_C = 40;

export function daysData({ series, days }: Result, system: Units): DaysData {
  const units = screenUnits(system);
  const { time_s } = series;
  const layerValues = convert(series.layer_C, units.temperature);
  const wanted_C = highest(series.channels.wanted_C);
  const usable = wanted_C === null ? null : units.temperature.of(wanted_C);
  const height = convert(series.height_m, units.length);
  const layerLine = (key: keyof typeof storeWords, share: number) => ({
    key,
    label: storeWords[key],
    values: Float64Array.from(time_s, (_, i) => units.temperature.of(layerAt(series, share, i))),
  });
  const [low, high] = extent(layerValues);
  return {
    span: { from_s: 0, to_s: days * 86_400 },
    temperature: {
      time_s,
      lines: [layerLine('top', 1), layerLine('middle', 0.5), layerLine('bottom', 0)],
      reference: usable,
      cold: coldSpans(series),
    },
    field: { time_s, height, depth: depthOf(height), values: layerValues },
    fieldScale: { low, high, pivot: usable ?? units.temperature.of(comfortable_C) },
    usable,
    heat: {
      time_s,
      interval_s: series.interval_s,
      streams: streamsOf(series).map(({ key, side }) => ({
        key,
        side,
        values: Float64Array.from(time_s, (_, i) => units.power.of(heatAt(series, key, i))),
      })),
    },
    units,
  };
}

/** Temperature at a share of the way from the bottom layer to the top one; between two layers, their mean. */
export function layerAt({ layer_C, layers }: Series, share: number, sample: number): number {
  const place = share * (layers - 1);
  return (layer_C[sample * layers + Math.floor(place)] + layer_C[sample * layers + Math.ceil(place)]) / 2;
}

/** The streams into and out of the store in the order in which the chart piles them, and their channels. */
export const heatStreams = [
  { key: 'engine', side: 'in', channels: ['engine_W'] },
  { key: 'sun', side: 'in', channels: ['collector_W'] },
  // Losses next to the zero line: they never stop, and would be torn apart by the draws.
  { key: 'losses', side: 'out', channels: ['loss_W', 'evaporation_W'] },
  { key: 'household', side: 'out', channels: ['household_W'] },
] as const;

export type HeatKey = (typeof heatStreams)[number]['key'];

const channelsOf = new Map<HeatKey, readonly string[]>(
  heatStreams.map(({ key, channels }) => [key, channels]),
);

/** Power of a stream at a sample, W; a plant without the part has no channel, and the stream no power. */
export function heatAt({ channels }: Series, key: HeatKey, sample: number): number {
  let sum = 0;
  for (const name of channelsOf.get(key) ?? []) sum += channels[name]?.[sample] ?? 0;
  return sum;
}

/** The streams that this plant has: one that never carried anything is not there. */
export function streamsOf(series: Series): (typeof heatStreams)[number][] {
  return heatStreams.filter(({ channels }) =>
    channels.some((name) => series.channels[name]?.some((power_W) => power_W !== 0)),
  );
}

/** Shorter than this is a moment while the pipe warms; a shower too counts as cold from here on, in the figures. */
const felt_s = 20;

/** Spells in which water ran colder than wanted for long enough to be felt, by whole intervals of samples. */
export function coldSpans({ channels, time_s, interval_s }: Series): TimeSpan[] {
  const spans: TimeSpan[] = [];
  for (const [i, cold_s] of (channels.ran_cold_s ?? []).entries()) {
    if (cold_s < Math.min(felt_s, interval_s)) continue;
    const last = spans[spans.length - 1];
    const from_s = time_s[i] - interval_s;
    if (last && last.to_s >= from_s) last.to_s = time_s[i];
    else spans.push({ from_s, to_s: time_s[i] });
  }
  return spans;
}

/** The middle of the topmost layer is half a layer below the water's surface. */
function depthOf(height: Float64Array): number {
  const top = height.length - 1;
  if (top === 0) return 2 * height[0];
  return height[top] + (height[top] - height[top - 1]) / 2;
}

function convert(values: ArrayLike<number>, unit: ScreenUnit): Float64Array {
  return Float64Array.from(values, unit.of);
}

function extent(values: Float64Array): [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return [low, high];
}

function highest(values: Float32Array | undefined): number | null {
  let found: number | null = null;
  for (const value of values ?? [])
    if (found === null || value > found) found = Number.isFinite(value) ? value : found;
  return found;
}
