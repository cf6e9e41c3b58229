/** What is doubtful of a scenario's assumptions, and between which ends. */
import type { FilledDefault } from '../../sim/index.ts';
import { fromSim, spanText } from '../words/index.ts';

/** A band as a file could say it: `0.5 to 1.2`. */
export function bandWords([low, high]: readonly [string, string]): string {
  return spanText(fromSim(low), fromSim(high));
}

/** Those that may move a run's figures: prices do not. */
export function doubtful(filled: readonly FilledDefault[]): FilledDefault[] {
  return filled.filter(({ band, path }) => band !== null && !path.startsWith('prices.'));
}
