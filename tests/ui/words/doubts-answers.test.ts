/** The sentences of doubts and of the next dollar, from answers made by hand. */
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../sim/index.ts';
import {
  answerCaution,
  doubtsWords,
  nextWords,
  sayIn,
  shownColumns,
  takenWords,
} from '../../../ui/words/index.ts';
import { doubts, next } from '../hand-made-doubts.ts';

const us = sayIn('US');
const si = sayIn('SI');
const told = (words: typeof doubtsWords, answer: Answer, say = us) =>
  [words.sentence(answer, say), words.reason(answer, say), ...words.more(answer, say)].join('\n');
const with_ = (answer: Answer, facts: Answer['facts']): Answer => ({
  ...answer,
  facts: { ...answer.facts, ...facts },
});

describe('doubts in words', () => {
  it('count runs and showers, tell what moves them, what to measure and what was varied', () => {
    expect(told(doubtsWords, doubts)).toBe(
      [
        'In 20 runs with 31 unsure inputs varied a shower ran cold in 6: none to 12 of 42 in a run; most often shower 4 (Sat 7:57 pm), in 6.',
        'What moves the time in which water ran cold most by itself is multiplier on the loss (store.bridges): 10 min at 1.1, 70 min at 2.5.',
        'An overnight cool-down test would narrow it most, to 50 %: with the multiplier on the loss then known to 1.4 to 1.6 the same runs give 10 min to 60 min in place of 0 s to 100 min, the odd ones at either end left out. No draws, eight hours.',
        'Varied: 2 that you marked, 29 assumed values that came with a band, the weather. Not varied: what the file says without a mark, 3 assumed values without a band, and the formulas. 1 mark that moves no heat had no part.',
      ].join('\n'),
    );
  });

  it('never speak of probability or confidence', () => {
    const all = [
      told(doubtsWords, doubts),
      told(nextWords, next),
      ...[doubts, next].flatMap(({ taken = [] }) => taken.map((key) => takenWords[key])),
    ];
    expect(all.join('\n')).not.toMatch(/probab|confiden|likel|chance/i);
  });

  it('tell the store’s warmth where nobody showers, in the reader’s units', () => {
    const { showers: _, ...facts } = doubts.facts;
    const answer: Answer = { ...doubts, facts, headline: 'store_mean_C' };
    expect(doubtsWords.sentence(answer, si)).toBe(
      'In 20 runs with 31 unsure inputs varied the store was 50 °C (42 to 58 °C) on the mean.',
    );
  });

  it('say that nothing ran cold, that a measurement hardly helps, and what is missing after a stop', () => {
    const warm = with_(doubts, { cold_runs: { ...doubts.facts.cold_runs, value: 0 } });
    expect(doubtsWords.sentence(warm, us)).toContain('no shower of 42 ran cold.');
    const { measurements } = doubts.tables;
    const rows = measurements.rows.map((row) => [...row.slice(0, -1), 0.97]);
    const little = { ...doubts, tables: { ...doubts.tables, measurements: { ...measurements, rows } } };
    expect(told(doubtsWords, little)).toContain('any other measurement tried, and hardly at all.');
    expect(doubtsWords.sentence({ ...doubts, facts: {} }, us)).toBe('Stopped before the first run was done.');
  });

  it('show showers that ran cold, and inputs that move something', () => {
    const [showers, inputs] = doubtsWords.tables;
    const shown = (table: typeof showers, key: string) =>
      doubts.tables[key].rows
        .map((row) => Object.fromEntries(doubts.tables[key].columns.map((each, i) => [each.key, row[i]])))
        .filter((row) => table.rows?.(row));
    expect(shown(showers, 'showers').map(({ shower }) => shower)).toEqual([3, 4]);
    expect(shown(inputs, 'inputs').map(({ path }) => path)).toEqual(['store.bridges', 'weather.seed']);
  });

  it('warn of runs that boil, and of runs that could not be made', () => {
    const some = with_(doubts, {
      boiled_runs: { ...doubts.facts.boiled_runs, value: 3 },
      runs: { ...doubts.facts.runs, value: 18 },
    });
    expect(answerCaution({ key: 'boils_in_some', severity: 'note' }, some, doubtsWords, us).text).toMatch(
      /^In 3 of 18 runs the store boils: .*vent/,
    );
    expect(answerCaution({ key: 'not_run', severity: 'note' }, some, doubtsWords, us).text).toMatch(
      /^2 runs of 20 could not be made/,
    );
  });
});

describe('the next dollar in words', () => {
  it('says what costs nothing first, then what the money buys most with', () => {
    expect(told(nextWords, next)).toBe(
      [
        'Before any money, turns further apart, coil household: 1.1 gal (0.5 to 2.4 gal) more warm water a day. Then for the money, a seal around the lid for $13 ($8.7 to $20): 1.6 gal (0.3 to 2.6 gal) more warm water a day.',
        'Some of the water wanted warm came cold: warm water is what a change is weighed by.',
        '6 changes tried, each by itself over the scenario’s 7 days; those without a number gain nothing that can be told, or do harm.',
      ].join('\n'),
    );
  });

  it('says so where nothing gains', () => {
    const rows = next.tables.changes.rows.map((row) => [null, ...row.slice(1)]);
    const none = { ...next, tables: { changes: { ...next.tables.changes, rows } } };
    expect(nextWords.sentence(none, us)).toBe('None of 6 changes tried gains anything that can be told.');
    expect(nextWords.sentence({ ...next, facts: {} }, us)).toMatch(/^Stopped/);
  });

  it('has a table with costs as ranges and harm in a word', () => {
    const [table] = nextWords.tables;
    const columns = shownColumns(table, next, si);
    const rows = next.tables.changes.rows.map((row) =>
      Object.fromEntries(next.tables.changes.columns.map((each, i) => [each.key, row[i]])),
    );
    const cells = rows.map((row) => columns.map(({ cell }) => cell(row, si)));
    expect(cells[1]).toEqual(['2. a seal around the lid', '6.0', '1.0', '10.0', '$8.7 to $20', '$0', '']);
    expect(cells[3].slice(4, 6)).toEqual(['$0', '$650']);
    expect(cells[4]).toEqual([
      '- 1.5 m² of collector more',
      '40.0',
      '20.0',
      '60.0',
      '$250 to $560',
      '$0',
      'boils',
    ]);
    expect(cells[5][4]).toBe('no price');
  });

  it('says what is for safety, with its price', () => {
    expect(answerCaution({ key: 'fit_mixing_valve', severity: 'note' }, next, nextWords, us).text).toMatch(
      /mixing valve at the store, about \$90\..*scald/,
    );
    expect(answerCaution({ key: 'fit_relief', severity: 'note' }, next, nextWords, us).text).toMatch(
      /relief without a valve before it/,
    );
  });
});
