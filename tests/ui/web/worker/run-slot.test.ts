import { describe, expect, it } from 'vitest';
import demo from '../../../../scenarios/demo.json';
import {
  edited,
  type ReadContext,
  readScenario,
  type Scenario,
  simulate,
  withWeather,
} from '../../../../sim/index.ts';
import type { RunOrder, RunReport } from '../../../../ui/web/worker/protocol.ts';
import { createRunSlot } from '../../../../ui/web/worker/run-slot.ts';
import { plainTable } from '../../../sim/parts/weather/files.ts';

const scenario = (days: number) => edited(demo as unknown as Scenario, [{ path: 'run.days', value: days }]);
const order = (id: number, days: number, how: 'full' | 'estimate'): RunOrder => ({
  kind: 'run',
  id,
  scenario: scenario(days),
  how,
});

/** A slot whose clock moves `step_ms` per look, and which a test interrupts between slices. */
function setUp(step_ms = 0, context: ReadContext = {}) {
  const reports: RunReport[] = [];
  let now = 0;
  let between: (() => void)[] = [];
  const turns: Promise<void>[] = [];
  const give = createRunSlot({
    context: () => context,
    say: (report) => void reports.push(report),
    now: () => (now += step_ms),
    nextTurn: () => {
      const turn = Promise.resolve().then(() => between.shift()?.());
      turns.push(turn);
      return turn;
    },
  });
  const rest = async () => {
    for (let seen = -1; seen !== turns.length; await new Promise((done) => setTimeout(done, 0)))
      seen = turns.length;
  };
  const told = () => reports.map(({ id, kind }) => `${id} ${kind}`);
  return { give, reports, told, rest, interrupt: (...steps: (() => void)[]) => (between = steps) };
}

describe('the run slot', () => {
  it('reads, runs in slices of a day and gives the same result as a run in one go', async () => {
    const { give, reports, told, rest } = setUp();
    give(order(1, 2, 'full'));
    await rest();
    expect(told()).toEqual(['1 read', '1 progress', '1 result']);
    const read = readScenario(scenario(2));
    const [, , done] = reports;
    if (!read.ok || done.kind !== 'result') throw new Error('expected a result');
    expect(done.result).toEqual(simulate(read.plant));
  });

  it('refuses what cannot be run, with its problems', async () => {
    const { give, reports, rest } = setUp();
    give({
      kind: 'run',
      id: 1,
      how: 'full',
      scenario: edited(scenario(1), [{ path: 'run.days', value: 0 }]),
    });
    await rest();
    expect(reports).toMatchObject([{ kind: 'refused', problems: [{ path: 'run.days' }] }]);
  });

  it('drops a full run for a newer order at once: the latest wins', async () => {
    const { give, told, rest, interrupt } = setUp();
    interrupt(
      () => give(order(2, 3, 'full')),
      () => give(order(3, 1, 'full')),
    );
    give(order(1, 5, 'full'));
    await rest();
    expect(told().filter((line) => line.endsWith('result'))).toEqual(['3 result']);
  });

  it('leaves out orders that were overtaken before they began', async () => {
    const { give, told, rest, interrupt } = setUp();
    interrupt(() => {
      give(order(2, 1, 'full'));
      give(order(3, 1, 'full'));
    });
    give(order(1, 5, 'full'));
    await rest();
    expect(told()).not.toContain('2 read');
  });

  it('shows the days an estimate has before it gives way, so that a hand that never rests is followed', async () => {
    const { give, reports, told, rest, interrupt } = setUp(10);
    const again = (id: number) => () => give(order(id, 10, 'estimate'));
    interrupt(again(2), again(3), again(4), again(5));
    give(order(1, 10, 'estimate'));
    await rest();
    const pictures = told().filter((line) => line.endsWith('result'));
    expect(pictures[0]).toBe('1 result');
    expect(pictures.at(-1)).toBe('5 result');
    const [first] = reports.filter((report) => report.kind === 'result');
    if (first.kind !== 'result') throw new Error('expected a result');
    expect(first.ofDays).toBe(10);
    expect(first.result.days).toBeLessThan(10);
    const { series, days } = first.result;
    expect(series.time_s.at(-1)).toBe(days * 86_400 - series.interval_s);
    expect(series.layer_C).toHaveLength(series.time_s.length * series.layers);
    expect(Math.min(...series.layer_C)).toBeGreaterThan(0);
  });

  it('finishes an estimate that nobody overtakes', async () => {
    const { give, reports, rest } = setUp(10);
    give(order(1, 4, 'estimate'));
    await rest();
    expect(reports.at(-1)).toMatchObject({ kind: 'result', ofDays: 4, result: { days: 4 } });
  });

  it('runs under the weather of an attached file, and asks for one that is missing', async () => {
    const read = readScenario(scenario(1));
    if (!read.ok) throw new Error('expected the demo to be sound');
    const frozen = { ...read.plant.weather, air_C: new Float64Array(8760).fill(-20) };
    const year = plainTable(frozen).join('\n');
    const named = edited(scenario(1), [{ path: 'weather', value: { kind: 'file', file: 'cold.csv' } }]);
    const give = (context: ReadContext) => {
      const slot = setUp(0, context);
      slot.give({ kind: 'run', id: 1, scenario: named, how: 'full' });
      return slot;
    };
    const missing = give({});
    await missing.rest();
    expect(missing.reports).toMatchObject([{ kind: 'refused', problems: [{ path: 'weather.file' }] }]);
    const there = give(withWeather({ 'cold.csv': year }));
    await there.rest();
    const done = there.reports.at(-1);
    if (done?.kind !== 'result') throw new Error('expected a result');
    const { air_C } = done.result.series.channels;
    for (const value of air_C ?? [0]) expect(value).toBeCloseTo(-20, 5);
  });

  it('stops, and runs again afterwards', async () => {
    const { give, told, rest, interrupt } = setUp();
    interrupt(() => give({ kind: 'stop' }));
    give(order(1, 5, 'full'));
    await rest();
    expect(told().some((line) => line.endsWith('result'))).toBe(false);
    give(order(2, 1, 'full'));
    await rest();
    expect(told().at(-1)).toBe('2 result');
  });
});
