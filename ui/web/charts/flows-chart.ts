/**
 * Flows between places in columns from left to right, their widths to scale. Places are few and always the same, so
 * each has its column and its rank from the top; only sizes and heights follow from the flows.
 */
import { escapeText, label, px, tag } from './svg.ts';

export interface FlowPlace {
  key: string;
  column: number;
  /** Order from the top, in its column and among the other ends of its neighbours' flows. */
  rank: number;
  name: string;
}

export interface Flow {
  from: string;
  to: string;
  amount: number;
  /** Class of the band. */
  kind: string;
  /** The flow in words, shown when pointed at. */
  words: string;
}

export interface FlowsOptions {
  width: number;
  /** Room beside the last column for its names. */
  right: number;
  /** Height of all flows together. */
  thick: number;
  amountWords: (amount: number) => string;
}

/** Places of the last column have their two lines of words beside them, the others up to three above. */
const beside_px = 34;
const above_px = 44;
const between_px = 8;
const bar_px = 10;

interface Placed extends FlowPlace {
  amount: number;
  x: number;
  y: number;
  height: number;
}

export function flowsChart(places: FlowPlace[], all: Flow[], options: FlowsOptions) {
  const { width, right, thick, amountWords } = options;
  const flows = all.filter(({ amount }) => amount > 0);
  const last = Math.max(...places.map(({ column }) => column));
  const sumOf = (key: string, end: 'from' | 'to') =>
    flows.reduce((sum, flow) => sum + (flow[end] === key ? flow.amount : 0), 0);
  const there: Placed[] = places
    .map((place) => ({ ...place, amount: Math.max(sumOf(place.key, 'from'), sumOf(place.key, 'to')) }))
    .filter(({ amount }) => amount > 0)
    .sort((a, b) => a.rank - b.rank)
    .map((place) => ({ ...place, x: (place.column / last) * (width - right - bar_px), y: 0, height: 0 }));
  const columns = Array.from({ length: last + 1 }, (_, column) =>
    there.filter((place) => place.column === column),
  );
  const most = Math.max(...columns.map((column) => column.reduce((sum, { amount }) => sum + amount, 0)));
  const scale = most > 0 ? thick / most : 0;
  const by = new Map(there.map((place) => [place.key, place]));
  /** How far down its place each flow leaves and arrives: in the order of the other ends. */
  const offsets = (end: 'from' | 'to', other: 'from' | 'to') => {
    const used = new Map<string, number>();
    const sorted = [...flows].sort((a, b) => rankOf(a[other]) - rankOf(b[other]));
    return new Map(
      sorted.map((flow) => {
        const at = used.get(flow[end]) ?? 0;
        used.set(flow[end], at + flow.amount * scale);
        return [flow, at];
      }),
    );
  };
  const rankOf = (key: string) => by.get(key)?.rank ?? 0;
  const leaves = offsets('from', 'to');
  const arrives = offsets('to', 'from');
  /** From the right to the left, each as high as lets its greatest flow run level. */
  for (const column of columns.toReversed()) {
    let free = above_px;
    for (const place of column) {
      const main = flows
        .filter(({ from }) => from === place.key)
        .reduce<Flow | null>((best, flow) => (best && best.amount >= flow.amount ? best : flow), null);
      const level = main ? (by.get(main.to)?.y ?? 0) + (arrives.get(main) ?? 0) - (leaves.get(main) ?? 0) : 0;
      place.height = Math.max(1, place.amount * scale);
      place.y = Math.max(free, level);
      const room =
        place.column === last ? Math.max(place.height + between_px, beside_px) : place.height + above_px;
      free = place.y + room;
    }
  }
  const height =
    Math.max(
      0,
      ...there.map(({ y, height: tall, column }) => y + (column === last ? Math.max(tall, beside_px) : tall)),
    ) + 4;
  const bands = flows.flatMap((flow) => {
    const [a, b] = [by.get(flow.from), by.get(flow.to)];
    if (!a || !b) return [];
    const [from, to] = [a.y + (leaves.get(flow) ?? 0), b.y + (arrives.get(flow) ?? 0)];
    const d = band(a.x + bar_px, from, b.x, to, flow.amount * scale);
    return [tag('path', { class: `flow ${flow.kind}`, d }, tag('title', {}, escapeText(flow.words)))];
  });
  const bars = there.map(({ key, x, y, height: tall }) =>
    tag('rect', { class: `place ${key}`, x, y, width: bar_px, height: tall }),
  );
  const words = there.map(({ column, name, amount, x, y, height: tall }) => {
    if (column === last) {
      const middle = y + Math.min(tall, beside_px) / 2;
      const beside = x + bar_px + 6;
      return (
        label(name, beside, middle - 2, { class: 'name' }) + label(amountWords(amount), beside, middle + 11)
      );
    }
    // Sources have their words higher up: neighbours' names may stand closer than these are long.
    if (column === 0) {
      return (
        label(name, 0, y - 31, { class: 'name halo' }) +
        label(amountWords(amount), 0, y - 18, { class: 'halo' })
      );
    }
    return label(name, x + bar_px / 2, y - 5, { class: 'name halo', 'text-anchor': 'middle' });
  });
  return { height: Math.ceil(height), drawing: [...bands, ...bars, ...words].join('') };
}

/** As wide at its start as at its end. */
function band(x0: number, y0: number, x1: number, y1: number, width: number): string {
  const thick = Math.max(0.7, width);
  const middle = px((x0 + x1) / 2);
  const edge = (from: number, start: number, to: number, end: number) =>
    `${px(from)},${px(start)}C${middle},${px(start)} ${middle},${px(end)} ${px(to)},${px(end)}`;
  return `M${edge(x0, y0, x1, y1)}L${edge(x1, y1 + thick, x0, y0 + thick)}Z`;
}
