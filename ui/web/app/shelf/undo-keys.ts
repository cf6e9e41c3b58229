/** Ctrl+Z, Ctrl+Shift+Z and Ctrl+Y, or with the command key of a Mac. */
import type { KeepVerb } from './kept.ts';

type Keys = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>;

/** What the keys ask for; null if nothing, or if they belong to a field with text of its own to undo. */
export function undoAsked(keys: Keys, inText: boolean): KeepVerb | null {
  const { ctrlKey, metaKey, shiftKey, altKey } = keys;
  if (inText || altKey || ctrlKey === metaKey) return null;
  const key = keys.key.toLowerCase();
  if (key === 'z') return { verb: shiftKey ? 'redo' : 'undo' };
  return key === 'y' && ctrlKey && !shiftKey ? { verb: 'redo' } : null;
}

/** Whether a place in the page takes text. */
export function takesText(at: EventTarget | null): boolean {
  if (!(at instanceof HTMLElement)) return false;
  const own = at.closest('input, textarea, [contenteditable]');
  return (
    own !== null &&
    !/^(?:radio|checkbox|range|button|submit|file|color)$/.test((own as HTMLInputElement).type ?? '')
  );
}
