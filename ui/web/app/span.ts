/** Start date and number of days of a scenario, as the page's fields show and change them. */
import type { Edit, Scenario } from '../../../sim/index.ts';

export interface Span {
  /** As in "2027-01-09", which a date field understands. */
  from: string;
  days: number;
}

/** Year given to a date that names none: any will do, since a run's year has 365 days and no number. */
const anyYear = '2027';
/** As the field catalogue has them for a file that names none. */
const usual: Span = { from: `${anyYear}-01-01`, days: 7 };

export const daysRange = { least: 1, most: 366 } as const;

export function spanOf({ run }: Scenario): Span {
  const from = run?.from ?? usual.from;
  const days = run?.days;
  return {
    from: /^\d\d-\d\d$/.test(from) ? `${anyYear}-${from}` : from,
    days: typeof days === 'number' && days > 0 ? days : usual.days,
  };
}

/** A span that was typed is put in as it is: the reader of scenarios says what is wrong with it. */
export function spanEdits({ from, days }: Partial<Span>): Edit[] {
  return [
    ...(from === undefined ? [] : [{ path: 'run.from', value: from }]),
    ...(days === undefined ? [] : [{ path: 'run.days', value: Number.isNaN(days) ? undefined : days }]),
  ];
}
