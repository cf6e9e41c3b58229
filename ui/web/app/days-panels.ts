/** The panels in the order in which they stand, and what can be read off each, line by line. */
import { daysWords, quantityText, storeWords, type Units } from '../../words/index.ts';
import type { TimeSpan } from '../charts/frame.ts';
import { type DaysData, layerAt } from './days-data.ts';
import { valueWords } from './moments.ts';
import { powerWords } from './screen-units.ts';
import { isClose } from './window.ts';

export type PanelKey = keyof typeof daysWords.panels;

/** A line, stream, row or height that the arrow keys can choose. */
export interface Reading {
  key: string;
  label: string;
  text: (sample: number) => string;
}

/** Panels that this run has something for; the tap's only in a window short enough to show a shower. */
export function panelsOf(data: DaysData, window: TimeSpan): PanelKey[] {
  const there: Record<PanelKey, boolean> = {
    temperatures: true,
    tap: data.tap !== null && isClose(window),
    field: true,
    heat: data.heat.streams.length > 0,
    ran: data.rows.length > 0,
    water: data.water !== null,
    sun: data.sun !== null,
  };
  return (Object.keys(there) as PanelKey[]).filter((key) => there[key]);
}

export function readingsOf(data: DaysData, panel: PanelKey, units: Units): Reading[] {
  const { series } = data;
  switch (panel) {
    case 'temperatures':
      return (['top', 'middle', 'bottom'] as const).map((key, i) => ({
        key,
        label: storeWords[key],
        text: (sample) => quantityText(layerAt(series, 1 - i / 2, sample), 'temperature', units),
      }));
    case 'field':
      // From the surface down, as the eye goes.
      return Array.from(series.height_m, (height_m, k) => ({
        key: String(k),
        label: daysWords.at(data.units.length.text(data.units.length.of(height_m))),
        text: (sample: number) =>
          quantityText(series.layer_C[sample * series.layers + k], 'temperature', units),
      })).reverse();
    case 'heat':
      return data.heat.streams.map(({ key, values }) => ({
        key,
        label: daysWords.streams[key as keyof typeof daysWords.streams],
        text: (sample) => powerWords(values[sample], units),
      }));
    case 'ran':
      return data.rows.map(({ key, label, spells }) => ({
        key,
        label,
        text: (sample) => {
          const at_s = series.time_s[sample];
          return spells.some(({ from_s, to_s }) => from_s < at_s && at_s <= to_s)
            ? daysWords.running
            : daysWords.still;
        },
      }));
    default:
      return (data[panel]?.lines ?? []).map(({ key, label }) => ({
        key,
        label,
        text: (sample) =>
          valueWords(series, key as keyof typeof daysWords.lines, sample, units) || daysWords.nothingDrawn,
      }));
  }
}
