/** What a person asks of the shelf, one thing after the other. */
import type { Edit, Scenario } from '../../../../sim/index.ts';
import { shelfWords } from '../../../words/index.ts';
import type { Page } from '../page.ts';
import type { DesignHolds } from './design-holds.ts';
import type { Keeper } from './keeper.ts';
import type { KeepVerb, Notice } from './kept.ts';
import type { ShelfDb } from './shelf-db.ts';

export interface ShelfDoors {
  page: Page;
  keeper: Keeper;
  db: ShelfDb;
  holds: DesignHolds;
  now(): number;
}

export function createShelfVerbs({ page, keeper, db, holds, now }: ShelfDoors): (asked: KeepVerb) => void {
  const notice = (text: string, offer?: Notice['offer']) =>
    keeper.list.show({ notice: offer ? { text, offer } : { text } });

  async function act(asked: KeepVerb): Promise<void> {
    switch (asked.verb) {
      case 'undo':
        return keeper.undo();
      case 'redo':
        return keeper.redo();
      case 'work-on-copy':
        return keeper.workOnCopy();
      case 'open':
        return keeper.open(asked.id);
      case 'duplicate': {
        const current = keeper.current();
        const stored = current?.id === asked.id ? current.get() : await db.read(asked.id);
        return stored ? keeper.copy(stored) : notice(shelfWords.gone);
      }
      case 'remove':
        return remove(asked.id);
      case 'put-back':
        await db.mark(asked.id, null);
        await keeper.look();
        return keeper.open(asked.id);
      case 'keep-point': {
        const current = keeper.current();
        if (!current) return;
        const { scenario } = page.store.get().design;
        await db.keepPoint({ design: current.id, made_ms: now(), name: asked.name, scenario });
        return keeper.lookAtPoints();
      }
      case 'go-back':
        return goBack(asked.made_ms);
      case 'drop-point':
        await db.dropPoint(keeper.current()?.id ?? '', asked.made_ms);
        return keeper.lookAtPoints();
    }
  }

  /** Off the shelf; if it stands in the page, the newest of the others takes its place, or the first example. */
  async function remove(id: string): Promise<void> {
    const name = keeper.list.records().find((record) => record.id === id)?.name ?? '';
    const inPage = keeper.current()?.id === id;
    if (inPage && page.store.get().readOnly) return notice(shelfWords.openElsewhere(name));
    if (inPage) await keeper.current()?.settled();
    const end = inPage ? () => {} : await holds.take(id);
    if (!end) return notice(shelfWords.openElsewhere(name));
    await db.mark(id, now());
    end();
    if (inPage) {
      await keeper.leave();
      const [next] = (await db.list()).filter(({ removed_ms }) => removed_ms === null);
      await (next ? keeper.open(next.id) : page.chooseScenario(page.catalogue[0].id));
    }
    await keeper.look();
    notice(shelfWords.removed(name), { text: shelfWords.putBack, ask: { verb: 'put-back', id } });
  }

  /** A gesture as any other: it can be undone. The design keeps its name. */
  async function goBack(made_ms: number): Promise<void> {
    const id = keeper.current()?.id;
    const point = id && (await db.points(id)).find((each) => each.made_ms === made_ms);
    if (!point || keeper.current()?.id !== id) return notice(shelfWords.gone);
    page.commit(turnInto(page.store.get().design.scenario, point.scenario), shelfWords.wentBack(point.name));
  }

  let before: Promise<void> = Promise.resolve();
  return (asked) => {
    // A gesture is undone at once, in the design that is seen.
    if (asked.verb === 'undo' || asked.verb === 'redo') void act(asked);
    else before = before.then(() => act(asked)).catch(() => notice(shelfWords.unread));
  };
}

/** Edits that make one scenario out of another, but for its name. */
function turnInto(from: Scenario, to: Scenario): Edit[] {
  const keys = new Set(Object.keys({ ...from, ...to }) as (keyof Scenario)[]);
  keys.delete('name');
  return [...keys].map((path) => ({ path, value: to[path] }));
}
