/** Answers: which can be asked of a design, and how they come. */
import type { SectionFacts } from '../../../sim/index.ts';
import type { Pool, UnderWay } from '../worker/pool.ts';
import type { AnswerKey, AnswerState, Answers, PageState } from './page-state.ts';
import type { Store } from './store.ts';

export const answerKeys = ['showers', 'coil', 'charging', 'collector', 'hours', 'store'] as const;

/** Quick enough to be worked out unasked, after each run of a new design. */
export const unasked: readonly AnswerKey[] = ['coil', 'charging'];

export const noAnswers = Object.fromEntries(answerKeys.map((key) => [key, { at: 'none' }])) as Answers;

/** Whether a plant has what the question is about. */
export function canAsk(key: AnswerKey, { taps, engine, collector }: SectionFacts): boolean {
  switch (key) {
    case 'coil':
    case 'showers':
      return taps !== null;
    case 'charging':
      return engine !== null;
    case 'hours':
      return engine !== null && taps !== null;
    case 'collector':
      return collector !== null;
    case 'store':
      return true;
  }
}

export interface Asking {
  ask(key: AnswerKey): void;
  stop(key: AnswerKey): void;
  /** What is under way is of no use any more. */
  stopAll(): void;
  /** The quick ones, for a design that was just run. */
  askQuick(): void;
}

export function createAsking(store: Store<PageState>, pool: Pool, now: () => number): Asking {
  const underWay = new Map<AnswerKey, UnderWay>();

  function patch(key: AnswerKey, change: Partial<AnswerState>): void {
    const { answers } = store.get();
    store.set({ answers: { ...answers, [key]: { ...answers[key], ...change } } });
  }

  function ask(key: AnswerKey): void {
    underWay.get(key)?.stop();
    const { scenario } = store.get().design;
    const { answer, of } = store.get().answers[key];
    const last = answer && of ? { answer, of } : {};
    const state: AnswerState = { ...last, at: 'working', progress: [0, 0], since_ms: now() };
    store.set({ answers: { ...store.get().answers, [key]: state } });
    const mine = pool.answer(key, scenario, {
      progress(done, of) {
        if (underWay.get(key) === mine) patch(key, { progress: [done, of] });
      },
      answered(answer) {
        if (underWay.get(key) !== mine) return;
        underWay.delete(key);
        patch(key, { at: answer.stopped ? 'stopped' : 'done', answer, of: scenario });
      },
      failed(problem) {
        if (underWay.get(key) !== mine) return;
        underWay.delete(key);
        patch(key, { at: 'failed', problem });
      },
    });
    underWay.set(key, mine);
  }

  return {
    ask,
    stop(key) {
      underWay.get(key)?.stop();
    },
    stopAll() {
      for (const [key, mine] of underWay) {
        underWay.delete(key);
        mine.stop();
        patch(key, { at: store.get().answers[key].answer ? 'done' : 'none' });
      }
    },
    askQuick() {
      const { facts, design, answers } = store.get();
      for (const key of unasked) {
        if (facts && canAsk(key, facts) && answers[key].of !== design.scenario) ask(key);
      }
    },
  };
}
