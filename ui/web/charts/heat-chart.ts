/**
 * Heat in above the line, heat out below it, stacked: the area of each is energy. Where samples are closer than they can
 * be drawn, their means are stacked, and the greatest of all that they take together shows pale behind them.
 */
import { ticks } from 'd3';
import { axes, type ChartOptions, inside, plotWidth, type Range, timeScale, upwardScale } from './frame.ts';
import { px, tag } from './svg.ts';
import { extent, groupSize, groupsInView, groupsOf, once, stepFor } from './thin.ts';

export interface HeatStream {
  /** Class of the area; its colour and pattern live in the style sheet. */
  key: string;
  side: 'in' | 'out';
  /** Mean power over the interval before each sample; where negative, it is drawn on the other side. */
  values: ArrayLike<number>;
}

export interface HeatSeries {
  time_s: ArrayLike<number>;
  interval_s: number;
  streams: HeatStream[];
}

export interface HeatData extends HeatSeries {
  /** A pinned design's heat: the outline of all in and all out. */
  ghost?: HeatSeries | undefined;
  /** Key of the stream that is drawn stronger. */
  chosen?: string | undefined;
}

interface Layered {
  key: string;
  from: Float64Array;
  to: Float64Array;
}

/** Groups of samples that are drawn as one. */
interface Pieces {
  step: number;
  first: number;
  last: number;
}

/** Streams piled from the zero line outwards, in the order given: ins upwards, outs downwards. */
export function pile(streams: HeatStream[], { step, first, last }: Pieces): Layered[] {
  const groups = Math.max(0, last - first + 1);
  const above = new Float64Array(groups);
  const below = new Float64Array(groups);
  return streams.flatMap(({ key, side, values }) => {
    const { sum } = groupsOf(values, step);
    const sign = side === 'in' ? 1 : -1;
    return ([above, below] as const).flatMap((edge) => {
      const upward = edge === above;
      const from = edge.slice();
      let any = false;
      for (let i = 0; i < groups; i++) {
        const signed = (sign * sum[first + i]) / groupSize(values.length, first + i, step) || 0;
        if (signed === 0 || signed > 0 !== upward) continue;
        edge[i] += signed;
        any = true;
      }
      return any ? [{ key, from, to: edge.slice() }] : [];
    });
  });
}

/** All that goes in, and less all that goes out, at each sample: the ends of its pile. */
function pileEnds({ time_s, streams }: HeatSeries): { up: Float64Array; down: Float64Array } {
  return once(streams, 'ends', () => {
    const up = new Float64Array(time_s.length);
    const down = up.slice();
    for (const { side, values } of streams) {
      for (let i = 0; i < up.length; i++) {
        const signed = (side === 'in' ? values[i] : -values[i]) || 0;
        if (signed > 0) up[i] += signed;
        else down[i] += signed;
      }
    }
    return { up, down };
  });
}

/** Lowest and highest pile of the whole run, whatever is in view: a chart that rescales while it is panned cannot be read. */
function pileReach(series: HeatSeries): [number, number] {
  const { up, down } = pileEnds(series);
  return extent([0], up, down) ?? [0, 0];
}

/** Samples that are drawn as one. Not below two pixels: an area of fractions of one is not sharper, only slower. */
export function heatStep(
  { time_s }: HeatSeries,
  { frame, span }: Pick<ChartOptions, 'frame' | 'span'>,
): number {
  return stepFor(time_s, span, plotWidth(frame) / 2);
}

/** Highest and lowest end of the piles in each group. */
function peaksOf(series: HeatSeries, { step, first, last }: Pieces): Float64Array[] {
  const { up, down } = pileEnds(series);
  return [groupsOf(up, step).high, groupsOf(down, step).low].map((ends) =>
    Float64Array.from({ length: last - first + 1 }, (_, i) => ends[first + i]),
  );
}

function heatRange(reaches: [number, number][], of: (value: number) => number): Range {
  const low = of(Math.min(...reaches.map(([least]) => least)));
  const high = of(Math.max(...reaches.map(([, most]) => most)));
  if (low === high) return { low: -1, high: 1, at: [0] };
  const room = (high - low) * 0.04;
  return { low: low - (low < 0 ? room : 0), high: high + (high > 0 ? room : 0), at: ticks(low, high, 5) };
}

export function heatChart(data: HeatData, options: ChartOptions): string {
  const { frame, span, of } = options;
  const x = timeScale(frame, span);
  const all = data.ghost ? [data, data.ghost] : [data];
  const { low, high, at } = heatRange(all.map(pileReach), of);
  const place = upwardScale(frame, low, high);
  const y = (value: number) => place(of(value));
  const draw = (series: HeatSeries) => {
    const { time_s, interval_s, streams } = series;
    const step = heatStep(series, options);
    const [first, last] = groupsInView(time_s, span, step);
    // Sample i closes its interval: a group reaches from the end of the sample before it to its own last sample.
    const edges = Array.from({ length: last - first + 2 }, (_, i) => {
      const sample = Math.min(time_s.length, (first + i) * step) - 1;
      return x(sample < 0 ? time_s[0] - interval_s : time_s[sample]);
    });
    return { layers: pile(streams, { step, first, last }), edges, pieces: { step, first, last } };
  };
  const { layers, edges, pieces } = draw(data);
  const shadow = data.ghost ? draw(data.ghost) : null;
  const areas = layers.map(({ key, from, to }) =>
    tag('path', {
      class: `heat ${key}${key === data.chosen ? ' chosen' : ''}`,
      d: `${stairs(edges, to, y)}${stairs(edges, from, y, true)}Z`,
    }),
  );
  const peaks = pieces.step > 1 ? peaksOf(data, pieces) : [];
  const level = new Float64Array(edges.length - 1);
  const pale = peaks.map((to) =>
    tag('path', { class: 'heat peak', d: `${stairs(edges, to, y)}${stairs(edges, level, y, true)}Z` }),
  );
  const outline = (layer: Layered) =>
    tag('path', { class: 'ghost', d: stairs(shadow?.edges ?? [], layer.to, y) });
  const outermost = (up: boolean) =>
    (shadow?.layers ?? [])
      .filter(({ from, to }) => to.some((v, i) => v !== from[i] && v > 0 === up))
      .slice(-1);
  return [
    axes(options, place, at),
    inside(
      frame,
      ...(data.time_s.length > 0 ? [...pale, ...areas] : []),
      ...[...outermost(true), ...outermost(false)].map(outline),
    ),
    tag('path', { class: 'zero', d: `M${frame.left},${px(y(0))}H${frame.width - frame.right}` }),
  ].join('');
}

/** Each value level between its two edges; neighbours that are alike are one. Backwards to close an area. */
function stairs(
  edges: number[],
  values: Float64Array,
  y: (value: number) => number,
  backwards = false,
): string {
  const count = values.length;
  let path = '';
  let before = '';
  for (let i = 0; i < count; i++) {
    const at = backwards ? count - 1 - i : i;
    const height = px(y(values[at]));
    if (height === before) continue;
    const edge = px(edges[backwards ? at + 1 : at]);
    path += i === 0 ? `${backwards ? 'L' : 'M'}${edge},${height}` : `H${edge}V${height}`;
    before = height;
  }
  return count > 0 ? `${path}H${px(edges[backwards ? 0 : count])}` : path;
}
