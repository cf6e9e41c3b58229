/** Turns what elements tell into the page's verbs. */
import type { PageEvents } from './events.ts';
import type { Page } from './page.ts';

type Verbs = { [Name in keyof PageEvents]: (detail: PageEvents[Name]) => void };

/** Hears every event of the page's elements until the returned function is called. */
export function listen(root: EventTarget, page: Page): () => void {
  const verbs: Verbs = {
    'hand-near': () => page.wake(),
    'preview-edits': ({ edits }) => page.preview(edits),
    'commit-edits': ({ edits, gesture }) => page.commit(edits, gesture),
    cancel: () => page.cancelPreview(),
    typed: ({ path, text }) => page.keepTyped(path, text),
    'open-part': ({ path }) => page.openPart(path),
    'add-part': ({ kind }) => void page.changePart({ verb: 'add', kind }),
    'duplicate-part': ({ path }) => void page.changePart({ verb: 'duplicate', path }),
    'remove-part': ({ path }) => void page.changePart({ verb: 'remove', path }),
    'try-range': (spec) => page.tryRange(spec),
    ask: ({ key }) => page.ask(key),
    'stop-asking': ({ key }) => page.stopAsking(key),
    'move-cursor': ({ time_s }) => page.moveCursor(time_s),
    zoom: ({ window_s }) => page.zoom(window_s),
    keep: (asked) => page.keep(asked),
    'need-detail': (stretch) => page.lookCloser(stretch),
    'show-sheet': ({ open }) => page.showSheet(open),
    'open-log': (log) => page.openLog(log),
  };
  const ends = Object.entries(verbs).map(([name, verb]) => {
    const hear = (event: Event) => {
      // A dialog's own `cancel` and the like are not for the page.
      if (event instanceof CustomEvent) (verb as (detail: unknown) => void)(event.detail);
    };
    root.addEventListener(name, hear);
    return () => root.removeEventListener(name, hear);
  });
  return () => {
    for (const end of ends) end();
  };
}
