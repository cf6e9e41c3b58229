/** Keeps results in step with the design: a quick estimate while a hand moves, the full run when it lets go. */
import type { Scenario, SectionFacts } from '../../../sim/index.ts';
import type { RunReport } from '../worker/protocol.ts';
import type { Runner } from '../worker/runner.ts';
import type { PageState, Shown } from './page-state.ts';
import type { Store } from './store.ts';

export interface Live {
  /** Runs the design as it stands. */
  full(): void;
  /** Has the worker compile its code by a run that nobody looks at. */
  wake(): void;
  /** A quick look at a design that a hand still moves. */
  estimate(scenario: Scenario): void;
  /** Back from a quick look to the last full run, or to a new one if the design has changed since. */
  settle(): void;
  stop(): void;
}

/** No problems: always the same list, so that who shows it sees no change. */
const sound: PageState['problems'] = [];

type Read = Pick<Shown, 'facts' | 'firstWeekday' | 'filled' | 'notes'>;

/** A hand that moves on within this does not want its last place drawn more fully [ms]. */
const rest_ms = 120;

/** @param done called with every full run that worked */
export function createLive(
  store: Store<PageState>,
  runner: Runner,
  later: (act: () => void, ms: number) => () => void,
  done: (shown: Shown) => void,
): Live {
  let forget = () => {};

  function hear(scenario: Scenario, full: boolean): (report: RunReport) => void {
    let read: Read | null = null;
    let pictures = 0;
    return (report) => {
      switch (report.kind) {
        case 'read': {
          const { facts, firstWeekday, filled, notes } = report;
          read = { facts, firstWeekday, filled, notes };
          // Of a quick look all comes at once: the drawing is drawn once.
          if (full) store.set({ facts, problems: sound });
          return;
        }
        case 'refused':
          store.set({
            problems: report.problems,
            facts: drawable(store.get().facts, report.sketch),
            progress: null,
            estimate: null,
          });
          return;
        case 'failed':
          store.set({ problems: [report.problem], progress: null, estimate: null });
          return;
        case 'progress':
          store.set({ progress: report.share });
          return;
        case 'result': {
          if (!read) return;
          const shown: Shown = { scenario, result: report.result, ...read };
          if (full) {
            store.set({ shown, estimate: null, progress: null });
            done(shown);
          } else {
            const { facts } = read;
            const show = () =>
              store.set({ estimate: { ...shown, ofDays: report.ofDays }, facts, problems: sound });
            forget();
            // The first days follow the hand; the others come when it rests.
            if (pictures++ === 0) show();
            else forget = later(show, rest_ms);
          }
        }
      }
    };
  }

  function run(scenario: Scenario, full: boolean): void {
    forget();
    runner.run(scenario, full ? 'full' : 'estimate', hear(scenario, full));
  }

  function full(): void {
    const { scenario } = store.get().design;
    store.set({ progress: 0 });
    run(scenario, true);
  }

  return {
    full,
    wake() {
      runner.run(store.get().design.scenario, 'estimate', () => {});
    },
    estimate(scenario) {
      if (store.get().progress !== null) store.set({ progress: null });
      run(scenario, false);
    },
    settle() {
      const { shown, design } = store.get();
      forget();
      runner.stop();
      if (shown?.scenario === design.scenario)
        store.set({ estimate: null, problems: sound, facts: shown.facts, progress: null });
      else full();
    },
    stop() {
      runner.stop();
      store.set({ progress: null });
    },
  };
}

/** Store and coils of a design that cannot be run, beside what was known; nothing where nothing was. */
function drawable(
  facts: SectionFacts | null,
  sketch: Pick<SectionFacts, 'store' | 'coils'> | null,
): SectionFacts | null {
  return facts && sketch ? { ...facts, ...sketch } : facts;
}
