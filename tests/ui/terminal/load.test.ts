import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadScenario } from '../../../ui/terminal/load.ts';
import { Refusal } from '../../../ui/terminal/refusal.ts';
import { tmy3Lines } from '../../sim/parts/weather/files.ts';

const boat = fileURLToPath(new URL('../../../scenarios/boat.json', import.meta.url));
const boatJson = JSON.parse(readFileSync(boat, 'utf8'));

let folder = '';
/** A year that is -12.5 C throughout. */
let coldYear = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tankful-load-'));
  const { weather } = loadScenario(boat, {}).read.plant;
  const cold = {
    ...weather,
    air_C: weather.air_C.map(() => -12.5),
    dew_point_C: weather.air_C.map(() => -20),
  };
  coldYear = join(folder, 'cold.csv');
  writeFileSync(coldYear, `${tmy3Lines(cold).join('\n')}\n`);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function place(name: string, json: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify(json));
  return path;
}

describe('loadScenario', () => {
  it('reads the file as it stands', () => {
    const { json, read } = loadScenario(boat, {});
    expect(json).toEqual(boatJson);
    expect(read.plant.name).toBe(boatJson.name);
  });

  it('puts days and date in place of the file’s', () => {
    const { plant } = loadScenario(boat, { days: '3', from: '03-02' }).read;
    // 2 March is day 60, 1 January being 0.
    expect([plant.run.days, plant.run.first_day]).toEqual([3, 60]);
  });

  it('gives a file without a run one', () => {
    const { run: _, ...rest } = boatJson;
    expect(loadScenario(place('no-run.json', rest), { days: '2' }).read.plant.run.days).toBe(2);
  });

  it('takes the weather from a file', () => {
    const { weather } = loadScenario(boat, { weather: coldYear }).read.plant;
    expect([weather.air_C[0], weather.air_C[8759]]).toEqual([-12.5, -12.5]);
  });

  it('looks for the scenario’s weather file beside the scenario', () => {
    const path = place('with-weather.json', { ...boatJson, weather: { kind: 'file', file: 'cold.csv' } });
    expect(loadScenario(path, {}).read.plant.weather.air_C[100]).toBe(-12.5);
  });

  it('lets a weather file on the command line stand in for one that is missing', () => {
    mkdirSync(join(folder, 'elsewhere'));
    const path = place('elsewhere/lost.json', { ...boatJson, weather: { kind: 'file', file: 'lost.csv' } });
    expect(() => loadScenario(path, {})).toThrow(Refusal);
    expect(loadScenario(path, { weather: coldYear }).read.plant.weather.air_C[5]).toBe(-12.5);
  });

  it('puts the file’s path before each problem', () => {
    const path = place('wrong.json', { ...boatJson, sauce: 1, store: { ...boatJson.store, lid: 'loose' } });
    try {
      loadScenario(path, {});
      expect.unreachable();
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      expect(error.troubles.map(({ where }) => where).sort()).toEqual([
        `${path}: sauce`,
        `${path}: store.lid`,
      ]);
      expect(error.exitCode).toBe(2);
    }
  });
});
