/** What the store and its neighbours did at one sample, in words; and the times a cursor steps through. */
import type { Result, Series } from '../../../sim/index.ts';
import { momentWords, storeWords, type Units } from '../../words/index.ts';
import { coldSpans, heatAt, layerAt, streamsOf } from './days-data.ts';
import type { Shown } from './page-state.ts';
import { pageWords, weekdayWords } from './page-words.ts';
import { powerWords, quantityWords } from './screen-units.ts';

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

/** "Sat Jan 9, 18:30". */
export function momentTitle({ result, firstWeekday }: Shown, sample: number): string {
  const time_s = result.series.time_s[sample];
  return `${weekdayWords(firstWeekday, time_s)} ${momentWords(result.first_day, time_s)}`;
}

/** Sample at or next after a time. */
export function sampleAt({ time_s }: Series, wanted_s: number): number {
  let low = 0;
  let high = time_s.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time_s[middle] < wanted_s) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Where the cursor stands at first: where water first ran cold, or else at the end. */
export function firstSample({ series }: Result): number {
  const [cold] = coldSpans(series);
  return cold ? sampleAt(series, cold.from_s + series.interval_s) : series.time_s.length - 1;
}

/** Keys of the cursor: a sample by arrow, a day by page, the ends. Null for any other key. */
export function sampleAfterKey({ time_s, interval_s }: Series, sample: number, key: string): number | null {
  const last = time_s.length - 1;
  const day = Math.max(1, Math.round(86_400 / interval_s));
  const steps: Record<string, number> = {
    ArrowLeft: sample - 1,
    ArrowDown: sample - 1,
    ArrowRight: sample + 1,
    ArrowUp: sample + 1,
    PageDown: sample - day,
    PageUp: sample + day,
    Home: 0,
    End: last,
  };
  return key in steps ? Math.min(last, Math.max(0, steps[key])) : null;
}

/** 120 °F: from here on water burns an adult's skin within minutes (see the words on scalds). */
const scalds_C = 48.9;

/** Everything the charts show at one sample, as text with units. */
export function readout({ result }: Shown, sample: number, system: Units): ReadoutGroup[] {
  const { series } = result;
  const channel = (name: string) => series.channels[name]?.[sample] ?? Number.NaN;
  const row = (label: string, key: string, value: number, swatch: string | null = null): ReadoutRow[] =>
    Number.isFinite(value) ? [{ swatch, label, text: quantityWords(key, value, system) }] : [];
  const own = (key: keyof typeof pageWords.channels) => row(pageWords.channels[key], key, channel(key));
  const warned = (each: ReadoutRow) =>
    channel('outlet_C') >= scalds_C ? { ...each, text: `${each.text} ${pageWords.scalds}` } : each;
  const drawing = channel('mixed_flow_m3_s') > 0;
  const store = (
    [
      ['top', 1],
      ['middle', 0.5],
      ['bottom', 0],
    ] as const
  ).flatMap(([key, share]) =>
    row(storeWords[key], 'outlet_C', layerAt(series, share, sample), `line ${key}`),
  );
  const heat = streamsOf(series).map(({ key }) => ({
    swatch: `heat ${key}`,
    label: pageWords.streams[key],
    text: powerWords(heatAt(series, key, sample), system),
  }));
  const tap = drawing
    ? [...own('outlet_C').map(warned), ...own('wanted_C'), ...own('mixed_flow_m3_s')]
    : [{ swatch: null, label: pageWords.channels.outlet_C, text: pageWords.nothingDrawn }];
  return [
    { title: storeWords.title, rows: store },
    { title: pageWords.heatTitle, rows: heat },
    { title: pageWords.tapTitle, rows: tap },
    { title: pageWords.outsideTitle, rows: [...own('air_C'), ...own('sun_W_m2')] },
  ].filter(({ rows }) => rows.length > 0);
}
