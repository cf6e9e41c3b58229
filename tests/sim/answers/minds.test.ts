import { describe, expect, it } from 'vitest';
import { minded, minds } from '../../../sim/answers/minds.ts';
import { SEVERITIES } from '../../../sim/run/severities.ts';
import { simulate } from '../../../sim/run/simulation.ts';
import { coilOf, engineOf, plantOf, tapsOf } from '../support/plant.ts';

describe('the cautions of an answer', () => {
  it('are as serious as those of a run', () => {
    const keys = Object.keys(SEVERITIES) as (keyof typeof SEVERITIES)[];
    const severityOf = Object.fromEntries(
      minds(keys.map((key) => [key, true])).map(({ key, severity }) => [key, severity]),
    );
    const plant = plantOf({
      coils: [coilOf('charging'), coilOf('household')],
      engine: engineOf('charging'),
      taps: tapsOf('household', { mixing_valve_C: null }),
      run: { days: 1, start: { bottom_C: 60, top_C: 60 } },
    });
    const { cautions } = simulate(plant);
    expect(cautions.length).toBeGreaterThan(5);
    for (const { key, severity } of cautions.filter(({ key }) => key !== 'weight'))
      expect(severityOf[key], key).toBe(severity);
  });

  it.each([
    'scald',
    'scald_no_valve',
    'boil_over',
    'boiling',
    'freezing_loop',
    'trapped_coil',
    'pause_scald',
  ] as const)('%s is a danger, whatever any run showed', (key) => {
    expect(minds([[key, true]])).toEqual([{ key, severity: 'danger' }]);
  });

  it('stand the worst first', () => {
    const keys = minds([
      ['namesake', true],
      ['liner_limit', true],
      ['scald', true],
    ]).map(({ key }) => key);
    expect(keys).toEqual(['scald', 'liner_limit', 'namesake']);
  });

  it('are those that are due', () => {
    const cautions = minds([
      ['liner_limit', true],
      ['scald', false],
    ]);
    expect(cautions).toEqual([{ key: 'liner_limit', severity: 'warning' }]);
    expect([minded({ cautions }, 'liner_limit'), minded({ cautions }, 'scald')]).toEqual([true, false]);
  });
});
