/** The page's verbs with doors that a test holds: runs, answers and ranges are told by hand. */
import demo from '../../../../scenarios/demo.json';
import {
  type Answer,
  type Edit,
  type Problem,
  type RangeAnswer,
  type Result,
  readScenario,
  type Scenario,
  sectionFacts,
} from '../../../../sim/index.ts';
import { openPage, type PageDoors } from '../../../../ui/web/app/page.ts';
import type { Heard } from '../../../../ui/web/worker/pool.ts';
import type { Attached, RunReport } from '../../../../ui/web/worker/protocol.ts';
import { handMadeResult } from '../hand-made.ts';

export const scenario = demo as unknown as Scenario;
const other = { ...scenario, name: 'Other', run: { days: 3 } } as Scenario;
const entry = (id: string, name: string, own: Scenario) => ({
  id,
  name,
  note: '',
  load: async () => own,
});
const catalogue = [entry('demo', 'Demo', scenario), entry('other', 'Other', other)];
const opening = { id: 'demo', scenario };
export const problem: Problem = { path: 'store', expected: 'water', got: 'air', fix: 'fill it' };
export const depth = (value: unknown): Edit[] => [{ path: 'store.water_depth', value }];

function readFacts() {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error('expected the demo to be sound');
  return sectionFacts(read.plant, read.sketch);
}
export const facts = readFacts();

interface Run {
  scenario: Scenario;
  how: string;
  heard(report: RunReport): void;
}

export function setUp(builtIn: PageDoors['builtIn'] = null) {
  const runs: Run[] = [];
  let stops = 0;
  const asked: { key: string; scenario: Scenario; heard: Heard<Answer>; stopped: boolean }[] = [];
  const ranges: { vary: string; scenario: Scenario; heard: Heard<RangeAnswer> }[] = [];
  const attached: Attached[] = [];
  let waiting = () => {};
  const page = openPage({
    catalogue,
    opening,
    builtIn,
    now: () => 0,
    later(act) {
      waiting = act;
      return () => {
        waiting = () => {};
      };
    },
    runner: {
      attach: (files) => void attached.push(files),
      run: (own, how, heard) => void runs.push({ scenario: own, how, heard }),
      stop: () => void stops++,
    },
    pool: {
      attach() {},
      answer(key, own, heard) {
        const entry = { key, scenario: own, heard, stopped: false };
        asked.push(entry);
        return {
          stop() {
            entry.stopped = true;
          },
        };
      },
      range(vary, own, heard) {
        ranges.push({ vary, scenario: own, heard });
        return { stop() {} };
      },
      measure: () => ({ stop() {} }),
      detail: () => ({ stop() {} }),
      endAnswers() {},
    },
  });
  const last = () => runs[runs.length - 1];
  const read = (run = last()) =>
    run.heard({ id: 1, kind: 'read', facts, firstWeekday: 5, filled: [], notes: [] });
  const finish = (run = last(), result: Result = handMadeResult()) => {
    read(run);
    run.heard({ id: 1, kind: 'result', result, ofDays: 2 });
  };
  const refuse = (run = last()) => run.heard({ id: 1, kind: 'refused', problems: [problem], sketch: null });
  return {
    page,
    runs,
    last,
    read,
    finish,
    refuse,
    asked,
    ranges,
    attached,
    rest: () => waiting(),
    get: page.store.get,
    stops: () => stops,
  };
}
