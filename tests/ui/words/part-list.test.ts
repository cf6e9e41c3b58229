import { describe, expect, it } from 'vitest';
import demo from '../../../scenarios/demo.json' with { type: 'json' };
import tote from '../../../scenarios/tote-sun.json' with { type: 'json' };
import type { Refusal, Scenario } from '../../../sim/index.ts';
import { listedParts, refusalText } from '../../../ui/words/index.ts';
import { factsOf } from '../../sim/answers/section/facts-of.ts';
import { randomScenario } from '../../sim/scenario/random-scenario.ts';

const lines = (scenario: unknown, units: 'US' | 'SI' | 'mixed', known = true) =>
  listedParts(scenario as Scenario, known ? factsOf(scenario as Scenario) : null, units).map(
    ({ path, name, facts }) => `${path} | ${name ?? ''} | ${facts}`,
  );

describe('the list of parts', () => {
  it('has every part of the demo with its facts', () => {
    expect(lines(demo, 'US')).toEqual([
      expect.stringMatching(
        /^store \| {2}\| 48 in long, 36 in wide, 36 in high inside; .*; 239 gal, filled 2080 lb$/,
      ),
      expect.stringMatching(/^coils\[0\] \| household \| 2 × 60 ft in series of 3\/4 in plumbing tube/),
      expect.stringMatching(/^coils\[1\] \| engine \| 60 ft of/),
      expect.stringMatching(/^coils\[2\] \| collector \| 50 ft of/),
      'engine | diesel set | 8 kW diesel, 180 °F thermostat; coil engine; every day 3:30 pm to 7:30 pm',
      'collector | tubes on the south wall | 40 tubes, tilt 65°; coil collector',
      'supply |  | cistern of 500 gal; pump of 3.2 gpm, cut-out 50 psi',
      'taps |  | coil household; mixing valve at 118 °F',
      'taps.showers[0] | morning shower | 6:30 am, 2 people',
      'taps.showers[1] | evening shower | 7:45 pm, 4 people, 7 min',
      'taps.draws[0] | breakfast dishes | 8:15 am, 3 gal, 1.2 gpm, 110 °F',
      'taps.draws[1] | hands and faces | 12:10 pm, 2 min, 0.8 gpm, 100 °F',
      'taps.draws[2] | supper dishes | 6:45 pm, 5 gal, 1.2 gpm, 110 °F',
      'taps.draws[3] | laundry | 10:00 am, Sat, 15.9 gal, 1.59 gpm, 104 °F',
      'site |  | 44.2 N, 73.5 W, 1150 ft',
      'weather |  | monthly',
      'run |  | from 2027-01-09, 7 days',
      'prices |  | invented, until you type your own',
    ]);
  });

  it('is all in the reader’s units, whatever the file was written in', () => {
    expect(lines(demo, 'SI').join('\n')).not.toMatch(/°F|\b(gal|gpm|psi|lb|ft)\b(?! roll)/);
    expect(lines(demo, 'SI')).toContain(
      'taps.draws[0] | breakfast dishes | 8:15, 11.4 L, 4.54 L/min, 43.3 °C',
    );
    // 11 kW are 37.5 kBtu/h.
    expect(lines(tote, 'US').find((line) => line.startsWith('backup'))).toMatch(
      /propane, up to 37\.5 kBtu\/h, heats to \d+ °F$/,
    );
  });

  it('falls back on the file where the plant is not known', () => {
    expect(lines(demo, 'US', false)).toContain('coils[0] | household | 60 ft');
    expect(lines(demo, 'US', false)).toContain(
      'engine | diesel set | coil engine; every day 3:30 pm to 7:30 pm',
    );
  });

  it('lists every coil and draw of random scenarios, and leaves no hole', () => {
    for (let seed = 0; seed < 40; seed++) {
      const scenario = randomScenario(seed);
      const all = lines(scenario, seed % 2 === 0 ? 'SI' : 'mixed');
      expect(all.join('\n')).not.toMatch(/undefined|NaN|null|\[object/);
      const { coils = [], taps } = scenario;
      const items = coils.length + (taps?.showers?.length ?? 0) + (taps?.draws?.length ?? 0);
      expect(all.filter((line) => /\[\d+\] \|/.test(line))).toHaveLength(items);
    }
  });
});

describe('a refusal', () => {
  it.each<[Refusal, RegExp]>([
    [{ no: 'in use', by: 'engine' }, /engine’s coolant flows through it/],
    [{ no: 'heats for it' }, /remove that first/],
    [{ no: 'nobody draws' }, /add a household first/],
    [{ no: 'full', most: 8 }, /There are 8 already/],
    [{ no: 'one of its kind' }, /one already/],
    [{ no: 'always there' }, /No design is without it/],
  ])('says what stands in the way and what to do: %o', (refusal, words) => {
    expect(refusalText(refusal)).toMatch(words);
  });
});
