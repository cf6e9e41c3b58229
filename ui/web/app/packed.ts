/** A series as text, small enough to stand in the page: values in whole steps, each as its difference from the last. */
import type { Series } from '../../../sim/index.ts';

interface PackedValues {
  step: number;
  /** Base64 of the differences. */
  text: string;
}

export interface PackedSeries {
  interval_s: number;
  samples: number;
  height_m: number[];
  /** Layer after layer, each in the order of time: neighbours in time differ least. */
  layer_C: PackedValues;
  channels: Record<string, PackedValues>;
}

/** Finer than a tenth of a degree Fahrenheit by ten: what is shown is rounded but seldom another way. */
const temperatureStep_K = 0.005;
const powerStep_W = 0.5;
/** Steps from nothing to a channel's largest value, for what is neither. */
const otherSteps = 4096;

/** @throws RangeError for samples that are not evenly spaced from the start */
export function packSeries(series: Series): PackedSeries {
  const { interval_s, time_s, layers, height_m, layer_C, channels } = series;
  if (time_s.some((value, i) => value !== i * interval_s)) {
    throw new RangeError('series - expected evenly spaced samples from the start - got others - report this');
  }
  return {
    interval_s,
    samples: time_s.length,
    height_m: [...height_m],
    layer_C: packValues(turned(layer_C, time_s.length, layers), temperatureStep_K),
    channels: Object.fromEntries(
      Object.entries(channels).map(([key, values]) => [key, packValues(values, stepFor(key, values))]),
    ),
  };
}

export function unpackSeries({ interval_s, samples, height_m, layer_C, channels }: PackedSeries): Series {
  const layers = height_m.length;
  return {
    interval_s,
    time_s: Float64Array.from({ length: samples }, (_, i) => i * interval_s),
    layers,
    height_m: Float64Array.from(height_m),
    layer_C: turned(unpackValues(layer_C, samples * layers), layers, samples),
    channels: Object.fromEntries(
      Object.entries(channels).map(([key, values]) => [key, unpackValues(values, samples)]),
    ),
  };
}

function stepFor(key: string, values: Float32Array): number {
  if (key.endsWith('_C')) return temperatureStep_K;
  if (key.endsWith('_W')) return powerStep_W;
  const most = values.reduce((max, value) => Math.max(max, Math.abs(value) || 0), 0);
  return (most || 1) / otherSteps;
}

/** Rows become columns. */
function turned(values: Float32Array, rows: number, columns: number): Float32Array {
  const out = new Float32Array(values.length);
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < columns; c++) out[c * rows + r] = values[r * columns + c];
  }
  return out;
}

/**
 * Differences as whole numbers of seven bits a byte, the low ones first, a set eighth bit meaning that more follow;
 * odd is negative. A nought stands for values that are no numbers, and is followed by how many of them come.
 */
function packValues(values: Float32Array, step: number): PackedValues {
  const bytes: number[] = [];
  const put = (whole: number) => {
    let rest = whole;
    for (; rest >= 128; rest = Math.floor(rest / 128)) bytes.push((rest % 128) + 128);
    bytes.push(rest);
  };
  let last = 0;
  for (let i = 0; i < values.length; i++) {
    const value = Math.round(values[i] / step);
    if (Number.isNaN(value)) {
      let many = 1;
      while (i + 1 < values.length && Number.isNaN(values[i + 1])) {
        many++;
        i++;
      }
      put(0);
      put(many);
      continue;
    }
    const difference = value - last;
    put(1 + (difference < 0 ? -2 * difference - 1 : 2 * difference));
    last = value;
  }
  return { step, text: btoa(bytes.map((byte) => String.fromCharCode(byte)).join('')) };
}

function unpackValues({ step, text }: PackedValues, length: number): Float32Array {
  const bytes = atob(text);
  const values = new Float32Array(length);
  let place = 0;
  const take = () => {
    let whole = 0;
    for (let scale = 1; ; scale *= 128) {
      const byte = bytes.charCodeAt(place++);
      whole += (byte % 128) * scale;
      if (byte < 128) return whole;
    }
  };
  let last = 0;
  for (let i = 0; i < length; ) {
    const coded = take();
    if (coded === 0) {
      const end = i + take();
      values.fill(Number.NaN, i, end);
      i = end;
      continue;
    }
    const twice = coded - 1;
    last += twice % 2 === 1 ? -(twice + 1) / 2 : twice / 2;
    values[i++] = last * step;
  }
  return values;
}
