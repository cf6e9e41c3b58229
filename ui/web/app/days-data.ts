/** A result as the charts of the Days panels want it: which arrays to draw, over which range, in which unit. */
import type { Result, RunEvent, Series } from '../../../sim/index.ts';
import { daysWords, storeWords, type Units } from '../../words/index.ts';
import { rangeOf, type TimeSpan } from '../charts/frame.ts';
import type { HeatData, HeatSeries } from '../charts/heat-chart.ts';
import type { FieldData } from '../charts/height-field.ts';
import type { Line, LinesData } from '../charts/lines-chart.ts';
import type { FieldScale } from '../charts/palette.ts';
import type { Row } from '../charts/rows-chart.ts';
import { extent, once } from '../charts/thin.ts';
import { type ScreenUnit, screenUnits } from './screen-units.ts';

/** What the panels need of a run that is shown. */
export interface DaysShown {
  /** What it is the run of. */
  scenario?: unknown;
  result: Result;
  /** Monday 0. */
  firstWeekday: number;
  /** Days asked for, where a run that is still going on has come only so far. */
  ofDays?: number;
}

/** What may stand beside the run: a closer look at a stretch of it, and a pinned design's run. */
export interface Beside {
  closer?: Series | null;
  pinned?: Result | null;
}

export interface DaysData {
  whole: TimeSpan;
  /** What is drawn and stepped through: the run's samples, or closer ones. */
  series: Series;
  temperatures: LinesData;
  /** The field in SI, its scale and the line of usable water: drawn in SI, worded in the reader's units. */
  field: FieldData;
  fieldScale: FieldScale;
  ghostField: FieldData | null;
  /** Highest temperature wanted at the tap; null where nothing is drawn. */
  usable_C: number | null;
  heat: HeatData;
  rows: Row[];
  water: LinesData | null;
  sun: LinesData | null;
  tap: LinesData | null;
  units: ReturnType<typeof screenUnits>;
}

/** Comfortable at a tap: where the field's colours turn when nobody draws and nothing is wanted. */
const comfortable_C = 40;

export function daysData({ result, ofDays }: DaysShown, reader: Units, beside: Beside = {}): DaysData {
  const { series: own, events } = result;
  const whole = { from_s: 0, to_s: (ofDays ?? result.days) * 86_400 };
  const units = screenUnits(reader);
  const series = beside.closer ?? own;
  const ghost = beside.pinned?.series ?? null;
  const wanted = own.channels.wanted_C ? extent(own.channels.wanted_C) : null;
  const usable_C = wanted?.[1] ?? null;
  const cold = coldSpans(series);
  const layerLines = (of: Series): Line[] =>
    (['top', 'middle', 'bottom'] as const).map((key, i) => ({
      key,
      label: storeWords[key],
      values: layerLine(of, 1 - i / 2),
    }));
  const channelLines = (keys: readonly (keyof typeof daysWords.lines)[], of: Series): Line[] =>
    keys.flatMap((key) =>
      of.channels[key] ? [{ key, label: daysWords.lines[key], values: of.channels[key] }] : [],
    );
  /** Lines of a panel over a range that holds them, a pinned design's and a level, whatever is in view. */
  const panel = (
    linesOf: (of: Series) => Line[],
    { of }: ScreenUnit,
    more: Partial<LinesData> = {},
    floor: number[] = [],
  ): LinesData => {
    const ghosts = ghost ? { time_s: ghost.time_s, lines: linesOf(ghost) } : undefined;
    const arrays = [...linesOf(own), ...linesOf(series), ...(ghosts?.lines ?? [])].map(
      ({ values }) => values,
    );
    const [low, high] = extent(...arrays, floor) ?? [0, 1];
    const { time_s } = series;
    return {
      time_s,
      lines: linesOf(series),
      range: rangeOf(of(low), of(high)),
      reference: null,
      cold: [],
      ghosts,
      ...more,
    };
  };
  const channelPanel = (
    keys: readonly (keyof typeof daysWords.lines)[],
    unit: ScreenUnit,
    more: Partial<LinesData> = {},
    floor: number[] = [],
  ): LinesData | null =>
    keys.some((key) => carries(own.channels[key]))
      ? panel((of) => channelLines(keys, of), unit, more, floor)
      : null;
  const layers_C = extent(own.layer_C, ...(ghost ? [ghost.layer_C] : [])) ?? [0, 1];
  return {
    whole,
    series,
    temperatures: panel(
      layerLines,
      units.temperature,
      { reference: usable_C, cold, named: true },
      usable_C === null ? [] : [usable_C],
    ),
    field: fieldOf(series),
    fieldScale: { low: layers_C[0], high: layers_C[1], pivot: usable_C ?? comfortable_C },
    ghostField: ghost ? fieldOf(ghost) : null,
    usable_C,
    heat: { ...heatOf(own, series), ghost: ghost ? heatOf(ghost) : undefined },
    rows: rowsOf(events, cold, result.days * 86_400),
    water: channelPanel(['mixed_flow_m3_s', 'hot_flow_m3_s'], units.flow, { steps: true }, [0]),
    sun: channelPanel(['sun_W_m2'], units.irradiance, {}, [0]),
    tap: channelPanel(['outlet_C', 'wanted_C', 'hot_line_C', 'coil_outlet_C'], units.temperature, { cold }),
    units,
  };
}

/** Whether anything was ever more than nothing. */
function carries(values: Float32Array | undefined): boolean {
  const reach = values && extent(values);
  return reach ? reach[0] !== 0 || reach[1] !== 0 : false;
}

/** Temperature at a share of the way from the bottom layer to the top one; between two layers, their mean. */
export function layerAt({ layer_C, layers }: Series, share: number, sample: number): number {
  const place = share * (layers - 1);
  return (layer_C[sample * layers + Math.floor(place)] + layer_C[sample * layers + Math.ceil(place)]) / 2;
}

export function layerLine(series: Series, share: number): Float32Array {
  return once(series.layer_C, `line ${share}`, () => {
    const values = new Float32Array(series.time_s.length);
    for (let i = 0; i < values.length; i++) values[i] = layerAt(series, share, i);
    return values;
  });
}

function fieldOf({ time_s, height_m, layer_C }: Series): FieldData {
  return { time_s, height: height_m, depth: depthOf(height_m), values: layer_C };
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

/** Power of a stream at every sample; a plant without the part has no channel, and the stream no power. */
export function heatValues({ channels, time_s }: Series, key: HeatKey): ArrayLike<number> {
  const stream = heatStreams.find((each) => each.key === key);
  const found = (stream?.channels ?? []).flatMap((name) => channels[name] ?? []);
  if (found.length === 0) return once(time_s, 'nothing', () => new Float32Array(time_s.length));
  if (found.length === 1) return found[0];
  return once(found[0], 'with others', () => found[0].map((value, i) => value + found[1][i]));
}

/** The streams that this plant has: one that never carried anything is not there. */
function streamsOf(series: Series): (typeof heatStreams)[number][] {
  return heatStreams.filter(({ channels }) => channels.some((name) => carries(series.channels[name])));
}

/** The streams of a whole run, also where only a stretch of it is drawn. */
function heatOf(run: Series, series = run): HeatSeries {
  const { time_s, interval_s } = series;
  const streams = streamsOf(run).map(({ key, side }) => ({ key, side, values: heatValues(series, key) }));
  return { time_s, interval_s, streams };
}

/** Shorter than this is a moment while the pipe warms; a shower too counts as cold from here on, in the figures. */
const felt_s = 20;

/**
 * Spells in which water ran colder than wanted for long enough to be felt: whole intervals of samples, or, where a
 * run tells of more cold seconds than the interval has, as many before its end.
 */
export function coldSpans({ channels, time_s, interval_s }: Series): TimeSpan[] {
  const { ran_cold_s } = channels;
  if (!ran_cold_s) return [];
  return once(ran_cold_s, 'cold', () => {
    const spells: (TimeSpan & { cold_s: number })[] = [];
    for (let i = 0; i < ran_cold_s.length; i++) {
      const cold_s = ran_cold_s[i];
      if (cold_s <= 0 || cold_s < Math.min(felt_s, interval_s)) continue;
      const last = spells[spells.length - 1];
      const from_s = time_s[i] - Math.max(interval_s, cold_s);
      if (last && last.to_s >= from_s) {
        last.to_s = time_s[i];
        last.cold_s += cold_s;
      } else spells.push({ from_s, to_s: time_s[i], cold_s });
    }
    return spells.filter(({ cold_s }) => cold_s >= felt_s).map(({ from_s, to_s }) => ({ from_s, to_s }));
  });
}

/** What begins and ends a spell of each row. */
const turns = {
  engine: ['engine.start', 'engine.stop'],
  pump: ['collector.pump.on', 'collector.pump.off'],
  limit: ['collector.high_limit', 'collector.high_limit.over'],
  boiling: ['store.boiling', 'store.boiling.over'],
  frozen: ['cistern.frozen', 'cistern.thawed'],
} as const;

/** Rows of what ran and of what went wrong; one that never happened is not there. */
function rowsOf(events: RunEvent[], cold: TimeSpan[], end_s: number): Row[] {
  const rows = (Object.keys(turns) as (keyof typeof turns)[]).map((key) => {
    const [on, off] = turns[key];
    const spells: TimeSpan[] = [];
    let since: number | null = null;
    for (const { name, time_s } of events) {
      if (name === on) since ??= time_s;
      if (name !== off || since === null) continue;
      spells.push({ from_s: since, to_s: time_s });
      since = null;
    }
    if (since !== null) spells.push({ from_s: since, to_s: end_s });
    return { key, label: daysWords.rows[key], spells };
  });
  return [...rows, { key: 'cold', label: daysWords.rows.cold, spells: cold }].filter(
    ({ spells }) => spells.length > 0,
  );
}

/** The middle of the topmost layer is half a layer below the water's surface. */
function depthOf(height_m: Float64Array): number {
  const top = height_m.length - 1;
  if (top === 0) return 2 * height_m[0];
  return height_m[top] + (height_m[top] - height_m[top - 1]) / 2;
}
