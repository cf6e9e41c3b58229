/** The fuzz tests are worth what their checks see: each is shown a run with one fault planted. */
import { beforeAll, describe, expect, it } from 'vitest';
import { type Result, readScenario, type Scenario, simulate } from '../../../sim/index.ts';
import type { PlantDescription } from '../../../sim/parts/description.ts';
import { randomScenario } from '../scenario/random-scenario.ts';
import { faultsOf, faultsOfResult, shortened } from './soundness.ts';

let plant: PlantDescription;
let sound: Result;

beforeAll(() => {
  // A plant with every part, whose taps run.
  for (let seed = 1; ; seed++) {
    const scenario = randomScenario(seed);
    if (!scenario.engine || !scenario.collector || !scenario.taps?.showers) continue;
    const read = readScenario(shortened(scenario, seed));
    if (!read.ok) continue;
    plant = read.plant;
    sound = simulate(plant);
    if ((sound.figures.showers ?? 0) > 0) return;
  }
});

function withFault(plantIt: (result: Result) => unknown): string {
  const result = structuredClone(sound);
  plantIt(result);
  return faultsOfResult(plant, result).join('\n');
}

describe('the check of a run', () => {
  it('finds nothing wrong with a sound run', () => {
    expect(faultsOfResult(plant, sound)).toEqual([]);
  });

  it.each<[string, (result: Result) => unknown, string]>([
    [
      'a figure that is no number',
      (r) => Object.assign(r.figures, { loss_J: Number.NaN }),
      'figure loss_J is NaN',
    ],
    [
      'a sample that is no number',
      (r) => r.series.channels.cold_C.fill(Number.NaN, 3, 4),
      'series cold_C is NaN',
    ],
    ['silence while water flows', silenceWhileDrawing, 'series outlet_C is NaN'],
    [
      'an open ledger',
      (r) => Object.assign(r.ledger, { residual_J: 2e-6 * r.ledger.throughput_J }),
      'ledger is open',
    ],
    ['a layer hotter than boiling', (r) => r.series.layer_C.fill(101), 'above the hottest source'],
    ['a layer colder than any sink', (r) => r.series.layer_C.fill(-60), 'below the coldest sink'],
    ['a turned profile', turnProfile, 'lies on lighter water'],
    ['less than no water', (r) => Object.assign(r.figures, { delivered_m3: -1 }), 'delivered_m3 is negative'],
    [
      'more cold showers than showers',
      (r) => Object.assign(r.figures, { showers_cold: 1e6 }),
      'more than the showers',
    ],
    ['an event after the end', (r) => r.events.push({ time_s: 1e9, part: '', name: '' }), 'not in order'],
    ['a run cut short', (r) => Object.assign(r, { days: r.days + 1 }), 'not at the end'],
  ])('sees %s', (_what, plantIt, words) => {
    expect(withFault(plantIt)).toContain(words);
  });

  it('says why a scenario was refused', () => {
    const broken = { ...randomScenario(1), store: { inside: { shape: 'teapot' } } } as unknown as Scenario;
    expect(faultsOf(broken).join()).toContain('store.inside.shape');
  });
});

function silenceWhileDrawing(result: Result): void {
  const { mixed_flow_m3_s, outlet_C } = result.series.channels;
  outlet_C[mixed_flow_m3_s.findIndex((flow) => flow > 1e-6)] = Number.NaN;
}

function turnProfile(result: Result): void {
  const { layer_C, layers } = result.series;
  for (let k = 0; k < layers; k++) layer_C[k] = 60 - k;
}
