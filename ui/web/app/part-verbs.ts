/** Parts as a person adds, doubles and removes them; loaded when first asked for. */
import {
  type Addable,
  addition,
  duplication,
  type PartChange,
  pathSteps,
  type Refusal,
  removal,
  type Scenario,
  valueAt,
} from '../../../sim/index.ts';
import { partGesture, partTitle, systemOf } from '../../words/index.ts';
import type { PageState } from './page-state.ts';

export type PartVerb =
  | { verb: 'add'; kind: Addable }
  | { verb: 'duplicate'; path: string }
  | { verb: 'remove'; path: string };

/** What was asked, in words. */
export function gestureOf(asked: PartVerb, scenario: Scenario): string {
  if (asked.verb === 'add') return partGesture.add(asked.kind);
  const name = valueAt(scenario, [...pathSteps(asked.path), 'name']);
  return partGesture[asked.verb](partTitle(asked.path, typeof name === 'string' ? name : null));
}

/** What it would do to the design; null while nothing is known of its plant. */
export function partChange(
  asked: PartVerb,
  { design, facts, units }: PageState,
): PartChange | Refusal | null {
  const { scenario } = design;
  switch (asked.verb) {
    case 'add':
      return facts && addition(scenario, asked.kind, facts.store, systemOf(units, 'length'));
    case 'duplicate':
      return duplication(scenario, asked.path);
    case 'remove':
      return removal(scenario, asked.path);
  }
}
