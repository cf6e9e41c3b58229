import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { generateWeather } from '../../../../sim/parts/weather/generate.ts';
import { parseTmy3 } from '../../../../sim/parts/weather/tmy3.ts';
import type { Problem } from '../../../../sim/parts/weather/types.ts';
import { TMY3_HEAD, tmy3Lines } from './files.ts';
import { climate, DEGREE, hillside, worst } from './places.ts';

const original = generateWeather(climate, hillside, 8);
const lines = tmy3Lines(original, (month) => 1990 + month);
const text = lines.join('\n');

function read(file: string) {
  const reading = parseTmy3(file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems[0]));
  return reading;
}

function problems(file: string): Problem[] {
  const reading = parseTmy3(file);
  return reading.ok ? [] : reading.problems;
}

/** The file with one line changed; numbers as an editor counts them, from 1. */
const changed = (number: number, change: (line: string) => string) =>
  lines.map((line, i) => (i === number - 1 ? change(line) : line)).join('\n');

/** Sets one cell of a row. */
const cell = (number: number, column: number, value: string) =>
  changed(number, (line) =>
    line
      .split(',')
      .map((old, i) => (i === column ? value : old))
      .join(','),
  );

describe('parseTmy3', () => {
  it('reads back every hour of the year it was written from', () => {
    const { weather } = read(text);
    const within: [keyof typeof weather, number][] = [
      ['global_horizontal_W_m2', 0.51],
      ['direct_normal_W_m2', 0.51],
      ['diffuse_horizontal_W_m2', 0.51],
      ['air_C', 0.051],
      ['dew_point_C', 0.051],
      ['wind_m_s', 0.051],
      ['albedo', 0.0051],
    ];
    for (const [key, off] of within) {
      const got = weather[key] as Float64Array;
      const expected = original[key] as Float64Array;
      expect(got).toHaveLength(8760);
      expect(worst((h) => Math.abs(got[h] - expected[h]))).toBeLessThanOrEqual(off);
    }
  });

  it('reads the station, its quoted name included', () => {
    const { weather } = read(text);
    expect(weather.place).toBe('HILLSIDE, UPPER, ZZ');
    expect(weather.latitude_rad / DEGREE).toBeCloseTo(44, 9);
    expect(weather.longitude_rad / DEGREE).toBeCloseTo(-74, 9);
    expect(weather.altitude_m).toBe(300);
    expect(weather.time_zone_s).toBe(-18000);
  });

  it('says that the year is put together from several', () => {
    expect(read(text).notes).toEqual(['a year put together from typical months of 1991 to 2002']);
    expect(read(tmy3Lines(original).join('\n')).notes).toEqual([]);
  });

  it('takes any line ending, a byte order mark and rows in any order', () => {
    const { weather } = read(text);
    expect(read(`\uFEFF${lines.join('\r\n')}\r\n\r\n`).weather).toEqual(weather);
    const [station, head, ...rows] = lines;
    expect(read([station, head, ...rows.reverse()].join('\n')).weather).toEqual(weather);
  });

  it('leaves 29 February out and says so', () => {
    const extra = lines[2 + 24 * 58].replace('02/28', '02/29');
    const leap = [...lines, ...Array.from({ length: 24 }, () => extra)].join('\n');
    const reading = read(leap);
    expect(reading.weather).toEqual(read(text).weather);
    expect(reading.notes[0]).toBe('29 February left out (24 hours): the year has 365 days');
  });

  it('bridges three missing hours by a straight line and says so', () => {
    const rows = [...lines];
    for (const i of [102, 103, 104])
      rows[i] = rows[i]
        .split(',')
        .map((c, k) => (k === 7 ? '-9900' : c))
        .join(',');
    const { weather, notes } = read(rows.join('\n'));
    const [before, after] = [weather.air_C[99], weather.air_C[103]];
    for (let k = 1; k <= 3; k++) {
      expect(weather.air_C[99 + k]).toBeCloseTo(before + ((after - before) * k) / 4, 9);
    }
    expect(notes).toContain('Dry-bulb (C): 3 missing hours bridged by straight lines');
  });

  it('takes grass where the ground’s reflection is missing', () => {
    const { weather, notes } = read(cell(10, 10, '-9900'));
    expect(weather.albedo[7]).toBe(0.2);
    expect(notes).toContain('Alb (unitless): 1 hours without a value are taken as 0.2');
  });
});

describe('a broken TMY3 file', () => {
  const without = (from: number, count: number) =>
    lines.filter((_, i) => i < from || i >= from + count).join('\n');
  it.each<[string, string, Partial<Problem>]>([
    ['that is empty', '', { where: 'the file', got: '0 lines' }],
    ['of bytes', 'PK\u0003\u0004\u0000\u0000', { expected: 'plain text in UTF-8' }],
    [
      'that is a page',
      '<html>\n<body>\n</body>',
      { where: 'line 2', expected: /column names separated/ as never },
    ],
    ['with a short station line', changed(1, () => '1,HILLSIDE,ZZ'), { where: 'line 1', got: '3 values' }],
    [
      'with a station off the globe',
      changed(1, (l) => l.replace('44.000', '144.000')),
      { where: 'line 1, latitude', expected: '-90 to 90 degrees', got: '"144.000"' },
    ],
    [
      'without a column',
      changed(2, (l) => l.replace('Dry-bulb (C)', 'Dry bulb')),
      { where: 'line 2', expected: 'a column "Dry-bulb (C)"' },
    ],
    ['with a word for a number', cell(77, 3, 'sunny'), { where: 'line 77, GHI (W/m^2)', got: '"sunny"' }],
    [
      'with an impossible number',
      cell(78, 7, '99.9'),
      { where: 'line 78, Dry-bulb (C)', expected: /-70 to 60/ as never },
    ],
    [
      'with a cut line',
      changed(79, (l) => l.slice(0, 20)),
      { where: 'line 79', expected: '11 values or more', got: '4 values' },
    ],
    ['with a date that is none', cell(80, 0, '13/40/1999'), { where: 'line 80', got: '"13/40/1999 06:00"' }],
    [
      'with an hour that is none',
      cell(81, 1, '25:00'),
      { where: 'line 81', expected: /01:00 to 24:00/ as never },
    ],
    ['with an hour twice', cell(82, 1, '09:00'), { where: 'line 83', got: '4 Jan 08:00 again' }],
    [
      'with half the year',
      without(4000, 4000),
      { where: 'GHI (W/m^2)', got: '4000 hours from 16 Jun 14:00' },
    ],
  ])('%s is refused where it breaks', (_, file, expected) => {
    const found = problems(file);
    expect(found.length).toBeGreaterThan(0);
    for (const [key, value] of Object.entries(expected)) {
      const got = found[0][key as keyof Problem];
      if (typeof value === 'string') expect(got).toBe(value);
      else expect(got).toMatch(value as RegExp);
    }
    for (const problem of found) {
      for (const part of Object.values(problem)) expect(part.length).toBeGreaterThan(1);
    }
  });

  it('tells all its problems at once, and how many more than twenty', () => {
    const rows = lines.map((line, i) => (i > 1 && i < 52 ? line.replace(/^\d\d/, 'xx') : line));
    const found = problems(rows.join('\n'));
    expect(found).toHaveLength(21);
    expect(found[0].where).toBe('line 3');
    expect(found[19].where).toBe('line 22');
    expect(found[20].got).toBe('and 30 more');
  });

  it('of one head line alone misses its hours', () => {
    expect(problems(`${lines[0]}\n${TMY3_HEAD}`)[0].got).toBe('8760 hours from 1 Jan 00:00');
  });

  it('never throws, whatever is cut out of it and put in', () => {
    const short = lines.slice(0, 40).join('\n');
    fc.assert(
      fc.property(fc.nat(short.length), fc.nat(300), fc.string({ maxLength: 20 }), (at, length, put) => {
        const found = problems(short.slice(0, at) + put + short.slice(at + length));
        expect(found.length).toBeGreaterThan(0);
      }),
      { numRuns: 200 },
    );
  });
});
