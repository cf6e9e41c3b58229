/** A design on the shelf while it stands in the page: what it is now, and how far that is written. */
import { ChangedElsewhere, type ShelfDb, type Stored } from './shelf-db.ts';

/** Written, or not: for want of room, or because the browser keeps nothing for this page. */
export type Saved = { at: 'saved'; ms: number } | { at: 'failed'; why: 'full' | 'refused' };

export interface KeptDesign {
  readonly id: string;
  get(): Stored;
  /** From now on it is this; handed to the database at once. */
  become(next: Pick<Stored, 'history' | 'attached'> & Pick<Stored['record'], 'scenario' | 'name'>): void;
  /** When all that can be written is written. */
  settled(): Promise<void>;
  isWritten(): boolean;
}

export interface KeptDoors {
  db: Pick<ShelfDb, 'write'>;
  now(): number;
  told(saved: Saved | 'elsewhere'): void;
  /** Whether other tabs are kept from writing it. */
  alone: boolean;
}

/** @param written what of it is in the database; null if nothing is yet */
export function keepDesign(start: Stored, written: Stored | null, doors: KeptDoors): KeptDesign {
  let stored = start;
  let done = written;
  /** What the database holds once all that it was handed is written; null if that is not known. */
  let handed = written;
  let writing: Promise<unknown> = Promise.resolve();
  const mine = new Set([start.record.version]);

  /** Nothing waits for the writing before: a page may be gone in the next moment. */
  function write(): void {
    const [next, builtOn] = [stored, handed];
    handed = next;
    mine.add(next.record.version);
    const written = doors.db.write({ stored: next, builtOn, ...(doors.alone ? {} : { over: mine }) }).then(
      () => {
        if (stored !== next) return;
        // One before it was not written: now the whole of it.
        if (!handed) return write();
        done = next;
        doors.told({ at: 'saved', ms: next.record.changed_ms });
      },
      (error) => {
        handed = null;
        doors.told(whyUnsaved(error));
      },
    );
    writing = Promise.all([writing, written]);
  }

  return {
    id: start.record.id,
    get: () => stored,
    become({ history, attached, scenario, name }) {
      const version = Math.random().toString(36).slice(2);
      const next = { scenario, name, version, done: history.done, changed_ms: doors.now(), removed_ms: null };
      stored = { record: { ...stored.record, ...next }, history, attached };
      write();
    },
    async settled() {
      // What failed may have been handed over again.
      for (let last: unknown = null; last !== writing; ) {
        last = writing;
        await writing;
      }
    },
    isWritten: () => stored === done,
  };
}

function whyUnsaved(error: unknown): Saved | 'elsewhere' {
  if (error instanceof ChangedElsewhere) return 'elsewhere';
  const full = error instanceof DOMException && error.name === 'QuotaExceededError';
  return { at: 'failed', why: full ? 'full' : 'refused' };
}
