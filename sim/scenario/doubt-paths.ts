/** Marks follow what they are put on when the items of a list move. */
import { valueAt } from './value-at.ts';

/**
 * The edit that keeps marks where they belong once an item has been taken out of a list (`by` -1) or put in before
 * others (`by` 1); none where no mark moves. Marks on an item that is gone go with it.
 */
export function movedMarks(
  json: unknown,
  list: string,
  index: number,
  by: 1 | -1,
): { path: string; value: unknown }[] {
  const doubts = valueAt(json, ['doubts']);
  if (!Array.isArray(doubts)) return [];
  const moved = doubts.flatMap((doubt: unknown): unknown[] => {
    const input = valueAt(doubt, ['input']);
    const at = typeof input === 'string' ? placeIn(list, input) : null;
    if (at === null || at < index) return [doubt];
    if (by === -1 && at === index) return [];
    const own = (input as string).slice(`${list}[${at}]`.length);
    return [{ ...(doubt as object), input: `${list}[${at + by}]${own}` }];
  });
  if (JSON.stringify(moved) === JSON.stringify(doubts)) return [];
  return [{ path: 'doubts', value: moved.length > 0 ? moved : undefined }];
}

/** Which item of a list a path leads into; null where it leads elsewhere. */
function placeIn(list: string, path: string): number | null {
  if (!path.startsWith(`${list}[`)) return null;
  const at = Number.parseInt(path.slice(list.length + 1), 10);
  return Number.isNaN(at) ? null : at;
}
