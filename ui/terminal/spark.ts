/** Small rows that share the chart's columns: a line of bars, and numbers under each mark. */
import { axisWidth } from './chart.ts';
import { paint, type Screen } from './screen.ts';
import { padLeft, padRight } from './text.ts';

const bars = { unicode: [...'▁▂▃▄▅▆▇█'], ascii: [...'.:-=+*#@'] };

/** One character a column, its height the share of the largest value; a blank where there is nothing. */
export function sparkRow(label: string, values: readonly number[], screen: Screen): string {
  const steps = screen.unicode ? bars.unicode : bars.ascii;
  const most = Math.max(0, ...values.filter(Number.isFinite));
  const row = values
    .map((value) => {
      if (!(value > 0)) return ' ';
      return steps[Math.ceil((value / most) * steps.length) - 1];
    })
    .join('');
  return `${padLeft(label, axisWidth - 1)} ${paint(screen, 'blue', row)}`.trimEnd();
}

/** Numbers under their marks, which must stand further apart than the numbers are long. */
export function numberRow(label: string, marks: { column: number; text: string }[]): string {
  let row = '';
  for (const { column, text } of marks) row = padRight(row, column) + text;
  return `${padLeft(label, axisWidth - 1)} ${row}`.trimEnd();
}
