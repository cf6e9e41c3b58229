import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { smallScenario } from '../../sim/answers/small.ts';
import { tankful } from './fake-terminal.ts';

let folder = '';
let file = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tankful-range-'));
  file = join(folder, 'small.json');
  writeFileSync(file, JSON.stringify(smallScenario()));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const range = (...words: string[]) => tankful('range', file, ...words);
const bridges = ['--vary', 'store.bridges=1:3:3'];

describe('tankful range', () => {
  it('prints a table and a curve of the figure asked for', async () => {
    const { code, out, err } = await range(...bridges, '--figure', 'loss_J', '--plain');
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Varied: store.bridges.');
    expect(out).toMatch(/kBtu {3}Heat lost from the store\n( +[\d.]* +\|.*\n){9}/);
    const losses = [...out.matchAll(/^([123]) +([\d.]+)$/gm)].map(([, , loss]) => Number(loss));
    expect(losses).toHaveLength(3);
    expect(losses[2]).toBeGreaterThan(losses[0]);
    expect(out).toMatch(/^[\n\x20-\x7e]+$/);
  });

  it('numbers the figures where their names do not fit', async () => {
    const { out } = await range(...bridges);
    expect(out).toMatch(/^store\.bridges +1 +2 +3/m);
    expect(out).toMatch(/^ {2}1 {2}Showers that ran cold \(number\)$/m);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('prints CSV with units in its head, in the units asked for', async () => {
    const si = await range(
      ...bridges,
      '--figure',
      'loss_J',
      '--figure',
      'store_top_C_max',
      '--csv',
      '--units',
      'si',
    );
    const us = await range(...bridges, '--figure', 'loss_J', '--figure', 'store_top_C_max', '--csv');
    const [head, first] = si.out.split('\n');
    expect(head).toBe('store.bridges,loss (kWh),store_top_max (C),problem');
    expect(us.out.split('\n')[0]).toBe('store.bridges,loss (kBtu),store_top_max (F),problem');
    const [kWh, C] = first.split(',').slice(1, 3).map(Number);
    const [kBtu, F] = us.out.split('\n')[1].split(',').slice(1, 3).map(Number);
    expect(kBtu / kWh).toBeCloseTo(3.41214, 4);
    expect(F).toBeCloseTo(C * 1.8 + 32, 3);
  });

  it('prints JSON in SI with the figures asked for only', async () => {
    const { out } = await range('--vary', 'store.lid=closed|open', '--figure', 'loss_J', '--json');
    const { name, axes, figures, points, done } = JSON.parse(out);
    expect([name, figures, done]).toEqual(['small box for tests', ['loss_J'], 2]);
    expect(axes[0]).toMatchObject({ path: 'store.lid', values: ['closed', 'open'] });
    expect(points[1].figures).toEqual({ loss_J: expect.any(Number) });
  });

  it('crosses two inputs', async () => {
    const { out } = await range('--vary', 'store.lid=closed|ajar', '--vary', 'coils[0].rolls=1:2:2', '--csv');
    const rows = out.trimEnd().split('\n').slice(1);
    expect(rows.map((row) => row.split(',').slice(0, 2).join(' '))).toEqual([
      'closed 1',
      'closed 2',
      'ajar 1',
      'ajar 2',
    ]);
  });

  it('keeps a row a point however many problems it has', async () => {
    const { out } = await range('--vary', 'coils[0].roll_length=60 ft|900 ft', '--csv');
    const rows = out.trimEnd().split('\n');
    expect(rows).toHaveLength(3);
    expect(rows[2]).toMatch(/^900 ft,,+"?coils\[0\]\..* - expected /);
  });

  it('tells of points that cannot be run, and runs the others', async () => {
    const { code, out } = await range('--vary', 'coils[0].roll_length=60 ft|900 ft', '--figure', 'loss_J');
    expect(code).toBe(0);
    expect(out).toMatch(/1 of 2 could not be run:\n {2}900 ft: coils\[0\]/);
  });

  it('runs the days asked for', async () => {
    const heats = async (days: string) => {
      const { out } = await range(...bridges, '--figure', 'engine_s', '--days', days, '--json');
      return JSON.parse(out).points[0].figures.engine_s / 3600;
    };
    expect(await heats('1')).toBeCloseTo(2, 6);
    expect(await heats('2')).toBeCloseTo(4, 6);
  });

  it.each([
    [
      ['--vary', 'store.brigdes=1:2:2'],
      /^store\.brigdes - expected the path of an input .* did you mean store\.bridges\?\n$/,
    ],
    [
      [...bridges, '--figure', 'lossJ'],
      /^figure - expected the key of a figure - got "lossJ" - did you mean loss_J\?/,
    ],
    [[], /^vary - expected one or two inputs - got 0/],
    [[...bridges, '--json', '--csv'], /expected one of --json, --csv/],
    [[...bridges, '--units', 'cgs'], /^--units - expected us or si/],
  ])('refuses %j', async (words, message) => {
    const { code, out, err } = await range(...words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(message);
  });
});
