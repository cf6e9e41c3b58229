import { describe, expect, it } from 'vitest';
import { whatTable } from '../../../../sim/index.ts';
import { TMY3_HEAD } from '../../parts/weather/files.ts';

describe('a table', () => {
  it.each([
    ['time,air (F),sun (W/m2)', 'weather'],
    ['time;sun;air', 'weather'],
    ['date\ttime\tDNI (W/m2)\tDHI (W/m2)', 'weather'],
    ['time,air (C),wind (m/s)', 'weather'],
    [`000001,"HILLSIDE, UPPER",ZZ,-5,44,-73,300\n${TMY3_HEAD}`, 'weather'],
    ['time,top (F),bottom (F)', 'log'],
    ['time,at 10 in (F),room (F)', 'log'],
    ['time,store,air (C)', 'log'],
    ['time,temperature (C)', null],
    ['time,amount', null],
    ['to my friend', null],
    ['', null],
    ['{ "format": "tankful" }', null],
    ['\u0000\u0001', null],
  ])('with the head %j is %s', (head, kind) => {
    expect(whatTable(`${head}\n2027-01-01 00:00,1,2\n`)).toBe(kind);
  });
});
