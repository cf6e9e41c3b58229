/** Heat in above the line, heat out below it, stacked: the area of each is energy. */
import { area, curveStepAfter, ticks } from 'd3';
import { timeAxis, timeScale, timeTicks, upwardScale, valueAxis } from './frame.ts';
import { tag } from './svg.ts';
import type { TimeChartOptions } from './temperature-chart.ts';
import { groupBounds, groupMeans } from './thin.ts';

export interface HeatStream {
  /** Class of the area; its colour and pattern live in the style sheet and in `heatPatterns`. */
  key: string;
  side: 'in' | 'out';
  /** Mean power over the interval before each sample; where negative, it is drawn on the other side. */
  values: ArrayLike<number>;
}

export interface HeatData {
  time_s: ArrayLike<number>;
  interval_s: number;
  streams: HeatStream[];
}

interface Layered {
  key: string;
  from: Float64Array;
  to: Float64Array;
}

/** Streams piled from the zero line outwards, in the order given: ins upwards, outs downwards. */
export function pile(streams: HeatStream[], bounds: number[]): Layered[] {
  const groups = bounds.length - 1;
  const above = new Float64Array(groups);
  const below = new Float64Array(groups);
  return streams.flatMap(({ key, side, values }) => {
    const means = groupMeans(values, bounds);
    const sign = side === 'in' ? 1 : -1;
    return ([above, below] as const).flatMap((edge) => {
      const upward = edge === above;
      const from = edge.slice();
      let any = false;
      for (let group = 0; group < groups; group++) {
        const signed = sign * means[group];
        if (signed === 0 || signed > 0 !== upward) continue;
        edge[group] += signed;
        any = true;
      }
      return any ? [{ key, from, to: edge.slice() }] : [];
    });
  });
}

export function heatChart(data: HeatData, options: TimeChartOptions): string {
  const { frame, span } = options;
  const x = timeScale(frame, span);
  const bounds = groupBounds(data.time_s.length, frame.width - frame.left - frame.right);
  const layers = pile(data.streams, bounds);
  const { low, high, at } = heatRange(layers);
  const y = upwardScale(frame, low, high);
  // Sample i closes its interval: a group reaches from the end of the sample before it to its own last sample.
  const edge = (group: number) =>
    group === 0 ? data.time_s[0] - data.interval_s : data.time_s[bounds[group] - 1];
  const groups = Array.from(bounds.keys());
  const last = bounds.length - 2;
  const draw = (layer: Layered) =>
    area<number>()
      .x((group) => Math.max(frame.left, x(edge(group))))
      .y0((group) => y(layer.from[Math.min(group, last)]))
      .y1((group) => y(layer.to[Math.min(group, last)]))
      .curve(curveStepAfter)
      .digits(1)(groups) ?? '';
  return [
    valueAxis(frame, y, at, options.valueWords),
    timeAxis(frame, span, timeTicks(frame, span, options.apart_px), options.timeWords, options.apart_px),
    ...(data.time_s.length > 0
      ? layers.map((layer) => tag('path', { class: `heat ${layer.key}`, d: draw(layer) }))
      : []),
    tag('path', {
      class: 'zero',
      d: `M${frame.left},${Math.round(y(0) * 10) / 10}H${frame.width - frame.right}`,
    }),
  ].join('');
}

function heatRange(layers: Layered[]): { low: number; high: number; at: number[] } {
  let low = 0;
  let high = 0;
  for (const { to } of layers) {
    for (const value of to) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  }
  if (low === high) return { low: -1, high: 1, at: [0] };
  const room = (high - low) * 0.04;
  return { low: low - (low < 0 ? room : 0), high: high + (high > 0 ? room : 0), at: ticks(low, high, 5) };
}
