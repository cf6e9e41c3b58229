/** Hours of an engine, said as hours however many they are. */
import type { Banded } from '../../sim/index.ts';
import type { ShownColumn } from './answers.ts';
import { fixed, numberText } from './locale.ts';
import { noNumber, type Say } from './say.ts';

const HOUR_S = 3600;

/** `4.3 h (2 to 6 h)`; without a band to three digits. */
export function bandedHours(fact: Banded, say: Say): string {
  const hours = (value_s: number) => value_s / HOUR_S;
  const { value, low, high, numerical } = fact;
  if (low === high && numerical === 0) return `${numberText(Number(hours(value).toPrecision(3)))} h`;
  const said = (value_s: number) =>
    say.value({
      value: hours(value_s),
      low: hours(low),
      high: hours(high),
      numerical: hours(numerical),
      dimension: 'count',
    });
  const [own, from, to] = [value, low, high].map(said);
  return from === to ? `${own} h` : `${own} h (${from} to ${to} h)`;
}

/** A column of hours, of which a search to the quarter shows two decimals, a year's sum none. */
export function hoursColumn(head: string, key: string, decimals: number): ShownColumn {
  return {
    head: () => [head, 'h'],
    cell: (row) => {
      const value_s = row[key];
      return typeof value_s === 'number' ? fixed(value_s / HOUR_S, decimals) : noNumber;
    },
  };
}
