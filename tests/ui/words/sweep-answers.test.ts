/** The sentences of the answers that take many runs, from answers made by hand. */
import { describe, expect, it } from 'vitest';
import type { Answer, Banded } from '../../../sim/index.ts';
import { bandedHours } from '../../../ui/words/hours-text.ts';
import {
  collectorWords,
  hoursWords,
  limitWords,
  sayIn,
  shownColumns,
  storeAnswerWords,
  takenWords,
} from '../../../ui/words/index.ts';
import { collector, hours, store } from '../hand-made-answers.ts';

const us = sayIn('US');
const si = sayIn('SI');
const told = (words: typeof hoursWords, answer: Answer, say = us) =>
  [words.sentence(answer, say), words.reason(answer, say), ...words.more(answer, say)].join('\n');

describe('hours in words', () => {
  it('say the worst month with its band, the mean, the fuel and what an hour costs', () => {
    expect(told(hoursWords, hours)).toBe(
      [
        '4.3 h (2.0 to 6.2 h) of engine a day keep the showers warm in Dec, the month that needs most; over the year 3 h (1.4 to 4.2 h) on the mean.',
        'The engine is the limit: the store takes what it brings, and it brings no more.',
        'For hot water alone beyond what charging runs it for: 20 h (0 to 380 h) a year, 10 gal (0 to 150 gal) of fuel, $28 ($0 to $670).',
        'A kilowatt-hour brought into the store by an hour run for that alone costs $0.49 ($0.27 to $0.84) of fuel; from a backup heater $0.15 ($0.1 to $0.23).',
      ].join('\n'),
    );
  });

  it('say it where not even half a day is enough', () => {
    const { worst_s: _, ...facts } = hours.facts;
    const table = hours.tables.months;
    const rows = table.rows.map((row, i) => (i === 0 ? [1, null, ...row.slice(2)] : row));
    const answer: Answer = { ...hours, facts, limit: 'coil', tables: { months: { ...table, rows } } };
    expect(told(hoursWords, answer)).toMatch(
      /^In Jan even 12 hours a day do not keep the showers warm\.\nThe coil is the limit: the store gets hot/,
    );
    const [needed] = shownColumns(hoursWords.tables[0], answer, us).slice(1);
    expect(needed.cell({ hours_s: null, cold_share: 0.3 }, us)).toBe('over 12');
    expect(needed.cell({ hours_s: null, cold_share: null }, us)).toBe('-');
  });

  it('say it where hot water costs nothing of its own', () => {
    const none: Banded = { value: 0, low: 0, high: 0, numerical: 0, dimension: 'time' };
    const facts = { ...hours.facts, extra_year_s: none };
    expect(told(hoursWords, { ...hours, facts })).toContain(
      'None of it is beyond what charging runs it for: hot water costs no fuel of its own.',
    );
  });
});

describe('the sun in words', () => {
  it('say the year, what it spares, when it pays, and what nobody home comes to', () => {
    expect(told(collectorWords, collector, si)).toBe(
      [
        '3.2 m² of collector bring 1300 kWh (700 to 1900 kWh) a year, 20 % (9 to 36 %) of the heat put into the store; in the dullest week, from Dec 12 on, 800 Wh (400 to 1100 Wh) a day.',
        'The sun is the limit. From 6.7 m² on, more area brings less than half of what as much brought at first.',
        'Against no collector it spares a year 310 h (170 to 450 h) of engine, 460 L (250 to 670 L) of fuel, $550 ($240 to $930); it pays for itself in 1.4 (0.6 to 2.8) years, if the engine then runs only as long as warm showers need it.',
        'If charging runs the engine by its timetable anyway, 170 h (90 to 240 h) of that are spared, and it takes 2.7 (1.1 to 5.1) years.',
        'With nobody home at midsummer the store reaches 78.4 °C; with its high limit failing it boils within 4 days; with the pump dead the collector stands at 229 °C. Over the year the liner is hotter than its limit for 30 h.',
      ].join('\n'),
    );
  });

  it('say it where there is nothing to spare, where it never boils, and where the store is full', () => {
    const { spared_fuel_m3: _, boils_s: __, ...facts } = collector.facts;
    const text = told(collectorWords, { ...collector, facts, limit: 'store' }, si);
    expect(text).toContain('It spares no fuel: neither an engine nor a backup heater');
    expect(text).toContain('reaches 95 °C and does not boil within a month');
    expect(text).toContain('The store is the limit: for more than a day');
  });

  it('head the months’ columns by area, and show the columns that are there', () => {
    const [sizes, months] = collectorWords.tables;
    expect(shownColumns(months, collector, si).map(({ head }) => head(si))).toEqual([
      ['month', ''],
      ['1.6 m²', 'kWh'],
      ['3.2 m²', 'kWh'],
    ]);
    expect(shownColumns(sizes, collector, si).map(({ head }) => head(si)[0])).toEqual([
      ...['area', 'tubes', 'heat', 'of all', 'costs', 'liner hot'],
    ]);
  });
});

describe('the store in words', () => {
  it('say what it loses, carries and takes to heat, with the temperatures meant', () => {
    expect(told(storeAnswerWords, store, si)).toBe(
      [
        'At its usual 48 °C the store cools by 2.5 K (1.7 to 4.0 K) a day; from full it carries the household for 43 h (0 to 45 h); the engine takes 9 h (6 to 14 h) to heat it from fresh water of 10 °C until its middle is at the usual 48 °C; to the full 64 °C it takes longer.',
        'The insulation is the limit: it loses 110 W (70 to 170 W), 18 % (0 to 33 %) of that as vapour past the lid.',
        'Usual is 48 °C, the mean of the scenario’s own days; full is 64 °C, the hottest its top gets in them; fresh is 10 °C.',
      ].join('\n'),
    );
  });

  it('name the loops where they take a share, and blame them where they take most', () => {
    const loops_share: Banded = { value: 0.6, low: 0.5, high: 0.7, numerical: 0, dimension: 'share' };
    const answer: Answer = { ...store, limit: 'engine', facts: { ...store.facts, loops_share } };
    expect(storeAnswerWords.reason(answer, si)).toMatch(
      /^The stopped engine’s loop is the limit: .* and 60 % \(50 to 70 %\) back through the coils’ loops/,
    );
  });

  it('blame the lid where most goes with the vapour', () => {
    expect(told(storeAnswerWords, { ...store, limit: 'store' })).toContain('The lid is the limit: it loses');
  });

  it('show foam in the reader’s measure', () => {
    const [foam] = shownColumns(storeAnswerWords.tables[0], store, us);
    expect([foam.head(us), foam.cell({ sides_m: 0.0508 }, us)]).toEqual([['foam', 'in'], '2.0']);
    expect([foam.head(si), foam.cell({ sides_m: 0.0508 }, si)]).toEqual([['foam', 'mm'], '51']);
  });
});

describe('answers', () => {
  it('that somebody stopped before the first number say so', () => {
    const bare: [typeof hoursWords, Answer][] = [
      [hoursWords, { ...hours, facts: {}, tables: { months: { ...hours.tables.months, rows: [] } } }],
      [collectorWords, { ...collector, facts: {} }],
      [storeAnswerWords, { ...store, facts: {} }],
    ];
    for (const [words, answer] of bare) {
      expect(told(words, answer)).toMatch(/^Stopped before /);
    }
  });

  it('have words for all that they take for granted, and for every limit', () => {
    for (const { taken = [], limit } of [hours, collector, store]) {
      for (const key of taken) expect(takenWords, key).toHaveProperty(key);
      expect(limitWords[limit]).toMatch(/\w+ is the limit/);
    }
  });
});

describe('bandedHours', () => {
  const fact = (value_h: number, low_h = value_h, high_h = value_h): Banded => ({
    value: value_h * 3600,
    low: low_h * 3600,
    high: high_h * 3600,
    numerical: 0,
    dimension: 'time',
  });
  it('says hours however many, to what the band allows', () => {
    expect(bandedHours(fact(311.5, 169.6, 453.5), us)).toBe('310 h (170 to 450 h)');
    expect(bandedHours(fact(29.98), us)).toBe('30 h');
  });
});
