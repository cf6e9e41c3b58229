/** A design on the shelf while it stands in the page: what it is now, and how far that is written. */
import { ChangedElsewhere, type ShelfDb, type Stored } from './shelf-db.ts';

/** Written, or not: for want of room, or because the browser keeps nothing for this page. */
export type Saved = { at: 'saved'; ms: number } | { at: 'failed'; why: 'full' | 'refused' };

export interface KeptDesign {
  readonly id: string;
  get(): Stored;
  /** From now on it is this; written at once, or as soon as the writing before has ended. */
  become(next: Pick<Stored, 'history' | 'attached'> & Pick<Stored['record'], 'scenario' | 'name'>): void;
  /** When all that can be written is written. */
  settled(): Promise<void>;
  isWritten(): boolean;
}

/** @param written what of it is in the database; null if nothing is yet */
export function keepDesign(
  db: Pick<ShelfDb, 'write'>,
  start: Stored,
  written: Stored | null,
  doors: { now(): number; told(saved: Saved | 'elsewhere'): void },
): KeptDesign {
  let stored = start;
  let builtOn = written;
  let writing: Promise<void> | null = null;

  /** One writing at a time: the next one takes along all that has come meanwhile. */
  async function write(): Promise<void> {
    while (stored !== builtOn) {
      const next = stored;
      try {
        await db.write({ stored: next, builtOn });
        builtOn = next;
        doors.told({ at: 'saved', ms: next.record.changed_ms });
      } catch (error) {
        doors.told(whyUnsaved(error));
        // What comes meanwhile is tried again together with this.
        if (stored === next) break;
      }
    }
    writing = null;
  }

  return {
    id: start.record.id,
    get: () => stored,
    become({ history, attached, scenario, name }) {
      const { record } = stored;
      const version = record.version + 1;
      const next = { scenario, name, version, done: history.done, changed_ms: doors.now(), removed_ms: null };
      stored = { record: { ...record, ...next }, history, attached };
      writing ??= write();
    },
    settled: async () => {
      await writing;
    },
    isWritten: () => stored === builtOn,
  };
}

function whyUnsaved(error: unknown): Saved | 'elsewhere' {
  if (error instanceof ChangedElsewhere) return 'elsewhere';
  const full = error instanceof DOMException && error.name === 'QuotaExceededError';
  return { at: 'failed', why: full ? 'full' : 'refused' };
}
