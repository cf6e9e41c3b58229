import { describe, expect, it } from 'vitest';
import demo from '../../../../scenarios/demo.json';
import { edited, type Scenario } from '../../../../sim/index.ts';
import { inputLabel, partOf } from '../../../../ui/web/app/input-label.ts';

const scenario = demo as unknown as Scenario;

describe('the name of an input', () => {
  it.each([
    ['coils[0].rolls', 'Coil: household, rolls'],
    ['coils[0].tube.size', 'Coil: household, tube, size'],
    ['store.water_depth', 'Store, depth of water'],
    // Labels that explain are cut short; the one sheet of foam there is goes without a number.
    ['store.insulation.sides[0].thickness', 'Store, insulation, sides, thickness'],
    ['coils[0]', 'Coil: household'],
  ])('of %s is %s', (path, name) => {
    expect(inputLabel(path, scenario)).toBe(name);
  });

  it('counts the items of a list from the second on', () => {
    const sheet = { kind: 'foam', thickness: '1 in' };
    const two = edited(scenario, [{ path: 'store.insulation.sides', value: [sheet, sheet] }]);
    expect(inputLabel('store.insulation.sides[1].thickness', two)).toBe(
      'Store, insulation, sides, sheet 2, thickness',
    );
  });

  it('of a path that nothing is known of is its last step', () => {
    expect(inputLabel('store.unheard', scenario)).toBe('Store, unheard');
  });

  it.each(['__proto__', 'constructor', 'toString'])('is %s where a file has that name', (name) => {
    expect(inputLabel(name, scenario).toLowerCase()).toBe(name.toLowerCase());
    expect(inputLabel(`store.${name}`, scenario)).toBe(`Store, ${name}`);
  });
});

describe('the part an input lies in', () => {
  it('is the one that has a card', () => {
    expect(partOf('taps.showers[0].flow')).toBe('taps.showers[0]');
    expect(partOf('taps.mixing_valve')).toBe('taps');
    expect(partOf('coils[2].rolls')).toBe('coils[2]');
  });
});
