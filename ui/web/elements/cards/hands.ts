/** What can be done to the things in a card; the card itself does it. */
import type {
  OutlineEntry,
  OutlineGroup,
  OutlineList,
  OutlineNode,
  Scenario,
} from '../../../../sim/index.ts';
import type { Trouble, Units } from '../../../words/index.ts';
import type { PlacedCaution } from './card-cautions.ts';
import type { DoubtEnd, Sureness } from './doubt-spec.ts';
import type { Surroundings } from './entry-view.ts';
import type { RangeBox } from './range-spec.ts';

export interface Hands {
  around: Surroundings;
  units: Units;
  cautions: readonly PlacedCaution[];
  /** Paths that stand elsewhere in the card: nothing is added to or taken out of such a whole here. */
  elsewhere: ReadonlySet<string>;
  /** What was wrong with a range, at the entry it was asked of. */
  rangeTrouble: { path: string; box: RangeBox; trouble: Trouble } | null;
  /** What was wrong with an end of what one believes, at the entry it is of. */
  doubtTrouble: { path: string; end: DoubtEnd; trouble: Trouble } | null;
  /** The file's mark on an input, or null. */
  doubtAt(path: string): NonNullable<Scenario['doubts']>[number] | null;
  /** Says what is in a box while it is typed. */
  draft(entry: OutlineEntry, text: string): void;
  enter(entry: OutlineEntry, label: string, text: string): void;
  /** Back to what stood there before. */
  restore(entry: OutlineEntry): void;
  decide(entry: OutlineEntry, label: string, word: string): void;
  forget(node: OutlineNode, label: string, value: unknown): void;
  describe(node: OutlineGroup | OutlineList, label: string): void;
  add(list: OutlineList, label: string): void;
  remove(list: OutlineList, index: number, label: string): void;
  /** Says how sure one is of an entry, or where an end of what one believes lies. */
  mark(entry: OutlineEntry, label: string, sureness: Sureness): void;
  markEnd(entry: OutlineEntry, label: string, end: DoubtEnd, typed: string): void;
  /** What the boxes of a range hold at first: nothing until it is opened, for that takes a reading of the design. */
  rangeOf(entry: OutlineEntry): Record<RangeBox, string>;
  openRange(entry: OutlineEntry): void;
  tryRange(entry: OutlineEntry, label: string, typed: Record<RangeBox, string>): void;
}
