/** What designs go through on the page, for whoever keeps them: who comes late is told all the same. */
import type { Edit, Scenario } from '../../../sim/index.ts';
import type { Attached } from '../worker/protocol.ts';
import type { Design } from './page-state.ts';
import type { KeepVerb } from './shelf/kept.ts';

export type Happening =
  /** Another design stands in the page, from an example, a file or a link; `own` if it is nowhere else. */
  | { kind: 'begun'; design: Design; own: boolean }
  /** `before` is what the design was until then. */
  | { kind: 'committed'; before: Scenario; design: Design; gesture: string }
  /** The design may not be changed here: what was wanted all the same. */
  | { kind: 'refused'; edits: Edit[]; gesture: string; attached?: Attached }
  /** Something was asked of the shelf. */
  | { kind: 'asked'; asked: KeepVerb };

export interface Happenings {
  tell(happening: Happening): void;
  /** `heard` gets what has been told so far, and all that follows. */
  hear(heard: (happening: Happening) => void): void;
}

export function createHappenings(): Happenings {
  const waiting: Happening[] = [];
  let heard = (happening: Happening): void => {
    waiting.push(happening);
  };
  return {
    tell: (happening) => heard(happening),
    hear(act) {
      heard = act;
      for (const each of waiting.splice(0)) act(each);
    },
  };
}
