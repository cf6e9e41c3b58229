/** Wakes the shelf once the page stands: what the person has begun meanwhile goes on, else the last design opens. */
import { shelfWords } from '../../../words/index.ts';
import { linkMark } from '../files/link-mark.ts';
import { createHolds } from './design-holds.ts';
import { createKeeper, type KeeperDoors } from './keeper.ts';
import { keptOff_days } from './kept.ts';
import { openShelf } from './shelf-db.ts';
import { createShelfVerbs } from './shelf-verbs.ts';

export interface WakeDoors extends KeeperDoors {
  /** Whether the person is at something in the page that another design would take away. */
  busy(): boolean;
}

export async function wakeShelf(doors: WakeDoors): Promise<void> {
  const { page, db, busy } = doors;
  const keeper = createKeeper(doors);
  const act = createShelfVerbs({ ...doors, keeper });
  let begun = false;
  const last = await db.last().catch(() => null);
  const readable = await keeper.look().then(
    () => true,
    () => false,
  );
  keeper.list.show(readable ? {} : { saved: { at: 'failed', why: 'refused' } });
  page.hear((happening) => {
    begun = true;
    if (happening.kind === 'asked') act(happening.asked);
    else keeper.heard(happening);
  });
  const { preview, part, typed, design } = page.store.get();
  const free = () =>
    !begun && preview === null && part === null && Object.keys(typed).length === 0 && !busy();
  if (last && 'design' in last) {
    if (free()) await keeper.open(last.design);
    const there = keeper.list
      .records()
      .find(({ id, removed_ms }) => id === last.design && removed_ms === null);
    if (there && keeper.current()?.id !== last.design) {
      const ask = { verb: 'open', id: there.id } as const;
      keeper.list.show({
        notice: { text: shelfWords.otherLast(there.name), offer: { text: shelfWords.openIt, ask } },
      });
    }
  } else if (last && last.example !== design.id && free()) await page.chooseScenario(last.example);
  if (await forgetOld(doors)) await keeper.look();
}

/** Designs that were taken off long ago; whether there were any. */
async function forgetOld({ db, now }: WakeDoors): Promise<boolean> {
  const until_ms = now() - keptOff_days * 86_400_000;
  const listed = await db.list().catch(() => []);
  const old = listed.filter(({ removed_ms }) => removed_ms !== null && removed_ms < until_ms);
  for (const { id } of old) await db.forget(id).catch(() => {});
  return old.length > 0;
}

/** In a browser. */
export function wakeInBrowser(page: KeeperDoors['page']): Promise<void> {
  const channel = new BroadcastChannel('tankful shelf');
  return wakeShelf({
    page,
    db: openShelf(),
    holds: createHolds(navigator.locks),
    neighbours: {
      tell: (design) => channel.postMessage(design),
      hear: (heard) => {
        channel.onmessage = ({ data }) => heard(String(data));
      },
    },
    now: () => Date.now(),
    newId: () => `${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 12)}`,
    busy: () =>
      (document.activeElement !== null && document.activeElement !== document.body) ||
      location.hash.startsWith(linkMark),
  });
}
