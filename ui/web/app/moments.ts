/** What the store and its neighbours did at one sample, in words; and the moments a cursor steps through. */
import type { DimensionKey, Result, Series } from '../../../sim/index.ts';
import { daysWords, momentWords, quantityText, storeWords, type Units } from '../../words/index.ts';
import type { Row } from '../charts/rows-chart.ts';
import { once, sampleAt } from '../charts/thin.ts';
import { coldSpans, type DaysData, type DaysShown, layerAt } from './days-data.ts';
import { weekdayWords } from './page-words.ts';
import { powerWords } from './screen-units.ts';

export interface ReadoutRow {
  /** Class of the swatch, the same as the line's or area's in the charts; null where none is drawn. */
  swatch: string | null;
  label: string;
  text: string;
}

export interface ReadoutGroup {
  title: string;
  rows: ReadoutRow[];
}

/** "Sat Jan 9, 18:30"; with seconds where samples are closer than minutes. */
export function momentTitle({ result, firstWeekday }: DaysShown, time_s: number): string {
  const seconds = Math.round(time_s % 60);
  const exact = seconds > 0 ? `:${String(seconds).padStart(2, '0')}` : '';
  const minute_s = exact ? Math.floor(time_s / 60) * 60 : time_s;
  return `${weekdayWords(firstWeekday, time_s)} ${momentWords(result.first_day, minute_s)}${exact}`;
}

/** Where the cursor stands at first: where water first ran cold, or else at the end [s]. */
export function firstMoment({ series }: Result): number {
  const [cold] = coldSpans(series);
  return cold ? cold.from_s + series.interval_s : series.time_s[series.time_s.length - 1];
}

/** Keys of the cursor: a sample by arrow, a day by page, the ends [s]. Null for any other key. */
export function momentAfterKey({ time_s }: Series, at_s: number, key: string): number | null {
  const sample = sampleAt(time_s, at_s);
  const last = time_s.length - 1;
  const end_s = time_s[last];
  const step = (by: number) => time_s[Math.min(last, Math.max(0, sample + by))];
  switch (key) {
    case 'ArrowLeft':
      return step(-1);
    case 'ArrowRight':
      return step(1);
    case 'PageDown':
      return Math.max(time_s[0], at_s - 86_400);
    case 'PageUp':
      return Math.min(end_s, at_s + 86_400);
    case 'Home':
      return time_s[0];
    case 'End':
      return end_s;
    default:
      return null;
  }
}

interface Turn {
  time_s: number;
  words: string;
}

/** Beginnings and ends of all that the rows show, in order of time. */
function turnsOf(rows: Row[]): Turn[] {
  return once(rows, 'turns', () =>
    rows
      .flatMap(({ key, spells }) => {
        const [starts, ends] = daysWords.turns[key as keyof typeof daysWords.turns];
        return spells.flatMap(({ from_s, to_s }) => [
          { time_s: from_s, words: starts },
          { time_s: to_s, words: ends },
        ]);
      })
      .sort((a, b) => a.time_s - b.time_s),
  );
}

/** The next moment at which something begins or ends, or the one before; all that happens then. Null: none left. */
export function nextTurn(rows: Row[], at_s: number, forward: boolean): Turn | null {
  const turns = turnsOf(rows);
  const time_s = forward
    ? turns.find((turn) => turn.time_s > at_s)?.time_s
    : turns.findLast((turn) => turn.time_s < at_s)?.time_s;
  if (time_s === undefined) return null;
  const together = turns.filter((turn) => turn.time_s === time_s).map(({ words }) => words);
  return { time_s, words: together.join(', ') };
}

/** A drop in minutes: below it nothing is drawn, whatever integration leaves over of nothing. */
const leastFlow_m3_s = 1e-9;
/** 120 °F: from here on water burns an adult's skin within minutes (see the words on scalds). */
const scalds_C = 48.9;

/** A channel's name ends in its unit. */
function dimensionOf(channel: string): DimensionKey {
  if (channel.endsWith('_m3_s')) return 'flow';
  return channel.endsWith('_W_m2') ? 'irradiance' : 'temperature';
}

/** A channel's value at a sample; empty where there is none. */
export function valueWords(
  series: Series,
  key: keyof typeof daysWords.lines,
  sample: number,
  units: Units,
): string {
  const value = series.channels[key]?.[sample] ?? Number.NaN;
  if (!Number.isFinite(value)) return '';
  const text = quantityText(value, dimensionOf(key), units);
  return key === 'outlet_C' && value >= scalds_C ? `${text} ${daysWords.scalds}` : text;
}

/** Everything the charts show at one sample, as text with units. */
export function readout({ series, heat }: DaysData, sample: number, units: Units): ReadoutGroup[] {
  const channels = (...keys: (keyof typeof daysWords.lines)[]): ReadoutRow[] =>
    keys.flatMap((key) => {
      const text = valueWords(series, key, sample, units);
      return text ? [{ swatch: null, label: daysWords.lines[key], text }] : [];
    });
  const store = (['top', 'middle', 'bottom'] as const).map((key, i) => ({
    swatch: `line ${key}`,
    label: storeWords[key],
    text: quantityText(layerAt(series, 1 - i / 2, sample), 'temperature', units),
  }));
  const streams = heat.streams.map(({ key, values }) => ({
    swatch: `heat ${key}`,
    label: daysWords.streams[key as keyof typeof daysWords.streams],
    text: powerWords(values[sample], units),
  }));
  const drawing = (series.channels.mixed_flow_m3_s?.[sample] ?? 0) > leastFlow_m3_s;
  const tap = drawing
    ? [
        ...channels('outlet_C', 'wanted_C'),
        ...channels('mixed_flow_m3_s').map((row) => ({ ...row, label: daysWords.flow })),
      ]
    : [{ swatch: null, label: daysWords.lines.outlet_C, text: daysWords.nothingDrawn }];
  return [
    { title: storeWords.title, rows: store },
    { title: daysWords.heatTitle(quantityText(series.interval_s, 'time', units)), rows: streams },
    { title: daysWords.tapTitle, rows: tap },
    { title: daysWords.outsideTitle, rows: channels('air_C', 'sun_W_m2') },
  ].filter(({ rows }) => rows.length > 0);
}
