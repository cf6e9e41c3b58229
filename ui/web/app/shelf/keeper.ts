/**
 * Keeps what stands in the page: every change goes to the shelf as it is made, and can be undone. An example gets its
 * place there with its first change; a design that another tab holds is only read here.
 */
import { pathSteps, type Scenario, valueAt } from '../../../../sim/index.ts';
import { shelfWords } from '../../../words/index.ts';
import type { Attached } from '../../worker/protocol.ts';
import type { Happening } from '../happenings.ts';
import type { Page } from '../page.ts';
import type { Design } from '../page-state.ts';
import type { DesignHolds } from './design-holds.ts';
import { type History, nothingDone, recorded, redone, undone } from './history.ts';
import type { Notice } from './kept.ts';
import { type KeptDesign, keepDesign } from './kept-design.ts';
import { noFiles, type ShelfDb, type Stored } from './shelf-db.ts';
import { createShelfList, nameOf, type ShelfList } from './shelf-list.ts';

/** Other tabs of the page: each tells which design it has written. */
export interface Neighbours {
  tell(design: string): void;
  hear(heard: (design: string) => void): void;
}

export interface KeeperDoors {
  page: Page;
  db: ShelfDb;
  holds: DesignHolds;
  neighbours: Neighbours;
  now(): number;
  newId(): string;
}

export interface Keeper {
  /** The design in the page; null for an example that was not changed yet. */
  current(): KeptDesign | null;
  list: Pick<ShelfList, 'records' | 'show'>;
  heard(happening: Exclude<Happening, { kind: 'asked' }>): void;
  undo(): void;
  redo(): void;
  /** Puts a design of the shelf in the page. */
  open(id: string): Promise<void>;
  /** Puts a copy of a design in the page, with all that was done to it. */
  copy(of: Stored): void;
  /** Goes on with a copy of the design in the page; what was refused is done there. */
  workOnCopy(): void;
  /** Ends with the design in the page, once it is written. */
  leave(): Promise<void>;
  /** Reads again what there is. */
  look(): Promise<void>;
  lookAtPoints(): Promise<void>;
}

export function createKeeper({ page, db, holds, neighbours, now, newId }: KeeperDoors): Keeper {
  const { store } = page;
  const list = createShelfList(store, db);
  const { show, renamed, unwritten } = list;
  let current: KeptDesign | null = null;
  let letGo = () => {};
  let leaving: Promise<unknown> = Promise.resolve();
  let turn = 0;
  let refused: Extract<Happening, { kind: 'refused' }>[] = [];

  const tell = (notice: Notice | null = null) => list.tell(current, notice);

  function keep(start: Stored, written: Stored | null): KeptDesign {
    const kept: KeptDesign = keepDesign(start, written, {
      db,
      now,
      alone: holds.sure,
      told(saved) {
        if (saved === 'elsewhere') overtaken(kept);
        else {
          if (saved.at === 'saved') neighbours.tell(kept.id);
          if (kept === current) show({ saved });
        }
      },
    });
    return kept;
  }

  /** Another tab was quicker, where the browser has no locks to prevent it: both are kept. */
  function overtaken(kept: KeptDesign): void {
    if (kept !== current) return;
    copy(kept.get());
    void leaving.then(() => unwritten.delete(kept.id));
    tell({ text: shelfWords.overtaken(store.get().design.name) });
    void look().catch(() => {});
  }

  function leave(): Promise<void> {
    const [left, end] = [current, letGo];
    current = null;
    letGo = () => {};
    refused = [];
    turn++;
    const ended = Promise.all([leaving, left?.settled()]).then(() => {
      if (left && !left.isWritten()) unwritten.set(left.id, left);
      end();
    });
    leaving = ended;
    return ended;
  }

  /** A new place on the shelf, which no other tab can know of. */
  function place(began: string, scenario: Scenario, attached: Attached, history: History): void {
    void leave();
    const id = newId();
    const own = { id, began, scenario, name: nameOf(scenario), version: '', done: history.done };
    const made_ms = now();
    const record = { ...own, made_ms, changed_ms: made_ms, removed_ms: null };
    const taking = holds.take(id);
    letGo = () => void taking.then((end) => end?.());
    current = keep({ record, history, attached }, null);
    void remember({ design: id });
    show({ saved: null, points: [] });
  }

  async function remember(last: Parameters<ShelfDb['setLast']>[0]): Promise<void> {
    // Where nothing can be kept, the next visit opens with the example: no more is lost.
    await db.setLast(last).catch(() => {});
  }

  function become(scenario: Scenario, history: History): void {
    const { attached = noFiles } = store.get().design;
    current?.become({ scenario, name: nameOf(scenario), history, attached });
  }

  function committed({ before, design, gesture }: Extract<Happening, { kind: 'committed' }>): void {
    let [was, is] = [before, design.scenario];
    if (!current) {
      if (was.name === is.name) is = renamed(is);
      if (is !== design.scenario) {
        was = { ...was, name: is.name ?? '' };
        page.put(is);
      }
      place(design.id, was, design.attached ?? noFiles, nothingDone);
    }
    become(is, recorded(current?.get().history ?? nothingDone, was, is, gesture, now()));
    tell();
  }

  function begun(design: Design, own: boolean): void {
    if (own) {
      const scenario = renamed(design.scenario);
      if (scenario !== design.scenario) page.put(scenario);
      place(design.id, scenario, design.attached ?? noFiles, nothingDone);
      become(scenario, nothingDone);
    } else {
      void leave();
      void remember({ example: design.id });
      show({ saved: null, points: [] });
    }
    tell();
  }

  function step(of: typeof undone, words: (gesture: string) => string): void {
    const { design, preview, readOnly, part } = store.get();
    const found = current && !readOnly && !preview && of(current.get().history, design.scenario);
    if (!found) return;
    page.put(found.scenario);
    become(found.scenario, found.history);
    const has = (scenario: Scenario) => valueAt(scenario, pathSteps(part ?? '')) !== undefined;
    if (part !== null && has(design.scenario) && !has(found.scenario)) page.openPart(null);
    tell({ text: words(found.gesture) });
  }

  async function open(id: string): Promise<void> {
    if (id === current?.id) return;
    const mine = ++turn;
    await leaving;
    const end = await holds.take(id);
    const left = unwritten.get(id);
    const stored = left?.get() ?? (await db.read(id).catch(() => undefined));
    if (mine !== turn || !stored || stored.record.removed_ms !== null) {
      end?.();
      if (mine === turn) tell({ text: stored === undefined ? shelfWords.unread : shelfWords.gone });
      return;
    }
    void leave();
    unwritten.delete(id);
    current = left ?? keep(stored, stored);
    page.show(designOf(stored.record.began, stored.record.scenario, stored.attached));
    letGo = end ?? holds.wait(id, (taken) => void takeOver(id, taken));
    if (!end) store.set({ readOnly: true });
    show({ saved: left ? null : { at: 'saved', ms: stored.record.changed_ms }, points: [] });
    // Tried again, now that it is asked for.
    if (left) become(stored.record.scenario, stored.history);
    tell();
    void remember({ design: id });
    void lookAtPoints();
  }

  /** The tab that held the design is gone: it goes on here as it was left there. */
  async function takeOver(id: string, end: () => void): Promise<void> {
    if (current?.id !== id) return end();
    letGo = end;
    await follow(id);
    // Left meanwhile: it was let go of then.
    if (letGo !== end) return;
    store.set({ readOnly: false });
    refused = [];
    tell({ text: shelfWords.takenOver });
  }

  /** As another tab has written it. */
  async function follow(id: string): Promise<void> {
    const stored = await db.read(id).catch(() => null);
    if (current?.id !== id || !stored) return;
    const { version } = current.get().record;
    if (stored.record.version === version) return;
    const { attached = noFiles } = store.get().design;
    const files = sameFiles(attached, stored.attached) ? attached : stored.attached;
    current = keep({ ...stored, attached: files }, { ...stored, attached: files });
    page.put(stored.record.scenario, files);
    show({ saved: { at: 'saved', ms: stored.record.changed_ms } });
    tell();
  }

  async function look(): Promise<void> {
    // What is still being written is not to be missed.
    await leaving;
    await list.read();
    tell(store.get().kept?.notice);
    await lookAtPoints();
  }

  async function lookAtPoints(): Promise<void> {
    const kept = current;
    const points = kept ? await list.readPoints(kept.id) : [];
    if (kept === current) show({ points });
  }

  function copy({ record, history, attached }: Stored): void {
    const scenario = renamed(record.scenario);
    const inPage = record.id === current?.id;
    place(record.began, scenario, attached, history);
    if (inPage) {
      page.put(scenario);
      store.set({ readOnly: false });
    } else page.show(designOf(record.began, scenario, attached));
    become(scenario, history);
    tell({ text: shelfWords.copied(nameOf(scenario)) });
  }

  neighbours.hear((id) => {
    if (id === current?.id && store.get().readOnly && !store.get().preview) void follow(id);
    void look().catch(() => {});
  });

  return {
    current: () => current,
    list,
    heard(happening) {
      if (happening.kind === 'committed') committed(happening);
      else if (happening.kind === 'begun') begun(happening.design, happening.own);
      else {
        refused.push(happening);
        tell({
          text: shelfWords.refused(happening.gesture),
          offer: { text: shelfWords.workOnCopy, ask: { verb: 'work-on-copy' } },
        });
      }
    },
    undo: () => step(undone, shelfWords.undone),
    redo: () => step(redone, shelfWords.redone),
    open,
    copy,
    workOnCopy() {
      if (!current) return;
      const todo = refused;
      copy(current.get());
      for (const { edits, gesture, attached } of todo) page.commit(edits, gesture, attached);
      tell({ text: shelfWords.copied(store.get().design.name) });
    },
    leave,
    look,
    lookAtPoints,
  };
}

function designOf(id: string, scenario: Scenario, attached: Attached): Design {
  return { id, name: nameOf(scenario), scenario, ...(attached === noFiles ? {} : { attached }) };
}

/** Files are megabytes long: the same ones do not go to the workers again. */
function sameFiles(a: Attached, b: Attached): boolean {
  const names = Object.keys(a);
  return names.length === Object.keys(b).length && names.every((name) => a[name] === b[name]);
}
