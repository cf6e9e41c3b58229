/** What ran, and when: a row a machine, a bar a spell. */

import type { TimeSpan } from './frame.ts';
import { type ChartOptions, inside, timeAxis, timeTicks } from './frame.ts';
import { marksInView } from './lines-chart.ts';
import { label, tag } from './svg.ts';

export interface Row {
  key: string;
  label: string;
  spells: TimeSpan[];
}

export const row_px = 18;

export function rowsChart(rows: Row[], options: ChartOptions, chosen?: string): string {
  const { frame, span, apart_px } = options;
  const bars = rows.map(({ key, spells }, i) =>
    tag(
      'g',
      { class: `row ${key}${key === chosen ? ' chosen' : ''}` },
      ...marksInView(spells, frame, span).map(([x, width]) =>
        tag('rect', { x, width, y: frame.top + i * row_px + 3, height: row_px - 6 }),
      ),
    ),
  );
  const names = rows.map(({ label: words }, i) =>
    label(words, frame.left - 6, frame.top + (i + 0.5) * row_px, { class: 'value' }),
  );
  return [
    timeAxis(frame, span, timeTicks(frame, span, apart_px), options.timeWords, apart_px),
    ...names,
    inside(frame, ...bars),
  ].join('');
}
