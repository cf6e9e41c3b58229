/** Answers: which can be asked of a design, and how they come. */
import type { Answer, RangeAnswer, SectionFacts } from '../../../sim/index.ts';
import type { Heard, Pool, UnderWay } from '../worker/pool.ts';
import type { AnswerKey, AnswerState, Answers, PageState, RangeSpec, RangeState } from './page-state.ts';
import type { Store } from './store.ts';

export const answerKeys = [
  'showers',
  'coil',
  'charging',
  'collector',
  'hours',
  'store',
  'breaks',
  'season',
  'doubts',
  'next',
] as const;

/** Quick enough to be worked out unasked, after each run of a new design. */
const unasked: readonly AnswerKey[] = ['coil', 'charging', 'showers'];

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
    case 'breaks':
    case 'season':
    case 'doubts':
    case 'next':
      return true;
  }
}

export interface Asking {
  ask(key: AnswerKey): void;
  tryRange(spec: RangeSpec): void;
  stop(key: AnswerKey | 'range'): void;
  /** What is under way is of no use any more. */
  stopAll(): void;
  /** The quick ones, for a design that was just run and stays for a moment. */
  askQuick(): void;
}

/** Whoever changes a design changes it again at once, or rests for longer than this. */
const rest_ms = 1200;

export function createAsking(
  store: Store<PageState>,
  pool: Pool,
  { now, later }: { now(): number; later(act: () => void, ms: number): () => void },
): Asking {
  let forget = () => {};
  const underWay = new Map<AnswerKey | 'range', UnderWay>();

  function stateOf(key: AnswerKey | 'range'): AnswerState | RangeState | null {
    const { answers, range } = store.get();
    return key === 'range' ? range : answers[key];
  }

  function put(key: AnswerKey | 'range', state: AnswerState | RangeState): void {
    if (key === 'range') store.set({ range: state as RangeState });
    else store.set({ answers: { ...store.get().answers, [key]: state } });
  }

  function patch(key: AnswerKey | 'range', change: Partial<AnswerState | RangeState>): void {
    const state = stateOf(key);
    if (state) put(key, { ...state, ...change } as AnswerState);
  }

  /** What is told of a question that was asked anew meanwhile is not taken in. */
  function begin(
    key: AnswerKey | 'range',
    start: (heard: Heard<Answer | RangeAnswer>) => UnderWay,
    stopped: (answer: Answer | RangeAnswer) => boolean,
  ): void {
    underWay.get(key)?.stop();
    const { scenario } = store.get().design;
    patch(key, { at: 'working', progress: [0, 0], since_ms: now() });
    const mine = start({
      progress(done, of) {
        if (underWay.get(key) === mine) patch(key, { progress: [done, of] });
      },
      answered(answer) {
        if (underWay.get(key) !== mine) return;
        underWay.delete(key);
        patch(key, {
          at: stopped(answer) ? 'stopped' : 'done',
          answer,
          of: scenario,
        } as Partial<AnswerState>);
      },
      failed(problem) {
        if (underWay.get(key) !== mine) return;
        underWay.delete(key);
        patch(key, { at: 'failed', problem });
      },
    });
    underWay.set(key, mine);
  }

  function ask(key: AnswerKey): void {
    const { scenario } = store.get().design;
    begin(
      key,
      (heard) => pool.answer(key, scenario, heard),
      (answer) => 'key' in answer && answer.stopped === true,
    );
  }

  return {
    ask,
    tryRange(spec) {
      const { path, from, to, n } = spec;
      const { scenario } = store.get().design;
      underWay.get('range')?.stop();
      underWay.delete('range');
      store.set({ range: { spec, at: 'none' } });
      begin(
        'range',
        (heard) => pool.range(`${path}=${from}:${to}:${n}`, scenario, heard),
        (answer) => 'points' in answer && answer.done < answer.points.length,
      );
    },
    stop(key) {
      underWay.get(key)?.stop();
    },
    stopAll() {
      forget();
      for (const [key, mine] of underWay) {
        underWay.delete(key);
        mine.stop();
        patch(key, { at: stateOf(key)?.answer ? 'done' : 'none' });
      }
      pool.endAnswers();
    },
    askQuick() {
      forget();
      forget = later(() => {
        const { facts, design, answers } = store.get();
        for (const key of unasked) {
          if (facts && canAsk(key, facts) && answers[key].of !== design.scenario) ask(key);
        }
      }, rest_ms);
    },
  };
}
