import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { generateWeather } from '../../../../sim/parts/weather/generate.ts';
import { sunOfYear } from '../../../../sim/parts/weather/sun-of-year.ts';
import { parseWeatherCsv } from '../../../../sim/parts/weather/weather-csv.ts';
import { dateOf, isoStamp, plainRow, plainTable, tableLines } from './files.ts';
import { climate, hillside } from './places.ts';

const original = generateWeather(climate, hillside, 9);
const fallback = generateWeather(climate, hillside, 10);
const toF = (c: number) => ((c * 9) / 5 + 32).toFixed(2);
const plain = plainTable(original);
const row = (h: number) => plainRow(original, h);
const text = plain.join('\n');

function read(file: string, behind?: typeof fallback) {
  const reading = parseWeatherCsv(file, hillside, behind);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems.slice(0, 2)));
  return reading;
}

/** Largest difference between two series. */
const off = (a: Float64Array, b: Float64Array) =>
  a.reduce((worst, x, h) => Math.max(worst, Math.abs(x - b[h])), 0);

describe('parseWeatherCsv', () => {
  it('reads time, air and sun, estimates the rest and says what it assumed', () => {
    const { weather, notes } = read(text);
    expect(off(weather.air_C, original.air_C)).toBeLessThan(0.006);
    expect(off(weather.global_horizontal_W_m2, original.global_horizontal_W_m2)).toBeLessThan(0.06);
    expect(weather.place).toBe('Hillside');
    expect(weather.wind_m_s[17]).toBe(3);
    expect(weather.albedo[17]).toBe(0.2);
    expect(weather.dew_point_C[100]).toBeCloseTo(Math.min(...weather.air_C.subarray(96, 120)), 12);
    expect(notes.join('\n')).toMatch(/lowest air temperature is taken as its dew point/);
    expect(notes.join('\n')).toMatch(/no column of wind: taken as 3 m\/s/);
    expect(notes.join('\n')).toMatch(/hours: direct and diffuse sun estimated from the global/);
  });

  it('splits the global sun as the generator does, and keeps it whole', () => {
    const { weather } = read(text);
    const sun = sunOfYear(hillside);
    expect(off(weather.direct_normal_W_m2, original.direct_normal_W_m2)).toBeLessThan(5);
    const whole = weather.diffuse_horizontal_W_m2.map(
      (diffuse, h) => diffuse + weather.direct_normal_W_m2[h] * Math.max(0, Math.cos(sun.zenith_rad[h])),
    );
    expect(off(whole, weather.global_horizontal_W_m2)).toBeLessThan(1e-9);
  });

  it('reads other separators, units, words and times, all to the same weather', () => {
    const { weather } = read(text);
    const slashed = (h: number) => {
      const { month, day } = dateOf(Math.floor(h / 24));
      const hour = h % 24;
      return `${month}/${day}/2027 ${hour % 12 === 0 ? 12 : hour % 12}:00 ${hour < 12 ? 'AM' : 'PM'}`;
    };
    const comma = (x: number, digits: number) => x.toFixed(digits).replace('.', ',');
    const variants = [
      tableLines(
        'Date;Time;Outside temperature [°F];Solar radiation [Btu/h·ft²]',
        (h) => [
          ...isoStamp(h).split(' '),
          toF(original.air_C[h]),
          (original.global_horizontal_W_m2[h] / 3.154591).toFixed(3),
        ],
        ';',
      ),
      tableLines(
        'time (start)\tTEMP (K)\tGHI (kW/m^2)',
        (h) => [
          slashed(h),
          (original.air_C[h] + 273.15).toFixed(2),
          (original.global_horizontal_W_m2[h] / 1000).toFixed(5),
        ],
        '\t',
      ),
      tableLines(
        'time (start);air (°C);sun (W/m²)',
        (h) => [isoStamp(h), comma(original.air_C[h], 2), comma(original.global_horizontal_W_m2[h], 1)],
        ';',
      ),
      tableLines('time (end),air (C),sun (Wh/m2)', (h) => [
        isoStamp((h + 1) % 8760, h === 8759 ? 2028 : 2027),
        ...row(h).slice(1),
      ]),
      tableLines('time (start),air (C),sun (W/m2)', (h) => [
        `${isoStamp(h).replace(' ', 'T')}:00-05:00`,
        ...row(h).slice(1),
      ]),
      [plain[0], ...plain.slice(1).reverse()],
    ];
    for (const lines of variants) {
      const other = read(`\uFEFF${lines.join('\r\n')}`).weather;
      expect(off(other.air_C, weather.air_C)).toBeLessThan(0.011);
      expect(off(other.global_horizontal_W_m2, weather.global_horizontal_W_m2)).toBeLessThan(0.11);
    }
  });

  it('brings stamps in universal time to the site’s standard time', () => {
    const utc = tableLines('time (start),air (C),sun (W/m2)', (h) => {
      const shifted = (h + 5) % 8760;
      return [`${isoStamp(shifted, h + 5 >= 8760 ? 2028 : 2027).replace(' ', 'T')}Z`, ...row(h).slice(1)];
    });
    expect(off(read(utc.join('\n')).weather.air_C, read(text).weather.air_C)).toBe(0);
  });

  it('finds out by the Sun whether stamps mark the start or the end of an hour', () => {
    const head = 'time,air (C),sun (W/m2)';
    const start = read([head, ...plain.slice(1)].join('\n'));
    expect(start.notes.join('\n')).toMatch(/mark the start of their hour/);
    expect(start.weather.air_C).toEqual(read(text).weather.air_C);
    const end = read(tableLines(head, (h) => [isoStamp((h + 1) % 8760), ...row(h).slice(1)]).join('\n'));
    expect(end.notes.join('\n')).toMatch(/mark the end of their hour/);
    expect(end.weather.air_C).toEqual(start.weather.air_C);
  });

  it('averages finer rows to hours', () => {
    const fine = ['time (start),air (C),sun (W/m2)'];
    for (let h = 0; h < 8760; h++) {
      for (const [i, minute] of ['00', '15', '30', '45'].entries()) {
        const off = [-1.5, -0.5, 0.5, 1.5][i];
        fine.push(
          `${isoStamp(h).slice(0, 14)}${minute},${(original.air_C[h] + off).toFixed(3)},${row(h)[2]}`,
        );
      }
    }
    const { weather, notes } = read(fine.join('\n'));
    expect(off(weather.air_C, original.air_C)).toBeLessThan(0.001);
    expect(notes).toContain('rows every 15 min averaged to hours');
  });

  it('takes every measured column there is', () => {
    const full = tableLines(
      'time (start),air (C),sun (W/m2),direct (W/m2),diffuse (W/m2),humidity (%),wind (mph),albedo (%),soil (C)',
      (h) => [
        ...row(h),
        original.direct_normal_W_m2[h].toFixed(1),
        original.diffuse_horizontal_W_m2[h].toFixed(1),
        h % 2 === 0 ? 100 : 50,
        (original.wind_m_s[h] / 0.44704).toFixed(3),
        60,
        7,
      ],
    );
    const { weather, notes } = read(full.join('\n'));
    expect(off(weather.direct_normal_W_m2, original.direct_normal_W_m2)).toBeLessThan(0.06);
    expect(off(weather.diffuse_horizontal_W_m2, original.diffuse_horizontal_W_m2)).toBeLessThan(0.06);
    expect(off(weather.wind_m_s, original.wind_m_s)).toBeLessThan(0.001);
    expect(weather.dew_point_C[0]).toBeCloseTo(weather.air_C[0], 6);
    expect(weather.dew_point_C[1]).toBeLessThan(weather.air_C[1] - 5);
    expect(weather.albedo[1234]).toBeCloseTo(0.6, 12);
    expect(notes).toEqual(['columns left out: soil (C)']);
  });

  it('finds the direct where only the diffuse was measured, and the other way round', () => {
    const one = (name: string, series: Float64Array) =>
      read(
        tableLines(`time (start),air (C),sun (W/m2),${name} (W/m2)`, (h) => [
          ...row(h),
          series[h].toFixed(2),
        ]).join('\n'),
      ).weather;
    const fromDiffuse = one('diffuse', original.diffuse_horizontal_W_m2);
    const fromDirect = one('direct', original.direct_normal_W_m2);
    const sun = sunOfYear(hillside);
    const high = (series: Float64Array) => series.filter((_, h) => Math.cos(sun.zenith_rad[h]) > 0.1);
    expect(off(high(fromDiffuse.direct_normal_W_m2), high(original.direct_normal_W_m2))).toBeLessThan(2);
    expect(
      off(high(fromDirect.diffuse_horizontal_W_m2), high(original.diffuse_horizontal_W_m2)),
    ).toBeLessThan(0.2);
  });

  it('reads an instrument’s little minus at night as darkness', () => {
    const night = tableLines(plain[0], (h) => [
      ...row(h).slice(0, 2),
      original.global_horizontal_W_m2[h] === 0 ? '-3.1' : row(h)[2],
    ]);
    expect(Math.min(...read(night.join('\n')).weather.global_horizontal_W_m2)).toBe(0);
  });

  it('bridges up to three missing hours, marked or left out', () => {
    const rows = plain.flatMap((line, i) =>
      i === 500 ? [] : i === 501 ? [line.replace(/,[^,]*,/, ',,')] : [line],
    );
    const { weather, notes } = read(rows.join('\n'));
    expect(notes).toContain('air: 2 missing hours bridged by straight lines');
    const [before, after] = [weather.air_C[498], weather.air_C[501]];
    expect(weather.air_C[499]).toBeCloseTo(before + (after - before) / 3, 9);
    expect(weather.air_C[500]).toBeCloseTo(before + (2 * (after - before)) / 3, 9);
  });

  it('leaves 29 February out and says so', () => {
    const leap = tableLines(plain[0], (h) => [isoStamp(h, 2028), ...row(h).slice(1)]);
    leap.splice(
      1 + 59 * 24,
      0,
      ...Array.from({ length: 24 }, (_, h) => `2028-02-29 ${String(h).padStart(2, '0')}:00,99,0`),
    );
    const { weather, notes } = read(leap.join('\n'));
    expect(off(weather.air_C, read(text).weather.air_C)).toBe(0);
    expect(notes).toContain('29 February left out (24 rows): the year has 365 days');
  });

  it('takes the hours a part of a year lacks whole from other weather, and only with a note', () => {
    const january = plain.slice(0, 1 + 31 * 24).join('\n');
    const alone = parseWeatherCsv(january, hillside);
    expect(alone.ok ? undefined : alone.problems[0]).toEqual({
      where: 'air',
      expected: 'no gap over 3 hours',
      got: '8016 hours from 1 Feb 00:00',
      fix: 'give a whole year, or monthly means beside the file to fill it with generated weather',
    });
    const { weather, notes } = read(january, fallback);
    expect(weather.air_C.subarray(0, 744)).toEqual(read(text).weather.air_C.subarray(0, 744));
    for (const key of [
      'air_C',
      'global_horizontal_W_m2',
      'direct_normal_W_m2',
      'diffuse_horizontal_W_m2',
    ] as const) {
      expect(weather[key].subarray(744)).toEqual(fallback[key].subarray(744));
    }
    expect(notes).toContain(
      '8016 hours without air or sun, the first 1 Feb 00:00, are taken from the other weather',
    );
    expect(weather.wind_m_s).toEqual(fallback.wind_m_s);
    expect(weather.dew_point_C.every((dew, h) => dew <= weather.air_C[h])).toBe(true);
  });

  it('never throws, whatever it is given', () => {
    const piece = fc.constantFrom(
      ...',;\t\n"()[]',
      'time',
      'air (C)',
      'sun (W/m2)',
      '2027-01-01 00:00',
      '1/1/2027',
      '12',
      '-9999',
      'x',
      '\uFEFF',
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(piece, fc.string({ maxLength: 5 })), { maxLength: 60 }), (parts) => {
        const reading = parseWeatherCsv(parts.join(''), hillside);
        expect(reading.ok).toBe(false);
        if (!reading.ok) expect(reading.problems.length).toBeGreaterThan(0);
      }),
      { numRuns: 300 },
    );
  });
});
