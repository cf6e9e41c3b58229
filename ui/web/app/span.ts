/** Start date and number of days: read out of a scenario, checked, and written into a copy of it. */
import type { Trouble } from '../../words/index.ts';
import { type Choice, daysRange } from './page-state.ts';

/** Year given to a date that names none: any will do, since a run's year has 365 days and no number. */
const anyYear = '2027';
const defaultSpan = { from: `${anyYear}-01-01`, days: 7 };

interface RunPart {
  from?: unknown;
  days?: unknown;
}

function runPart(scenario: unknown): RunPart {
  const run = (scenario as { run?: unknown } | null)?.run;
  return typeof run === 'object' && run !== null ? run : {};
}

/** The span a scenario asks for, with a year to its date so that a date field can show it. */
export function spanOf(scenario: unknown): Pick<Choice, 'from' | 'days'> {
  const { from, days } = runPart(scenario);
  return {
    from:
      typeof from === 'string' ? (/^\d\d-\d\d$/.test(from) ? `${anyYear}-${from}` : from) : defaultSpan.from,
    days: typeof days === 'number' ? days : defaultSpan.days,
  };
}

/** A copy of the scenario that runs over the chosen span. */
export function withSpan(scenario: unknown, { from, days }: Pick<Choice, 'from' | 'days'>): unknown {
  return { ...(scenario as object), run: { ...runPart(scenario), from, days } };
}

/** What is wrong with a span that was typed in; the reader of scenarios never sees such a one. */
export function spanTroubles({ from, days }: Pick<Choice, 'from' | 'days'>): Trouble[] {
  const troubles: Trouble[] = [];
  if (!/^\d{4}-\d\d-\d\d$/.test(from)) {
    troubles.push({
      where: 'Start',
      expected: 'a date, as in 2027-01-09',
      got: from === '' ? 'nothing' : `"${from}"`,
      fix: 'choose a day of the year',
    });
  }
  if (!Number.isInteger(days) || days < daysRange.least || days > daysRange.most) {
    troubles.push({
      where: 'Days',
      expected: `a whole number, ${daysRange.least} to ${daysRange.most}`,
      got: Number.isNaN(days) ? 'no number' : String(days),
      fix: days > daysRange.most ? 'a year is the longest run' : 'type how many days to run',
    });
  }
  return troubles;
}
