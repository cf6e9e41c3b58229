import { describe, expect, it } from 'vitest';
import demo from '../../../../scenarios/demo.json';
import { edited, type Scenario } from '../../../../sim/index.ts';
import { changedFigures, changedInputs, differenceText } from '../../../../ui/web/app/compare.ts';

const scenario = demo as unknown as Scenario;

describe('changed inputs', () => {
  it('are none where nothing was changed, or only the name', () => {
    expect(changedInputs(scenario, edited(scenario, [{ path: 'name', value: 'x' }]))).toEqual([]);
  });

  it('name the part and the input, and say what it was and is', () => {
    const after = edited(scenario, [
      { path: 'coils[0].rolls', value: 3 },
      { path: 'store.water_depth', value: '30 in' },
    ]);
    expect(changedInputs(scenario, after)).toEqual([
      { path: 'store.water_depth', label: 'Store, depth of water', was: '32 in', is: '30 in' },
      { path: 'coils[0].rolls', label: 'Coil: household, rolls', was: '2', is: '3' },
    ]);
  });

  it('say so where only one of the two says anything', () => {
    const after = JSON.parse(JSON.stringify(scenario)) as Scenario;
    delete after.store.insulation?.lid;
    const [lid] = changedInputs(scenario, after);
    expect(lid).toMatchObject({ path: 'store.insulation.lid', is: null });
    expect(lid.was).toContain('polyiso');
  });

  it('take a part that only one of the two has as a whole', () => {
    const { collector: _, ...without } = scenario;
    expect(changedInputs(scenario, without as Scenario)).toEqual([
      {
        path: 'collector',
        label: 'Solar collector: tubes on the south wall',
        was: 'tubes on the south wall',
        is: null,
      },
    ]);
  });
});

describe('changed figures', () => {
  it('are those whose text differs, with what lies between', () => {
    const before = { store_top_C_max: 80, cold_shower_s: 300, showers_cold: 2, fuel_m3: 0.02 };
    const after = { store_top_C_max: 70, cold_shower_s: 0, showers_cold: 2, fuel_m3: 0.020_000_1 };
    const changed = changedFigures(before, after, 'SI');
    expect(changed.map(({ key, was, is, by }) => [key, was, is, by])).toEqual([
      ['cold_shower_s', '5 min', '0 s', '−5 min'],
      ['store_top_C_max', '80 °C', '70 °C', '−10 K'],
    ]);
  });

  it('give no difference to what one of the two does not know', () => {
    const [fuel] = changedFigures({ fuel_m3: 0.02 }, { fuel_m3: null }, 'SI');
    expect(fuel).toMatchObject({ was: '20 L', is: 'no engine', by: null });
  });
});

describe('a difference', () => {
  it('of temperatures knows no zero of the scale', () => {
    expect(differenceText(10, 'temperature', 'US')).toBe('+18 °F');
    expect(differenceText(-10, 'temperature', 'mixed')).toBe('−18 °F');
  });
});
