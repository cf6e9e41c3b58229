/** What is on the shelf, as the page shows it: all that is in the database, and what could not be written there. */
import type { Scenario } from '../../../../sim/index.ts';
import { freeName } from '../../../words/index.ts';
import type { PageState } from '../page-state.ts';
import type { Store } from '../store.ts';
import { nothingDone, redoable, undoable } from './history.ts';
import { type Kept, type Notice, nothingKept } from './kept.ts';
import type { KeptDesign } from './kept-design.ts';
import type { DesignRecord, ShelfDb } from './shelf-db.ts';

export interface ShelfList {
  records(): DesignRecord[];
  /** Designs that were left before they could be written: they last as long as the page. */
  unwritten: Map<string, KeptDesign>;
  /** Reads again what there is. */
  read(): Promise<void>;
  /** Restore points of a design, newest first. */
  readPoints(design: string): Promise<Kept['points']>;
  show(patch: Partial<Kept>): void;
  /** All that is seen of the shelf, with a design in the page, or an example that was not changed yet. */
  tell(current: KeptDesign | null, notice: Notice | null): void;
  /** A scenario whose name no other design of the shelf has. */
  renamed(scenario: Scenario): Scenario;
}

export function createShelfList(store: Store<PageState>, db: ShelfDb): ShelfList {
  let records = new Map<string, DesignRecord>();
  const unwritten = new Map<string, KeptDesign>();

  function show(patch: Partial<Kept>): void {
    store.set({ kept: { ...(store.get().kept ?? nothingKept), ...patch } });
  }

  return {
    records: () => [...records.values()],
    unwritten,
    async read() {
      const listed = await db.list();
      records = new Map(listed.map((record) => [record.id, record]));
      for (const [id, left] of unwritten) records.set(id, left.get().record);
    },
    async readPoints(design) {
      const points = await db.points(design).catch(() => []);
      return points.map(({ made_ms, name }) => ({ made_ms, name })).reverse();
    },
    show,
    tell(current, notice) {
      const history = current?.get().history ?? nothingDone;
      if (current) records.set(current.id, current.get().record);
      const shelf = [...records.values()]
        .map(({ id, name, changed_ms, removed_ms }) => ({
          id,
          name,
          changed_ms,
          removed: removed_ms !== null,
        }))
        .sort((a, b) => Number(a.removed) - Number(b.removed) || b.changed_ms - a.changed_ms);
      const [undo, redo] = [undoable(history)?.gesture ?? null, redoable(history)?.gesture ?? null];
      show({ id: current?.id ?? null, undo, redo, shelf, notice });
    },
    renamed(scenario) {
      const taken = [...records.values()].filter(({ removed_ms }) => removed_ms === null);
      const others = taken.map((each) => each.name);
      const name = freeName(nameOf(scenario), others);
      return name === scenario.name ? scenario : { ...scenario, name };
    },
  };
}

export function nameOf({ name }: Scenario): string {
  return typeof name === 'string' ? name : '';
}
