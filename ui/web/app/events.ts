/** What elements tell the page, as bubbling events: name and detail. The page answers each with one of its verbs. */
import type { Addable, Edit, Stretch } from '../../../sim/index.ts';
import type { AnswerKey, Log, RangeSpec } from './page-state.ts';
import type { KeepVerb } from './shelf/kept.ts';

export interface PageEvents {
  /** A hand comes to a handle: something is about to be moved. */
  'hand-near': undefined;
  /** While a handle is held. */
  'preview-edits': { edits: Edit[] };
  /** On release, or when a field is left. */
  'commit-edits': { edits: Edit[]; gesture: string };
  /** Escape: as if the handle had not been touched. */
  cancel: undefined;
  /** Text that could not be read (kept as typed), or null once the field is as before. */
  typed: { path: string; text: string | null };
  'open-part': { path: string | null };
  'add-part': { kind: Addable };
  'duplicate-part': { path: string };
  'remove-part': { path: string };
  'try-range': RangeSpec;
  ask: { key: AnswerKey };
  'stop-asking': { key: AnswerKey | 'range' };
  'move-cursor': { time_s: number };
  zoom: { window_s: readonly [from_s: number, to_s: number] };
  'need-detail': Stretch;
  'show-sheet': { open: boolean };
  'open-log': Log;
  keep: KeepVerb;
}

/** Tells the page. */
export function tell<Name extends keyof PageEvents>(
  from: EventTarget,
  name: Name,
  ...[detail]: PageEvents[Name] extends undefined ? [] : [PageEvents[Name]]
): void {
  from.dispatchEvent(new CustomEvent(name, { detail, bubbles: true }));
}
