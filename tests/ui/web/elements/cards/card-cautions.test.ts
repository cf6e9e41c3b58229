import { describe, expect, it } from 'vitest';
import type { Caution, Scenario } from '../../../../../sim/index.ts';
import { cautionsIn } from '../../../../../ui/web/elements/cards/card-cautions.ts';
import { nodesIn } from '../../../../../ui/web/elements/cards/card-plan.ts';
import { cautionWords } from '../../../../../ui/words/index.ts';
import { bare, demo, outline } from './demo.ts';

function cautions(part: string, given: Caution[] = [], scenario: Scenario = demo): string[] {
  return cautionsIn(part, scenario, given, outline(scenario, part)).map(
    ({ path, caution }) => `${caution.severity} ${caution.key} at ${path}`,
  );
}
const warn = (key: string, part: string): Caution => ({ key, part, severity: 'warning' });

describe('before any run', () => {
  it.each([
    ['store', ['note weight at store.water_depth']],
    ['coils[0]', ['danger trapped_coil at coils[0].roll_length']],
    ['coils[2]', ['danger trapped_coil at coils[2].roll_length']],
    ['engine', ['danger carbon_monoxide at engine.runs', 'danger coolant_poison at engine.coolant.kind']],
    ['supply', ['note wiring at supply.pump.open_flow']],
    ['taps', ['note back_feed at taps.mixing_valve.fitted']],
    ['site', []],
    ['taps.draws[0]', []],
  ])('%s warns of what comes with it', (part, expected) => {
    expect(cautions(part)).toEqual(expected);
  });

  it('a household without a mixing valve is in danger', () => {
    const taps = { ...demo.taps, coil: 'household', mixing_valve: { fitted: false } };
    expect(cautions('taps', [], { ...demo, taps })).toEqual([
      'danger scald_no_valve at taps.mixing_valve.fitted',
    ]);
  });

  it('ethylene glycol is a danger also where it is only assumed, and no other liquid is', () => {
    const engine = { coil: 'two', fuel: 'diesel', rated_output: '5 kW' } as const;
    const runs = { kind: 'call for heat', below: '110 F', until: '150 F' } as const;
    const scenario = { ...bare, engine: { ...engine, runs } };
    expect(cautions('engine', [], scenario)).toContain('danger coolant_poison at engine.coolant.kind');
    const water = { ...scenario, engine: { ...engine, runs, coolant: { kind: 'water' as const } } };
    expect(cautions('engine', [], water)).toEqual(['danger carbon_monoxide at engine.runs']);
  });
});

describe('a run’s caution', () => {
  it('stands in the card of the part it is about, in place of the one before any run', () => {
    const given = [
      { key: 'weight', part: 'store', severity: 'warning', figure: 'store_mass_kg', value: 600 },
      { key: 'trapped_coil', part: 'household', severity: 'danger' },
      warn('engine_cold', 'diesel set'),
      warn('freezing_loop', 'tubes on the south wall'),
      warn('freezing_cistern', 'cistern'),
    ] satisfies Caution[];
    expect(cautions('store', given)).toEqual(['warning weight at store.water_depth']);
    expect(cautions('coils[0]', given)).toHaveLength(1);
    expect(cautions('engine', given)[0]).toBe('warning engine_cold at engine.coldest_return');
    expect(cautions('collector', given)[0]).toBe('warning freezing_loop at collector.fluid.kind');
    expect(cautions('supply', given)[0]).toBe('warning freezing_cistern at supply.cold.start');
  });

  it('about the estimate as a whole stands in no card', () => {
    const given = [warn('estimate_only', 'plant')];
    for (const part of ['store', 'engine', 'run', 'site'])
      expect(cautions(part, given).join()).not.toContain('estimate_only');
  });

  it('has a place in its card, whatever it is', () => {
    const about: Record<string, [part: string, name: string]> = {
      store: ['store', 'store'],
      engine: ['engine', 'diesel set'],
      collector: ['collector', 'tubes on the south wall'],
      coil: ['coils[0]', 'household'],
      taps: ['taps', 'taps'],
      supply: ['supply', 'supply'],
      weather: ['weather', 'weather'],
      run: ['run', 'run'],
    };
    const homes = {
      store: 'weight boil_over boiling liner_limit foam_limit wall_limit level_low runs_dry mixed_metals',
      engine: 'carbon_monoxide coolant_poison engine_cold short_cycling altitude_output hot_engine',
      collector: 'freezing_loop stagnation coolant_poison',
      coil: 'trapped_coil legionella tube_speed plastic_tube',
      taps: 'scald scald_no_valve back_feed',
      supply: 'wiring pump_at_limit tap_pressure_low freezing_cistern',
      weather: 'weather_generated',
      run: 'faults_played',
    };
    const seen = new Set<string>(['estimate_only']);
    for (const [home, keys] of Object.entries(homes)) {
      const [part, name] = about[home];
      const paths = new Set(nodesIn(outline(demo, part)).map(({ path }) => path));
      for (const key of keys.split(' ')) {
        const found = cautionsIn(part, demo, [warn(key, name)], outline(demo, part));
        const at = found.find(({ caution }) => caution.key === key)?.path;
        expect(at, key).not.toBe(part);
        expect(paths, key).toContain(at);
        seen.add(key);
      }
    }
    expect([...seen].sort()).toEqual(Object.keys(cautionWords).sort());
  });
});
