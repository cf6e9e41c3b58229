import { describe, expect, it } from 'vitest';
import { generateWeather } from '../../../../sim/parts/weather/generate.ts';
import type { Problem } from '../../../../sim/parts/weather/types.ts';
import { parseWeatherCsv } from '../../../../sim/parts/weather/weather-csv.ts';
import { isoStamp, plainRow, plainTable, tableLines } from './files.ts';
import { climate, hillside } from './places.ts';

const original = generateWeather(climate, hillside, 9);
const plain = plainTable(original);
const row = (h: number) => plainRow(original, h);

function problems(file: string): Problem[] {
  const reading = parseWeatherCsv(file, hillside);
  return reading.ok ? [] : reading.problems;
}

describe('a broken weather table', () => {
  const headed = (head: string) => [head, ...plain.slice(1, 30)].join('\n');
  const line = (number: number, change: (l: string) => string) =>
    plain.map((l, i) => (i === number - 1 ? change(l) : l)).join('\n');
  it.each<[string, string, Partial<Record<keyof Problem, string | RegExp>>]>([
    ['that is empty', '\n\n', { where: 'the file', got: '0 lines' }],
    ['without separators', 'time\n1\n2', { where: 'line 1', fix: /such as: time,air \(F\)/ }],
    [
      'without units',
      headed('time,air,sun (W/m2)'),
      {
        where: 'line 1, column 2',
        expected: 'a unit of air: C, F or K',
        got: '"air" without one',
        fix: 'write it in brackets, such as air (C)',
      },
    ],
    ['with a strange unit', headed('time,air (C),sun (lux)'), { where: 'line 1, column 3', got: '"lux"' }],
    ['without air', headed('time,shed (C),sun (W/m2)'), { where: 'line 1', expected: 'columns air (C)' }],
    ['without time and sun', headed('when,air (C),rain (mm)'), { expected: 'columns time, sun (W/m2)' }],
    [
      'with air twice',
      headed('time,air (C),sun (W/m2),temp (F)'),
      { where: 'line 1, column 4', expected: 'one column of air' },
    ],
    [
      'with three times',
      headed('date,time,timestamp,air (C),sun (W/m2)'),
      { expected: 'one column of time, or date and time', got: '3' },
    ],
    [
      'with a day that is none',
      line(9, (l) => l.replace('01-01', '02-30')),
      { where: 'line 9', got: '"2027-02-30 07:00"' },
    ],
    [
      'with a word for a number',
      line(10, (l) => l.replace(/,[^,]*,/, ',cold,')),
      { where: 'line 10, air (C)', got: '"cold"' },
    ],
    [
      'in the wrong unit',
      line(11, (l) => l.replace(/,[^,]*,/, ',68.0,')),
      { where: 'line 11, air (C)', expected: 'a number from -70 to 60, or nothing' },
    ],
    [
      'with the autumn hour twice',
      line(7300, () => plain[7298]),
      {
        where: 'line 7300',
        expected: /standard time/,
        fix: /without daylight saving: in autumn it has an hour twice/,
      },
    ],
    [
      'of days, not hours',
      tableLines(plain[0], (d) => [isoStamp(24 * d), 10, 200], ',', 365).join('\n'),
      { where: 'time', got: 'one every 24.0 h' },
    ],
    [
      'without a ray of sun',
      tableLines(plain[0], (h) => [isoStamp(h), 10, 0]).join('\n'),
      { where: 'sun', got: 'none in the whole file' },
    ],
    [
      'whose clock is elsewhere',
      tableLines(plain[0], (h) => [isoStamp((h + 5) % 8760), ...row(h).slice(1)]).join('\n'),
      { where: 'time', got: 'it comes 5 h too late' },
    ],
    [
      'of three years',
      [plain[0], '2027-01-01 00:00,1,2', '2028-01-01 01:00,1,2', '2029-01-01 02:00,1,2'].join('\n'),
      { where: 'the file', got: 'stamps of 3 years' },
    ],
  ])('%s is refused where it breaks', (_, file, expected) => {
    const found = problems(file);
    expect(found.length).toBeGreaterThan(0);
    for (const [key, value] of Object.entries(expected)) {
      const got = found[0][key as keyof Problem];
      if (typeof value === 'string') expect(got).toBe(value);
      else expect(got).toMatch(value);
    }
  });

  it('in Fahrenheit tells the range in Fahrenheit', () => {
    const file = tableLines('time,air (F),sun (W/m2)', (h) => [isoStamp(h), h === 5 ? 400 : 50, 1], ',', 30);
    expect(problems(file.join('\n'))[0].expected).toBe('a number from -94 to 140, or nothing');
  });

  it('tells all its problems at once, and how many more than twenty', () => {
    const found = problems(tableLines(plain[0], (h) => [isoStamp(h), 'x', 'y'], ',', 30).join('\n'));
    expect(found).toHaveLength(21);
    expect(found[20].got).toBe('and 40 more');
  });
});
