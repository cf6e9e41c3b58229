import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { deleteDB, openDB } from 'idb';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Scenario } from '../../../../../sim/index.ts';
import { nothingDone, recorded } from '../../../../../ui/web/app/shelf/history.ts';
import {
  ChangedElsewhere,
  noFiles,
  openShelf,
  type ShelfDb,
  type Stored,
} from '../../../../../ui/web/app/shelf/shelf-db.ts';

const named = (name: string) => ({ name }) as Scenario;

function stored(id: string, name: string, more: Partial<Stored['record']> = {}): Stored {
  const own = { id, name, began: 'demo', scenario: named(name), version: 'v1', done: 0 };
  const record = { ...own, made_ms: 1, changed_ms: 1, removed_ms: null, ...more };
  return { record, history: nothingDone, attached: noFiles };
}

/** The design a gesture later. */
function later(was: Stored, name: string): Stored {
  const history = recorded(was.history, was.record.scenario, named(name), `call it ${name}`, 2);
  const { version } = was.record;
  const record = { ...was.record, scenario: named(name), name, version: `${version}'`, done: history.done };
  return { ...was, record, history };
}

describe('the shelf', () => {
  let db: ShelfDb;
  beforeEach(() => {
    globalThis.indexedDB = new IDBFactory();
    db = openShelf();
  });

  it('is empty at first', async () => {
    expect(await db.list()).toEqual([]);
    expect(await db.last()).toBeNull();
    expect(await db.read('a')).toBeNull();
  });

  it('gives back a design with all that was done to it', async () => {
    const first = stored('a', 'one');
    const second = later(first, 'two');
    await db.write({ stored: first, builtOn: null });
    await db.write({ stored: second, builtOn: first });
    expect(await openShelf().read('a')).toEqual(second);
  });

  it('keeps logs apart', async () => {
    const [a, b] = [stored('a', 'a1'), stored('b', 'b1')];
    await db.write({ stored: later(a, 'a2'), builtOn: null });
    await db.write({ stored: later(b, 'b2'), builtOn: null });
    expect((await db.read('a'))?.history.entries.map(({ gesture }) => gesture)).toEqual(['call it a2']);
  });

  it('forgets what was undone and then given up', async () => {
    const first = stored('a', 'one');
    const third = later(later(first, 'two'), 'three');
    await db.write({ stored: third, builtOn: null });
    const undone = {
      ...third,
      record: { ...first.record, done: 0, version: 'undone' },
      history: { ...third.history, done: 0 },
    };
    await db.write({ stored: undone, builtOn: third });
    expect((await db.read('a'))?.history).toEqual(undone.history);
    const other = later(undone, 'other');
    await db.write({ stored: other, builtOn: undone });
    expect((await db.read('a'))?.history).toEqual(other.history);
    expect(other.history.entries).toHaveLength(1);
  });

  it('refuses to write over what another tab has written, and leaves design and log as they are', async () => {
    const first = stored('a', 'one');
    await db.write({ stored: first, builtOn: null });
    const [mine, theirs] = [later(first, 'mine'), { ...later(first, 'theirs') }];
    theirs.record.version = 'theirs';
    await db.write({ stored: theirs, builtOn: first, over: new Set(['v1']) });
    const over = new Set(['v1', mine.record.version]);
    await expect(db.write({ stored: mine, builtOn: first, over })).rejects.toThrow(ChangedElsewhere);
    await expect(db.write({ stored: mine, builtOn: null, over })).rejects.toThrow(ChangedElsewhere);
    expect(await db.read('a')).toEqual(theirs);
  });

  it('takes what is handed over in one go, in its order, and the whole where asked for it', async () => {
    const first = stored('a', 'one');
    const [second, third] = [later(first, 'two'), later(later(first, 'two'), 'three')];
    await Promise.all([
      db.write({ stored: first, builtOn: null }),
      db.write({ stored: second, builtOn: first }),
      db.write({ stored: third, builtOn: second }),
    ]);
    expect(await db.read('a')).toEqual(third);
    await db.write({ stored: second, builtOn: null });
    expect(await db.read('a')).toEqual(second);
  });

  it('writes the whole or nothing: where the log cannot be written the design stays as it was', async () => {
    const first = stored('a', 'one');
    await db.write({ stored: first, builtOn: null });
    const second = later(first, 'two');
    const [entry] = second.history.entries;
    // A key of the log that no database takes.
    const spoiled = { ...second, history: { ...second.history, entries: [{ ...entry, n: Number.NaN }] } };
    await expect(db.write({ stored: spoiled, builtOn: first })).rejects.toThrow();
    expect(await db.read('a')).toEqual(first);
  });

  it('writes weather files once, when they are others', async () => {
    const files = { 'days.csv': 'hour,air_C\n' };
    const first = { ...stored('a', 'one'), attached: files };
    await db.write({ stored: first, builtOn: null });
    await db.write({ stored: later(first, 'two'), builtOn: first });
    expect((await db.read('a'))?.attached).toEqual(files);
    const bare = { ...later(later(first, 'two'), 'three'), attached: noFiles };
    await db.write({ stored: bare, builtOn: later(first, 'two') });
    expect((await db.read('a'))?.attached).toEqual({});
  });

  it('lists the newest change first, takes off and puts back', async () => {
    await db.write({ stored: stored('a', 'old', { changed_ms: 1 }), builtOn: null });
    await db.write({ stored: stored('b', 'new', { changed_ms: 2 }), builtOn: null });
    await db.mark('a', 77);
    expect((await db.list()).map(({ id, removed_ms }) => [id, removed_ms])).toEqual([
      ['b', null],
      ['a', 77],
    ]);
    await db.mark('a', null);
    expect((await db.read('a'))?.record.removed_ms).toBeNull();
  });

  it('keeps restore points of each design, and forgets them with it', async () => {
    const point = (design: string, made_ms: number) => ({
      design,
      made_ms,
      name: 'before the foam',
      scenario: named('x'),
    });
    await db.write({ stored: later(stored('a', 'one'), 'two'), builtOn: null });
    await db.keepPoint(point('a', 1));
    await db.keepPoint(point('a', 2));
    await db.keepPoint(point('b', 1));
    await db.dropPoint('a', 2);
    expect(await db.points('a')).toEqual([point('a', 1)]);
    await db.forget('a');
    expect(await db.points('a')).toEqual([]);
    expect(await db.points('b')).toHaveLength(1);
    expect(await db.list()).toEqual([]);
    await db.write({ stored: stored('a', 'again'), builtOn: null });
    expect((await db.read('a'))?.history.entries).toEqual([]);
  });

  it('remembers what stood in the page last', async () => {
    await db.setLast({ example: 'boat' });
    await db.setLast({ design: 'a' });
    expect(await openShelf().last()).toEqual({ design: 'a' });
  });

  it('counts as refused when it has neither opened nor failed for five seconds, and opens once it can', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    try {
      // Another tab holds it while it is being deleted: whoever opens it waits.
      const held = await openDB('tankful', 1);
      const gone = deleteDB('tankful');
      const refused = expect(db.list()).rejects.toThrow(/within 5000 ms/);
      await vi.advanceTimersByTimeAsync(5_000);
      await refused;
      held.close();
      await gone;
      expect(await db.list()).toEqual([]);
    } finally {
      vi.useRealTimers();
    }
  });

  it('can be opened again after the browser refused it once', async () => {
    const real = globalThis.indexedDB;
    const refusing = {
      open: () => {
        throw new DOMException('no', 'SecurityError');
      },
    };
    globalThis.indexedDB = refusing as unknown as IDBFactory;
    await expect(db.list()).rejects.toThrow('no');
    globalThis.indexedDB = real;
    expect(await db.list()).toEqual([]);
  });
});
