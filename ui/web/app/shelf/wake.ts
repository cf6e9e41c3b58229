/** Wakes the shelf once the page stands: what the person has begun meanwhile goes on, else the last design opens. */
import { shelfWords } from '../../../words/index.ts';
import { linkMark } from '../files/link-mark.ts';
import { createHolds } from './design-holds.ts';
import { createKeeper, type KeeperDoors } from './keeper.ts';
import { openShelf } from './shelf-db.ts';
import { createShelfVerbs, keptOff_days } from './shelf-verbs.ts';

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
  keeper.show(readable ? {} : { saved: { at: 'failed', why: 'refused' } });
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
    const there = keeper.records().find(({ id, removed_ms }) => id === last.design && removed_ms === null);
    if (there && keeper.current()?.id !== last.design) {
      const ask = { verb: 'open', id: there.id } as const;
      keeper.show({
        notice: { text: shelfWords.otherLast(there.name), offer: { text: shelfWords.openIt, ask } },
      });
    }
  } else if (last && last.example !== design.id && free()) await page.chooseScenario(last.example);
  await forgetOld(doors);
}

/** Designs that were taken off long ago. */
async function forgetOld({ db, now }: WakeDoors): Promise<void> {
  const until_ms = now() - keptOff_days * 86_400_000;
  for (const { id, removed_ms } of await db.list().catch(() => [])) {
    if (removed_ms !== null && removed_ms < until_ms) await db.forget(id).catch(() => {});
  }
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
