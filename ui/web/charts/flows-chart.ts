/**
 * Flows between places in columns from left to right, their widths to scale. Places are few and always the same, so
 * each has its column and its turn in it; only their sizes follow from the flows.
 */
import { escapeText, label, px, tag } from './svg.ts';

export interface FlowPlace {
  key: string;
  column: number;
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

/** Every place has this much to itself: two lines of words. */
const slot_px = 34;
const bar_px = 10;
const top_px = 34;

interface Placed extends FlowPlace {
  amount: number;
  x: number;
  y: number;
  height: number;
}

export function flowsChart(places: FlowPlace[], flows: Flow[], options: FlowsOptions) {
  const { width, right, thick, amountWords } = options;
  const sumOf = (key: string, end: 'from' | 'to') =>
    flows.filter((flow) => flow[end] === key).reduce((sum, { amount }) => sum + amount, 0);
  const there = places
    .map((place) => ({ ...place, amount: Math.max(sumOf(place.key, 'from'), sumOf(place.key, 'to')) }))
    .filter(({ amount }) => amount > 0);
  const last = Math.max(...places.map(({ column }) => column));
  const columns = Array.from({ length: last + 1 }, (_, column) =>
    there.filter((each) => each.column === column),
  );
  const most = Math.max(...columns.map((column) => column.reduce((sum, { amount }) => sum + amount, 0)));
  const scale = most > 0 ? thick / most : 0;
  const placed: Placed[] = [];
  let height = 0;
  for (const [column, members] of columns.entries()) {
    let y = top_px;
    for (const member of members) {
      const tall = Math.max(1, member.amount * scale);
      const x = (column / last) * (width - right - bar_px);
      placed.push({ ...member, x, y, height: tall });
      y += Math.max(tall + 8, slot_px);
      height = Math.max(height, y);
    }
  }
  // Flows leave and arrive in the order of their other ends, so that they cross as little as they can.
  const order = (key: string) => placed.findIndex((place) => place.key === key);
  const placeOf = (key: string) => placed[order(key)];
  const used = new Map<string, number>();
  const take = (key: string, amount: number) => {
    const from = used.get(key) ?? 0;
    used.set(key, from + amount * scale);
    return from;
  };
  const sorted = flows
    .filter(({ amount }) => amount > 0)
    .sort((a, b) => order(a.from) - order(b.from) || placeOf(a.to).y - placeOf(b.to).y);
  const starts = new Map(sorted.map((flow) => [flow, take(`from ${flow.from}`, flow.amount)]));
  const arriving = [...sorted].sort((a, b) => placeOf(a.from).y - placeOf(b.from).y);
  const ends = new Map(arriving.map((flow) => [flow, take(`to ${flow.to}`, flow.amount)]));
  const bands = sorted.map((flow) => {
    const [a, b] = [placeOf(flow.from), placeOf(flow.to)];
    const d = band(
      a.x + bar_px,
      a.y + (starts.get(flow) ?? 0),
      b.x,
      b.y + (ends.get(flow) ?? 0),
      flow.amount * scale,
    );
    return tag('path', { class: `flow ${flow.kind}`, d }, tag('title', {}, escapeText(flow.words)));
  });
  const bars = placed.map(({ key, x, y, height: tall }) =>
    tag('rect', { class: `place ${key}`, x, y, width: bar_px, height: tall }),
  );
  const words = placed.map(({ column, name, amount, x, y, height: tall }) => {
    if (column === last) {
      const middle = y + Math.min(tall, slot_px) / 2;
      return (
        label(name, x + bar_px + 6, middle - 2, { class: 'name' }) +
        label(amountWords(amount), x + bar_px + 6, middle + 11)
      );
    }
    // A name over a bar in the middle must not run out at the left.
    const at = column === 0 ? { x: 0, anchor: 'start' } : { x: x + bar_px / 2, anchor: 'middle' };
    const amountLine = column === 0 ? label(amountWords(amount), 0, y - 4, { class: 'halo' }) : '';
    return (
      label(name, at.x, column === 0 ? y - 17 : y - 5, { class: 'name halo', 'text-anchor': at.anchor }) +
      amountLine
    );
  });
  return { height: Math.ceil(height), drawing: [...bands, ...bars, ...words].join('') };
}

/** As wide at its start as at its end. */
function band(x0: number, y0: number, x1: number, y1: number, width: number): string {
  const thick = Math.max(0.7, width);
  const middle = px((x0 + x1) / 2);
  const edge = (from: number, to: number, at: number, start: number) =>
    `${px(from)},${px(start)}C${middle},${px(start)} ${middle},${px(at)} ${px(to)},${px(at)}`;
  return `M${edge(x0, x1, y1, y0)}L${edge(x1, x0, y0 + thick, y1 + thick)}Z`;
}
