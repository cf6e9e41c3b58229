import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  buildSheet,
  type Caution,
  readScenario,
  type Scenario,
  type SectionFacts,
  sectionFacts,
} from '../../../sim/index.ts';
import { assumptionLines, coilTable, inBothUnits, sheetCautions } from '../../../ui/words/index.ts';

function demo(): { scenario: Scenario; facts: SectionFacts; filled: ReturnType<typeof readOf>['filled'] } {
  const scenario = JSON.parse(
    readFileSync(new URL('../../../scenarios/demo.json', import.meta.url), 'utf8'),
  ) as Scenario;
  const { plant, sketch, filled } = readOf(scenario);
  return { scenario, facts: sectionFacts(plant, sketch), filled };
}

function readOf(scenario: Scenario) {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read;
}

const both = inBothUnits();
const { scenario, facts, filled } = demo();
const sheet = buildSheet(facts);

describe('both units', () => {
  // 30 in are 762 mm, 120 F are 48.9 C, 50 psi are 345 kPa.
  it('stand side by side', () => {
    expect(both.tape(0.762)).toBe('30 in (762 mm)');
    expect(both.tapes([1.2192, 0.9144])).toBe('48 x 36 in (1219 x 914 mm)');
    expect(both.quantity(345e3, 'pressure')).toBe('50 psi (345 kPa)');
    expect(both.speak.temperature(48.9)).toBe('120 °F / 48.9 °C');
    const fact = { value: 46.7, low: 41.7, high: 52.2, numerical: 0, dimension: 'temperature' } as const;
    expect(both.say.banded(fact)).toBe('116 °F (107 to 126 °F) / 47 °C (42 to 52 °C)');
  });

  it('are said once where they are the same', () => {
    expect(both.say.quantity(0.5, 'share')).toBe('50 %');
    expect(both.speak.time(7200)).toBe('2 h');
  });
});

describe('the coils’ table', () => {
  const { table } = coilTable(sheet.coils, both);

  it('has a column for each coil and says whose it is where the name does not', () => {
    expect(table?.heads).toEqual(['', 'A household', 'B engine', 'C collector']);
    const renamed = sheet.coils.map((coil) => ({ ...coil, name: 'north' }));
    expect(coilTable(renamed, both).table?.heads[2]).toBe('B north, engine');
  });

  it('tells the port that water enters by as such', () => {
    const cells = (label: string) => table?.rows.find(([first]) => first === label)?.slice(1);
    // The household's cold enters below, the engine's coolant above.
    expect(cells('In, port at')?.slice(0, 2)).toEqual([
      '3 7/16 in (87 mm), lower end',
      '18 15/16 in (481 mm), upper end',
    ]);
  });

  it('warns of a form that is too tight, and of tube that does not wind', () => {
    const tight = sheet.coils.map((coil) => ({ ...coil, tight: true, form_m: [0.1, 0.1] as const }));
    expect(coilTable(tight, both).lines[0]).toMatch(
      /^A: a form of 3 15\/16 in \(100 mm\) is tighter than this tube is bent, 6 in \(152 mm\) across/,
    );
    const hard = sheet.coils.map((coil) => ({ ...coil, hard: true }));
    expect(coilTable(hard, both).lines[0]).toMatch(/^A, B, C: this tube is sold hard and straight/);
  });
});

describe('the sheet’s cautions', () => {
  const words = (cautions: Caution[]) => sheetCautions(cautions, facts, sheet, both);
  const hazards = [
    ...['Scald', 'Trapped coil', 'Carbon monoxide', 'Coolant', 'Boil-over'],
    ...['Liner, foam, wall', 'Freezing', 'Weight', 'Legionella', 'Wiring'],
  ];

  it('name every hazard whether or not a run shows it', () => {
    const { cause, standing } = words([]);
    expect(cause).toEqual([]);
    expect(standing.map(({ title }) => title).sort()).toEqual([...hazards].sort());
    for (const { text } of standing) expect(text).not.toMatch(/undefined|null|NaN/);
  });

  it('put those with cause first, the worst of them first, with their numbers', () => {
    const { cause, standing } = words([
      { key: 'wiring', part: 'supply', severity: 'note' },
      { key: 'legionella', part: 'household', severity: 'warning', value: 40 },
      { key: 'scald', part: 'taps', severity: 'danger', value: 60 },
      { key: 'weather_generated', part: 'weather', severity: 'note' },
      { key: 'level_low', part: 'store', severity: 'warning', value: 0.5 },
    ]);
    expect(cause.map(({ title }) => title)).toEqual(['Scald', 'Legionella', 'Water level low', 'Wiring']);
    expect(cause[0].text).toMatch(
      /^Water comes to the tap at 140 °F \/ 60 °C\. A deep burn takes about 5 min/,
    );
    expect(cause[1].text).toMatch(/at 104 °F \/ 40 °C at times/);
    expect(standing).toHaveLength(hazards.length - 3);
  });

  it('leave out what a plant does not have', () => {
    const bare = { ...facts, engine: null, collector: null, taps: null };
    const titles = sheetCautions([], bare, sheet, both).standing.map(({ title }) => title);
    for (const gone of ['Carbon monoxide', 'Coolant', 'Scald', 'Legionella'])
      expect(titles).not.toContain(gone);
  });
});

describe('the sheet’s assumptions', () => {
  const lines = assumptionLines(filled, [], scenario, both);

  it('count every default once, those alike of several coils on one line', () => {
    expect(lines.reduce((sum, { count }) => sum + count, 0)).toBe(filled.length);
    const films = lines.filter(({ line }) => line.includes('outside film of a real store'));
    expect(films).toEqual([
      { line: expect.stringMatching(/^coil household, engine, collector: /), count: 3 },
    ]);
  });

  it('have value and ends in both units, grade and source', () => {
    const head = lines.find(({ line }) => line.includes('flow at the head'));
    expect(head?.line).toBe(
      'taps: flow at the head 1.75 gpm (6.62 L/min), 1.25 gpm (4.73 L/min) to 2.5 gpm (9.46 L/min) (D: low-flow head behind a small pump)',
    );
  });
});
