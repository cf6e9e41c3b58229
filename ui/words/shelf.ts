/** Words of the shelf: what is kept, what can be undone, and what another tab has to do with it. */
import { dateFormat } from './locale.ts';

export const shelfTitles = { shelf: 'Shelf', examples: 'Examples, for a new design' } as const;

export const shelfWords = {
  undo: 'Undo',
  redo: 'Redo',
  /** "Undo: more foam". */
  gesture: (verb: string, gesture: string | null) => (gesture === null ? verb : `${verb}: ${gesture}`),
  undone: (gesture: string) => `Undone: ${gesture}.`,
  redone: (gesture: string) => `Done again: ${gesture}.`,
  name: 'Shelf',
  saved: (clock: string) => `Saved on this computer ${clock}`,
  example: 'An example: your first change makes it a design of your own.',
  unsaved: {
    full: 'Not saved: this computer has no room left for the page. Work goes on; make room, or save to a file before you close it.',
    refused:
      'Not saved: the browser keeps nothing for this page, as in a private window. Work goes on; save to a file before you close it.',
  },
  saveToFile: 'Save to a file',
  reading: 'Open in another tab: here it can be read. It can be changed here once that tab has closed it.',
  workOnCopy: 'Work on a copy',
  refused: (gesture: string) =>
    `Not changed here: ${gesture}. Another tab has this design open. Work on a copy, and it is done there.`,
  /** Beside what was entered. */
  refusedEntry: {
    expected: 'a design that no other tab has open',
    fix: 'work on a copy, offered at the top of the page, and it is done there',
  },
  unreadEntry: 'Until it can be read it is not part of the design, and is not kept.',
  overtaken: (name: string) =>
    `Another tab has changed this design meanwhile. You go on with a copy, ${name}: nothing is lost.`,
  takenOver: 'The other tab has closed this design: it can be changed here now, as it was left there.',
  otherLast: (name: string) => `${name} is on the shelf, as you left it.`,
  openIt: 'Open it',
  openElsewhere: (name: string) => `${name} stays: it is open in another tab. Close it there first.`,
  gone: 'It is not on the shelf any more.',
  unread: 'The shelf cannot be read just now: the browser refused it.',
  removed: (name: string) => `${name} was taken off the shelf.`,
  copied: (name: string) => `You work on the copy: ${name}.`,
  putBack: 'Put back',
  title: 'Shelf',
  intro:
    'Your designs, kept in this browser on this computer. Examples stay as they are: each gives a new design.',
  none: 'Nothing yet: change an example, and it stands here.',
  close: 'Close',
  here: 'In the page now',
  changed: (when: string) => `changed ${when}`,
  open: 'Open',
  duplicate: 'Duplicate',
  remove: 'Take off the shelf',
  rename: 'Name',
  renamed: 'name',
  points: 'Restore points',
  pointsIntro:
    'A state of the design in the page that you can go back to, however much you change. Going back can be undone.',
  pointName: 'Name of the state as it is now',
  keepPoint: 'Keep this state',
  goBack: 'Go back to it',
  dropPoint: 'Forget it',
  wentBack: (name: string) => `back to ${name}`,
  off: 'Taken off the shelf',
  offIntro: (days: number) => `Kept for ${days} days.`,
} as const;

/** "copy of Larch Hollow" or, where a name is taken, the name with the next number that is free. */
export function freeName(name: string, taken: readonly string[]): string {
  const bare = name.replace(/ \(\d+\)$/, '');
  let free = name;
  for (let n = 2; taken.includes(free); n++) free = `${bare} (${n})`;
  return free;
}

const clock = dateFormat({ hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
const day = dateFormat({ month: 'short', day: 'numeric' });

/** "12:04" by the clock of the reader's place. */
export function clockText(at_ms: number): string {
  return clock.format(at_ms);
}

/** "Jan 9, 12:04". */
export function dayClockText(at_ms: number): string {
  return `${day.format(at_ms)}, ${clock.format(at_ms)}`;
}
