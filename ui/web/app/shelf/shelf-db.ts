/**
 * The shelf in the browser's database (IndexedDB): designs, what was done to each, restore points, weather files. What
 * belongs together is written in one transaction, and told as written once it is on the disk.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Scenario } from '../../../../sim/index.ts';
import type { Attached } from '../../worker/protocol.ts';
import type { Entry, History } from './history.ts';

export interface DesignRecord {
  id: string;
  name: string;
  /** Scenario of the catalogue it began as; "own" for one that came from a file. */
  began: string;
  scenario: Scenario;
  /** Told apart from every other state of it. */
  version: string;
  /** `n` of the last gesture in effect. */
  done: number;
  made_ms: number;
  changed_ms: number;
  /** When it was taken off the shelf; null while it stands there. */
  removed_ms: number | null;
}

/** A design with all that belongs to it. */
export interface Stored {
  record: DesignRecord;
  history: History;
  attached: Attached;
}

export interface RestorePoint {
  design: string;
  made_ms: number;
  name: string;
  scenario: Scenario;
}

/** No weather files, always the same. */
export const noFiles: Attached = {};

/** What stood in the page last: a design, or an example that was only looked at. */
export type Last = { design: string } | { example: string };

export interface Writing {
  stored: Stored;
  /** What is there of it once all is done that was asked before: only what differs is written. Null: the whole. */
  builtOn: Stored | null;
  /** Where no lock keeps other tabs away: the versions that it may be written over. */
  over?: ReadonlySet<string>;
}

export interface ShelfDb {
  /** Newest change first, also those taken off. */
  list(): Promise<DesignRecord[]>;
  read(id: string): Promise<Stored | null>;
  /** @throws ChangedElsewhere if what is there may not be written over; nothing is written then */
  write(writing: Writing): Promise<void>;
  /** Puts a design on the shelf or takes it off, without a look at its content. */
  mark(id: string, removed_ms: number | null): Promise<void>;
  /** For good. */
  forget(id: string): Promise<void>;
  points(design: string): Promise<RestorePoint[]>;
  keepPoint(point: RestorePoint): Promise<void>;
  dropPoint(design: string, made_ms: number): Promise<void>;
  last(): Promise<Last | null>;
  setLast(last: Last): Promise<void>;
}

/** Somebody else has written the design meanwhile. */
export class ChangedElsewhere extends Error {}

interface Schema extends DBSchema {
  designs: { key: string; value: DesignRecord };
  log: { key: [design: string, n: number]; value: Entry & { design: string } };
  files: { key: string; value: Attached };
  points: { key: [design: string, made_ms: number]; value: RestorePoint };
  page: { key: string; value: Last };
}

const name = 'tankful';
/** Nothing is told as saved before it is on the disk, where the browser can promise that. */
const strict = { durability: 'strict' } as const;
/** Keys of one design, whatever comes second. */
const allOf = (design: string) =>
  IDBKeyRange.bound([design, Number.NEGATIVE_INFINITY], [design, Number.POSITIVE_INFINITY]);

/** A database that has neither opened nor failed by then counts as refused [ms]. */
const patience_ms = 5_000;

/** What opens too late is shut again: whoever asked has been told that nothing is kept, and may ask anew. */
function inTime(opening: Promise<IDBPDatabase<Schema>>): Promise<IDBPDatabase<Schema>> {
  return new Promise((resolve, reject) => {
    let late = false;
    const timer = setTimeout(() => {
      late = true;
      reject(
        new Error(`shelf - expected a database within ${patience_ms} ms - got none - open the page anew`),
      );
    }, patience_ms);
    opening.then((db) => (late ? db.close() : resolve(db)), reject).finally(() => clearTimeout(timer));
  });
}

export function openShelf(): ShelfDb {
  let opened: Promise<IDBPDatabase<Schema>> | null = null;

  /** Opened when first needed, and again if that failed or the browser has closed it. */
  function database(): Promise<IDBPDatabase<Schema>> {
    const forget = () => {
      opened = null;
    };
    opened ??= inTime(
      openDB<Schema>(name, 1, {
        upgrade(db) {
          db.createObjectStore('designs', { keyPath: 'id' });
          db.createObjectStore('log', { keyPath: ['design', 'n'] });
          db.createObjectStore('files');
          db.createObjectStore('points', { keyPath: ['design', 'made_ms'] });
          db.createObjectStore('page');
        },
        blocking(_, __, event) {
          (event.target as IDBDatabase).close();
          forget();
        },
        terminated: forget,
      }),
    );
    opened.catch(forget);
    return opened;
  }

  return {
    async list() {
      const records = await (await database()).getAll('designs');
      return records.sort((a, b) => b.changed_ms - a.changed_ms);
    },
    async read(id) {
      const tx = (await database()).transaction(['designs', 'log', 'files']);
      const [record, entries, attached] = await Promise.all([
        tx.objectStore('designs').get(id),
        tx.objectStore('log').getAll(allOf(id)),
        tx.objectStore('files').get(id),
        tx.done,
      ]);
      if (!record) return null;
      const log = entries.map(({ design: _, ...entry }) => entry);
      return { record, history: { entries: log, done: record.done }, attached: attached ?? noFiles };
    },
    async write({ stored, builtOn, over }) {
      const { record, history, attached } = stored;
      const tx = (await database()).transaction(['designs', 'log', 'files'], 'readwrite', strict);
      const [designs, log, files] = [
        tx.objectStore('designs'),
        tx.objectStore('log'),
        tx.objectStore('files'),
      ];
      const there = over && (await designs.get(record.id));
      if (there && !over?.has(there.version)) {
        await tx.done;
        throw new ChangedElsewhere(`${record.id} - expected a version of this tab - got ${there.version}`);
      }
      const had = new Set(builtOn?.history.entries);
      const has = new Set(history.entries.map(({ n }) => n));
      const requests: Promise<unknown>[] = [];
      try {
        requests.push(designs.put(record));
        if (!builtOn) requests.push(log.delete(allOf(record.id)));
        for (const { n } of had) if (!has.has(n)) requests.push(log.delete([record.id, n]));
        for (const entry of history.entries) {
          if (!had.has(entry)) requests.push(log.put({ ...entry, design: record.id }));
        }
        if (attached !== (builtOn?.attached ?? noFiles)) requests.push(files.put(attached, record.id));
      } catch (error) {
        // What is refused before it is tried ends no transaction by itself.
        tx.abort();
        await Promise.allSettled([...requests, tx.done]);
        throw error;
      }
      // Nothing more is to come: the browser goes on with it even if the page is gone in the next moment.
      tx.commit();
      await Promise.all([...requests, tx.done]);
    },
    async mark(id, removed_ms) {
      const tx = (await database()).transaction('designs', 'readwrite', strict);
      const record = await tx.store.get(id);
      if (record) await tx.store.put({ ...record, removed_ms });
      await tx.done;
    },
    async forget(id) {
      const tx = (await database()).transaction(['designs', 'log', 'files', 'points'], 'readwrite');
      await Promise.all([
        tx.objectStore('designs').delete(id),
        tx.objectStore('log').delete(allOf(id)),
        tx.objectStore('files').delete(id),
        tx.objectStore('points').delete(allOf(id)),
        tx.done,
      ]);
    },
    points: async (design) => (await database()).getAll('points', allOf(design)),
    async keepPoint(point) {
      const tx = (await database()).transaction('points', 'readwrite', strict);
      await Promise.all([tx.store.put(point), tx.done]);
    },
    dropPoint: async (design, made_ms) => (await database()).delete('points', [design, made_ms]),
    last: async () => (await (await database()).get('page', 'last')) ?? null,
    async setLast(last) {
      await (await database()).put('page', last, 'last');
    },
  };
}
