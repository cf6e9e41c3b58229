/** What a person can do on the page, as plain functions over the store and the runner. */
import type { Units } from '../../words/index.ts';
import type { Report } from '../worker/protocol.ts';
import type { Runner } from '../worker/runner.ts';
import { type CatalogueEntry, openingScenario } from './catalogue.ts';
import type { Choice, PageState } from './page-state.ts';
import { spanOf, spanTroubles, withSpan } from './span.ts';
import { createStore, type Store } from './store.ts';

export interface Page {
  store: Store<PageState>;
  catalogue: CatalogueEntry[];
  /** Takes up the scenario's own span, and runs it. */
  chooseScenario(id: string): void;
  /** Runs the chosen scenario over another span. */
  chooseSpan(span: Partial<Pick<Choice, 'from' | 'days'>>): void;
  chooseUnits(units: Units): void;
  stop(): void;
}

/** Opens the page's state and starts the first run. */
export function openPage(catalogue: CatalogueEntry[], runner: Runner): Page {
  const opening = catalogue.find(({ id }) => id === openingScenario) ?? catalogue[0];
  const store = createStore<PageState>({
    choice: { scenario: opening.id, ...spanOf(opening.scenario) },
    units: 'US',
    progress: null,
    troubles: [],
    shown: null,
  });

  function start(choice: Choice): void {
    const troubles = spanTroubles(choice);
    const entry = catalogue.find(({ id }) => id === choice.scenario);
    runner.stop();
    if (troubles.length > 0 || !entry) {
      store.set({ choice, troubles, progress: null });
      return;
    }
    store.set({ choice, troubles: [], progress: 0 });
    runner.run(withSpan(entry.scenario, choice), (report) => hear(choice, report));
  }

  function hear(choice: Choice, report: Report): void {
    switch (report.kind) {
      case 'progress':
        store.set({ progress: report.share });
        return;
      case 'refused':
        store.set({ progress: null, troubles: report.troubles });
        return;
      case 'done': {
        const { result, firstWeekday, filled } = report;
        store.set({ progress: null, shown: { choice, result, firstWeekday, filled } });
      }
    }
  }

  start(store.get().choice);
  return {
    store,
    catalogue,
    chooseScenario(id) {
      const entry = catalogue.find((each) => each.id === id);
      if (entry) start({ scenario: id, ...spanOf(entry.scenario) });
    },
    chooseSpan(span) {
      start({ ...store.get().choice, ...span });
    },
    chooseUnits(units) {
      store.set({ units });
    },
    stop() {
      runner.stop();
      store.set({ progress: null });
    },
  };
}
