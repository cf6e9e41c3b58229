/** What the page knows: what was chosen, what is running, what came of it. All of it lives in the browser's memory. */
import type { Result } from '../../../sim/index.ts';
import type { Trouble, Units } from '../../words/index.ts';

export interface Choice {
  /** Id in the catalogue. */
  scenario: string;
  /** First day, as in "2027-01-09"; the year only decides the weekday. */
  from: string;
  days: number;
}

/** A result and what it is the result of. */
export interface Shown {
  choice: Choice;
  result: Result;
  /** Monday 0. */
  firstWeekday: number;
  /** Values that the scenario left to their defaults. */
  filled: number;
}

export interface PageState {
  choice: Choice;
  units: Units;
  /** Share of the run that is done; null when nothing runs. */
  progress: number | null;
  /** Why the choice could not be run; empty when it was. */
  troubles: Trouble[];
  /** The last run that worked, also while another is running or has failed. */
  shown: Shown | null;
}

export const daysRange = { least: 1, most: 365 } as const;

/** Whether the result on the page is not that of the choice above it. */
export function isStale({ shown, choice }: PageState): boolean {
  return (
    shown !== null &&
    (shown.choice.scenario !== choice.scenario ||
      shown.choice.from !== choice.from ||
      shown.choice.days !== choice.days)
  );
}
