import { describe, expect, it } from 'vitest';
import demo from '../../../scenarios/demo.json';
import { bandsOf, doubtJobs, doubtsOf, type FactKind, under } from '../../../sim/answers/band.ts';
import { coilAnswer } from '../../../sim/answers/coil/coil-answer.ts';
import { edited } from '../../../sim/answers/edit.ts';
import type { File } from '../../../sim/answers/entered.ts';
import { type FilledDefault, readScenario, type Scenario } from '../../../sim/scenario/index.ts';
import { smallScenario } from './small.ts';

const least = {
  format: 'tankful',
  version: 1,
  name: 'least',
  site: { latitude: '44 N' },
  store: { inside: { shape: 'tote' } },
} as unknown as Scenario;

function fileOf(scenario: Scenario): File {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error(read.problems[0].path);
  return { scenario, ...read };
}

const told = (path: string, band: readonly [string, string] | null): FilledDefault => ({
  ...{ path, band, label: path, value: '1', source: 'made up', grade: 'D', measure: null },
});

const kind: FactKind = { dimension: 'temperature' };

describe('doubtsOf', () => {
  it('takes the defaults that have a band and matter, and nothing else', () => {
    const filled = [
      told('store.bridges', ['0.5', '1.2']),
      told('store.lid', null),
      told('run.days', ['1', '2']),
    ];
    expect(doubtsOf({ scenario: least, filled, marks: [] }, under('store'))).toEqual([
      {
        path: 'store.bridges',
        low: { text: '0.5', edits: [{ path: 'store.bridges', value: 0.5 }] },
        high: { text: '1.2', edits: [{ path: 'store.bridges', value: 1.2 }] },
      },
    ]);
  });

  it('puts a mark in the place of a default’s band, and beside the defaults elsewhere', () => {
    const marks = [
      { path: 'store.water_depth', band: ['3 in', '4 in'] as const },
      { path: 'store.bridges', band: ['5', '6'] as const },
    ];
    const filled = [told('store.water_depth', ['1 in', '2 in'])];
    const doubts = doubtsOf({ scenario: least, filled, marks }, () => true);
    expect(doubts.map(({ path, low, high }) => [path, low.text, high.text])).toEqual([
      ['store.water_depth', '3 in', '4 in'],
      ['store.bridges', '5', '6'],
    ]);
  });

  it('makes edits that a scenario without the part still holds together with', () => {
    const doubts = doubtsOf(fileOf(least), () => true);
    expect(doubts.length).toBeGreaterThan(10);
    expect(doubts.map(({ path }) => path)).toContain('supply.cold.temperature');
    for (const job of doubtJobs(doubts)) {
      const read = readScenario(edited(least, job.edits));
      expect(read.ok ? [] : read.problems).toEqual([]);
    }
  });

  it('writes down the rest of a rating that the file leaves out, beside the value that is doubtful', () => {
    const file = fileOf(demo as unknown as Scenario);
    expect(demo.collector).not.toHaveProperty('rating');
    const doubts = doubtsOf(file, under('collector.rating'));
    expect(doubts.map(({ path }) => path)).toContain('collector.rating.eta0');
    for (const job of doubtJobs(doubts)) {
      const read = readScenario(edited(file.scenario, job.edits));
      expect(read.ok ? [] : read.problems).toEqual([]);
    }
  });

  it('puts the input where it says: cold water at either end', () => {
    const [cold] = doubtsOf(fileOf(least), under('supply.cold.temperature'));
    const plants = [cold.low, cold.high].map(({ edits }) => readScenario(edited(least, edits)));
    const temperatures = plants.map((read) =>
      read.ok && read.plant.supply.cold.kind === 'fixed' ? read.plant.supply.cold.temperature_C : null,
    );
    expect(temperatures[0]).toBeCloseTo((36 - 32) / 1.8, 9);
    expect(temperatures[1]).toBeCloseTo((55 - 32) / 1.8, 9);
  });
});

describe('bandsOf', () => {
  const doubts = ['a', 'b', 'c'].map((path) => ({
    path,
    low: { text: 'low', edits: [] },
    high: { text: 'high', edits: [] },
  }));

  it('adds deviations up and deviations down in squares, apart', () => {
    const ends = [7, 13, 6, 10, 10, 14].map((t) => ({ t }));
    const { facts } = bandsOf({ t: 10 }, ends, doubts, { t: kind });
    // Down 3 and 4, up 3 and 4: five either way.
    expect(facts.t).toEqual({ value: 10, low: 5, high: 15, numerical: 0, dimension: 'temperature' });
  });

  it('counts a doubt that moves one way at both its ends once, by the larger', () => {
    const ends = [11, 13].map((t) => ({ t }));
    const { facts } = bandsOf({ t: 10 }, ends, doubts.slice(0, 1), { t: kind });
    expect([facts.t.low, facts.t.high]).toEqual([10, 13]);
  });

  it('keeps what a fact can be, and the numerical doubt apart', () => {
    const ends = [-20, 40].map((t) => ({ t }));
    const bounded = { ...kind, least: 0, greatest: 30, numerical: 0.5 };
    const { facts } = bandsOf({ t: 10 }, ends, doubts.slice(0, 1), { t: bounded });
    expect(facts.t).toMatchObject({ low: 0, high: 30, numerical: 0.5 });
  });

  it('takes what stands for nothing found where it is told, and no move where it is not', () => {
    const ends = [{ t: null }, { t: 12 }];
    const without = bandsOf({ t: 10 }, ends, doubts.slice(0, 1), { t: kind });
    expect([without.facts.t.low, without.facts.t.high]).toEqual([10, 12]);
    const boiling = bandsOf({ t: 10 }, ends, doubts.slice(0, 1), { t: { ...kind, none: 100 } });
    expect(boiling.facts.t.high).toBe(100);
  });

  it('sorts the levers by what they move, without those within the numerical doubt', () => {
    const ends = [9, 11, 5, 15, 10, 10.1].map((t) => ({ t }));
    const { levers } = bandsOf({ t: 10 }, ends, doubts, { t: { ...kind, numerical: 0.2 } });
    expect(levers('t')).toEqual([
      { path: 'b', low: { text: 'low', value: 5 }, high: { text: 'high', value: 15 } },
      { path: 'a', low: { text: 'low', value: 9 }, high: { text: 'high', value: 11 } },
    ]);
  });

  it('leaves a doubt out of which an end failed, and says so', () => {
    const { facts, untried, levers } = bandsOf(
      { t: 10 },
      [null, { t: 90 }, { t: 9 }, { t: 11 }],
      doubts.slice(0, 2),
      { t: kind },
    );
    expect(untried).toEqual(['a']);
    expect([facts.t.low, facts.t.high]).toEqual([9, 11]);
    expect(levers('t').map(({ path }) => path)).toEqual(['b']);
  });

  it('has no band for a fact that is not there', () => {
    expect(bandsOf({ t: null }, [], [], { t: kind, u: kind }).facts).toEqual({});
  });
});

describe('a mark in the file', () => {
  it('widens the band of an answer as one that is handed in does', () => {
    const mark = { path: 'coils[0].roll_length', band: ['55 ft', '65 ft'] as const };
    const [from, to] = mark.band;
    const doubts = [{ input: mark.path, unsure: 'between', from, to }];
    const plain = coilAnswer({ scenario: smallScenario(), context: {} });
    const handed = coilAnswer({ scenario: smallScenario(), context: {}, marks: [mark] });
    const marked = coilAnswer({ scenario: smallScenario({ doubts }), context: {} });
    expect(marked.facts).toEqual(handed.facts);
    const width = ({ facts: { outlet_C } }: typeof plain) => outlet_C.high - outlet_C.low;
    expect(width(marked)).toBeGreaterThan(width(plain));
  });
});
