import { describe, expect, it } from 'vitest';
import { readLog } from '../../../../sim/answers/fit/read-log.ts';

const read = (...lines: string[]) => readLog(lines.join('\n'), 0.8, -5 * 3600);

describe('an owner’s log', () => {
  it('reads five hand-typed rows of clock times that pass midnight', () => {
    const log = read(
      'time,top (F),room (F)',
      '9 pm,140,50',
      '11 pm,138,50',
      '1 am,136,48',
      '3 am,134,',
      '5 am,132,46',
    );
    expect(log.readings.map(({ time_s }) => time_s / 3600)).toEqual([21, 23, 25, 27, 29]);
    expect(log.readings[0].value_C).toBeCloseTo(60, 9);
    expect(log.readings[0].place).toEqual({ kind: 'height', height_m: 0.9 * 0.8 });
    expect([log.days, log.from, log.room.length]).toEqual([2, null, 4]);
  });

  it('reads semicolons, decimal commas and dates with the day first, and keeps what is not measured out', () => {
    const log = read(
      'Date;Time;At 25 cm [°C];Store (C);humidity',
      ...['31.12.2027;23:00;54,5;50,25;40', '1.1.2028;0:30;54;--;41', '1.1.2028;1:00;53,5;49,75;41'],
    );
    expect(log.from).toBe('2027-12-31');
    expect(log.readings.map(({ time_s }) => time_s / 3600)).toEqual([23, 23, 24.5, 25, 25]);
    expect(log.readings.map(({ value_C }) => value_C)).toEqual([54.5, 50.25, 54, 53.5, 49.75]);
    expect(log.probes.map(({ place }) => place)).toEqual([
      { kind: 'height', height_m: 0.25 },
      { kind: 'stirred' },
    ]);
    expect(log.ignored).toEqual(['humidity']);
  });

  it.each([
    ['over 100 is Fahrenheit', ['140', '138', '136', '134'], 60],
    ['under 32 is Celsius', ['31', '30', '29', '28'], 31],
  ])('guesses degrees: %s', (_, values, first_C) => {
    const log = read('time\tstore', ...values.map((value, i) => `${i + 1}:00\t${value}`));
    expect(log.readings[0].value_C).toBeCloseTo(first_C, 9);
  });

  it('asks for the degrees where the values could be either', () => {
    const rows = ['60', '59', '58', '57'].map((value, i) => `${i + 1}:00,${value}`);
    expect(() => read('time,store', ...rows)).toThrow(
      /^the head - expected degrees C or F - got values up to 60/,
    );
  });

  it('names every row that it cannot read', () => {
    expect(() => read('time,top (C)', '1:00,50', 'later,49', '2:00,warm', '3:00,48')).toThrow(
      /^line 3 - expected a time.*\nline 4, top - expected a number, or nothing - got "warm" - mend it$/,
    );
  });

  it('refuses a log without time, without probes, or with a probe above the water', () => {
    expect(() => read('top (C),room (C)', '50,10')).toThrow(/expected a column of time/);
    expect(() => read('time,note', '1:00,x')).toThrow(/expected 1 to 8 probes - got 0/);
    expect(() => read('time,at 90 cm (C)', '1:00,50')).toThrow(
      /expected probes under the water, 0.80 m deep/,
    );
  });
});
