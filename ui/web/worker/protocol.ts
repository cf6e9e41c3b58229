/** What page and worker say to each other. */
import type { Result } from '../../../sim/index.ts';
import type { Trouble } from '../../words/index.ts';

export interface Order {
  scenario: unknown;
}

export type Report =
  | { kind: 'progress'; share: number }
  | { kind: 'done'; result: Result; firstWeekday: number; filled: number }
  | { kind: 'refused'; troubles: Trouble[] };
