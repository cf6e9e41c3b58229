/** The page with a shelf in a database of memory; other tabs of it, and what is refused, are in the test's hand. */
import { IDBFactory } from 'fake-indexeddb';
import type { DesignHolds } from '../../../../../ui/web/app/shelf/design-holds.ts';
import { openShelf, type ShelfDb } from '../../../../../ui/web/app/shelf/shelf-db.ts';
import { wakeShelf } from '../../../../../ui/web/app/shelf/wake.ts';
import { setUp } from '../held-page.ts';

/** A browser: what all its tabs share. */
export function openBrowser() {
  globalThis.indexedDB = new IDBFactory();
  const held = new Map<string, (() => void)[]>();
  const tabs = new Set<(design: string) => void>();
  let ids = 0;
  let now_ms = 1000;

  function letGo(design: string): void {
    const [next, ...others] = held.get(design) ?? [];
    if (next) {
      held.set(design, others);
      next();
    } else held.delete(design);
  }
  const holds: DesignHolds = {
    sure: true,
    async take(design) {
      if (held.has(design)) return null;
      held.set(design, []);
      return () => letGo(design);
    },
    wait(design, taken) {
      const mine = () => taken(() => letGo(design));
      if (held.has(design)) held.get(design)?.push(mine);
      else {
        held.set(design, []);
        mine();
      }
      return () => {
        held.set(design, held.get(design)?.filter((each) => each !== mine) ?? []);
      };
    },
  };

  /** A tab that was just opened; `hurried` acts on its page before the shelf is awake. */
  async function openTab({
    hurried = () => {},
    failing = () => null,
    busy = false,
    alone = false,
  }: {
    hurried?: (tab: ReturnType<typeof setUp>) => void;
    /** What a writing is refused with. */
    failing?: () => Error | null;
    busy?: boolean;
    /** Without locks between tabs. */
    alone?: boolean;
  } = {}) {
    const tab = setUp();
    tab.finish();
    hurried(tab);
    const real = openShelf();
    const db: ShelfDb = {
      ...real,
      async write(writing) {
        const error = failing();
        if (error) throw error;
        return real.write(writing);
      },
    };
    let hear = (_: string) => {};
    await wakeShelf({
      page: tab.page,
      db,
      holds: alone ? { sure: false, take: async () => () => {}, wait: () => () => {} } : holds,
      neighbours: {
        tell: (design) => {
          for (const each of tabs) if (each !== hear) each(design);
        },
        hear(heard) {
          hear = heard;
          tabs.add(heard);
        },
      },
      now: () => now_ms++,
      newId: () => `design ${++ids}`,
      busy: () => busy,
    });
    const kept = () => {
      const { kept } = tab.get();
      if (!kept) throw new Error('expected the shelf to be awake');
      return kept;
    };
    return {
      ...tab,
      db,
      kept,
      design: () => tab.get().design,
      depth: () => tab.get().design.scenario.store.water_depth,
      names: () =>
        kept()
          .shelf.filter(({ removed }) => !removed)
          .map(({ name }) => name),
    };
  }
  return {
    openTab,
    pass: (ms: number) => {
      now_ms += ms;
    },
    db: openShelf(),
    /** As if the tab that holds a design were gone. */
    close: letGo,
  };
}

/** Until all that was begun has ended: the database answers in turns of its own. */
export async function settled(): Promise<void> {
  for (let turn = 0; turn < 60; turn++) await new Promise((done) => setTimeout(done, 0));
}
