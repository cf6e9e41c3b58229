/** What the tool lists is all that sim says: with each listed text in Greek, no problem of any broken file has English left. */
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { simTexts } from '../../../scripts/sim-texts.mjs';
import { readLog } from '../../../sim/answers/fit/read-log.ts';
import {
  dimensions,
  type EntryField,
  fieldEntries,
  type Problem,
  parseScenarioText,
  type RecipeKind,
  rangeAnswer,
  readEntry,
  recipeAnswer,
} from '../../../sim/index.ts';
import { generateWeather } from '../../../sim/parts/weather/generate.ts';
import { parseWeatherCsv } from '../../../sim/parts/weather/weather-csv.ts';
import type { Field, Fields } from '../../../sim/scenario/field.ts';
import { scenario } from '../../../sim/scenario/fields/index.ts';
import { sunnyScenario } from '../../sim/answers/small.ts';
import { isoStamp, tableLines } from '../../sim/parts/weather/files.ts';
import { climate, hillside } from '../../sim/parts/weather/places.ts';
import { brokenFiles, textOf } from '../../sim/scenario/files.ts';
import { greekTable } from '../support/greek.ts';

let fromSim = (text: string) => text;
let errorText = (message: string) => message;
let texts: string[] = [];

beforeAll(async () => {
  texts = await simTexts();
  vi.doMock('../../../ui/words/sim-texts.ts', () => ({ simTexts: greekTable(texts) }));
  vi.resetModules();
  ({ fromSim } = await import('../../../ui/words/from-sim.ts'));
  ({ errorText } = await import('../../../ui/words/errors.ts'));
}, 60_000);

/** Names and words of the file, and units: the same in every language. */
const fileWords = new Set([
  ...namesIn(scenario),
  'true',
  ...Object.values(dimensions).flatMap(({ units }) =>
    units.flatMap(({ symbol }) => symbol.split(/[^A-Za-z]+/)),
  ),
]);

function namesIn(field: Field): string[] {
  const inside = (fields: Fields) => Object.entries(fields).flatMap(([key, each]) => [key, ...namesIn(each)]);
  if (field.kind === 'choice') return field.choices.flatMap((choice) => choice.split(' '));
  if (field.kind === 'list') return namesIn(field.of);
  if (field.kind === 'group') return inside(field.fields);
  return field.kind === 'variants' ? [field.by, ...Object.values(field.cases).flatMap(inside)] : [];
}

/** Words of English that are left, without what stands in quotes. */
function englishIn(said: string): string[] {
  const words = said.replace(/"[^"]*"/g, '').match(/[A-Za-z]\w+/g) ?? [];
  return words.filter((word) => !fileWords.has(word));
}

function leftIn(problems: readonly Omit<Problem, 'path'>[]): string[] {
  return problems
    .flatMap(({ expected, got, fix }) => [expected, got, fix])
    .filter((text) => englishIn(fromSim(text)).length > 0)
    .map((text) => `${text} => ${fromSim(text)}`);
}

const log = (...lines: string[]) => readLog(lines.join('\n'), 0.8, 0);
const recipe = (kind: RecipeKind, typed: Record<string, string>) =>
  recipeAnswer({ scenario: sunnyScenario(), context: {}, recipe: { kind, typed } });
const rangeOf = (vary: string) =>
  rangeAnswer({ scenario: sunnyScenario(), context: {}, vary: [vary], figures: [], doJobs: async () => [] });

async function refusalBy(ask: () => unknown): Promise<string> {
  try {
    await ask();
  } catch (error) {
    return error instanceof Error ? error.message : '';
  }
  return '';
}

/** A month of weather, so many rows an hour. */
function weatherOf(rows: number, more = ''): string {
  const stamp = (row: number) =>
    isoStamp(Math.floor(row / rows)).replace(
      ':00',
      `:${String((row % rows) * (60 / rows)).padStart(2, '0')}`,
    );
  const head = `time,air (C),sun (W/m2)${more && `,${more}`}`;
  return tableLines(
    head,
    (row) => [stamp(row), 10, row % (24 * rows) === 12 * rows ? 500 : 0, ...(more ? [1] : [])],
    ',',
    720 * rows,
  ).join('\n');
}

describe('the list of what sim says', () => {
  it.each(brokenFiles())('has every problem of %s', (name) => {
    const read = parseScenarioText(textOf(name));
    expect(read.ok).toBe(false);
    if (!read.ok) expect(leftIn(read.problems)).toEqual([]);
  });

  const typed = [
    '',
    '5',
    'x',
    'ft',
    '5 psi',
    '5 ft',
    '1,5 m',
    '1,5',
    '10 to 12 ft',
    '1e999 m',
    '-5 F',
    '-500 F',
    '1/0 in',
    'R-x',
  ];
  it.each(typed)('has what is wrong with "%s" in any entry', (text) => {
    const fields = fieldEntries().map(({ field }) => field as EntryField);
    const refused = fields
      .filter(({ kind }) => !['group', 'list', 'variants'].includes(kind))
      .map((field) => readEntry(field, text))
      .flatMap((read) => (read.ok ? [] : [read]));
    expect(refused.length).toBeGreaterThan(20);
    expect([...new Set(leftIn(refused))]).toEqual([]);
  });

  it.each<[string, () => unknown]>([
    ['of a log without time', () => log('top (C),room (C)', '50,10')],
    ['of a log without probes', () => log('time,note', '1:00,x')],
    ['of a log with rows that cannot be read', () => log('time,top (C)', '1:00,50', 'later,49', '2:00,warm')],
    ['of a log without degrees', () => log('time,store', '1:00,60', '2:00,59', '3:00,58', '4:00,57')],
    ['of a log that is too short', () => log('time,store (C)', '1:00,60')],
    ['of a log with a probe above the water', () => log('time,at 90 cm (C)', '1:00,50')],
    ['of a measurement without a unit', () => recipe('bucket', { volume: '5', time: '2 s' })],
    ['of a measurement out of range', () => recipe('bucket', { volume: '900 L', time: '2 s' })],
    [
      'of a store that did not cool',
      () => recipe('cool-down', { from: '50 C', to: '60 C', room: '10 C', time: '9 h' }),
    ],
    [
      'of an outlet colder than the cold water',
      () => recipe('coil outlet', { flow: '6 L/min', tank: '60 C', cold: '8 C', outlet: '5 C' }),
    ],
    ['of a range without values', () => rangeOf('store.water_depth=1')],
    ['of a range of an unknown input', () => rangeOf('store.water_dept=1 ft:2 ft:3')],
    ['of a range of words that are none', () => rangeOf('store.lid=closed|shut')],
  ])('has the refusal %s', async (_, ask) => {
    const message = await refusalBy(ask);
    expect(message).toMatch(/ - expected /);
    // The house's own words between the parts are no texts of sim.
    const left = errorText(message)
      .split('\n')
      .flatMap((line) => line.split(/ - (?:expected |got )?/).slice(1));
    expect(left.filter((part) => englishIn(part).length > 0)).toEqual([]);
  });

  it.each([
    ['rows of ten minutes', weatherOf(6)],
    ['columns that are not read', weatherOf(1, 'rain')],
  ])('has the notes on a weather file with %s', (_, text) => {
    const reading = parseWeatherCsv(text, hillside, generateWeather(climate, hillside, 9));
    const notes = reading.ok ? reading.notes : reading.problems.map(({ got }) => got);
    expect(notes.length).toBeGreaterThan(1);
    expect(notes.map(fromSim).filter((note) => englishIn(note.replace(/ rain$/, '')).length > 0)).toEqual([]);
  });

  it('would not do without a text', () => {
    expect(englishIn(fromSim('a text that nobody listed'))).not.toEqual([]);
  });
});
