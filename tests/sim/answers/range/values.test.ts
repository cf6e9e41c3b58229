import { describe, expect, it } from 'vitest';
import { readAxis } from '../../../../sim/answers/range/axis.ts';
import { readScenario } from '../../../../sim/index.ts';
import { smallScenario } from '../small.ts';

const scenario = smallScenario();
const read = readScenario(scenario);
if (!read.ok) throw new Error('the small scenario is refused');
const axis = (spec: string) => readAxis(spec, scenario, read.filled);

describe('an axis', () => {
  it.each([
    ['store.water_depth=60 cm:0.8 m:3', ['60 cm', '70 cm', '80 cm'], [0.6, 0.7, 0.8]],
    ['coils[0].rolls=1:3:3', [1, 2, 3], [1, 2, 3]],
    ['store.bridges=1:2:5', [1, 1.25, 1.5, 1.75, 2], [1, 1.25, 1.5, 1.75, 2]],
    [
      'taps.showers[0].at=6:30 am:8:00 am:4',
      ['6:30', '7:00', '7:30', '8:00'],
      [23_400, 25_200, 27_000, 28_800],
    ],
    ['run.start.bottom=104 F:140 F:2', ['104 F', '140 F'], [40, 60]],
    ['store.insulation.sides[0].resistance=R-10:R-30:3', ['R-10', 'R-20', 'R-30'], null],
    ['store.lid=closed|ajar|open', ['closed', 'ajar', 'open'], [null, null, null]],
    ['coils[0].tube.size=3/8 in|1/2 in', ['3/8 in', '1/2 in'], [null, null]],
    ['coils[0].tube.kind=plumbing L|plumbing M', ['plumbing L', 'plumbing M'], [null, null]],
    ['engine.check_valve=true|false', [true, false], [null, null]],
    ['taps.showers[0].flow=5 L/min|2 gpm', ['5 L/min', '2 gpm'], null],
    // Left out by the file, and filled in.
    ['engine.jacket_share=20 %:30 %:3', ['20 %', '25 %', '30 %'], [0.2, 0.25, 0.3]],
  ])('reads %s', (spec, values, at) => {
    const found = axis(spec);
    expect(found.values).toEqual(values);
    if (at)
      found.at.forEach(
        (each, i) =>
          void (at[i] === null ? expect(each).toBeNull() : expect(each).toBeCloseTo(at[i] ?? 0, 9)),
      );
    else expect(found.at.every((each) => typeof each === 'number')).toBe(true);
    expect(found.label).not.toBe('');
  });

  it.each([
    [
      'store.waterdepth=1 m:2 m:2',
      /^store\.waterdepth - expected the path of an input - got none of that name - did you mean store\.water_depth\?$/,
    ],
    [
      'coils[7].rolls=1:2:2',
      /^coils\[7\]\.rolls - expected an input of this scenario - got one that it does not have/,
    ],
    ['store=1:2:3', /^store - expected an input that holds one value - got a part with several/],
    ['store.water_depth', /^vary - expected a path and its values/],
    ['=1:2:3', /^vary - expected a path and its values/],
    ['store.bridges=1:2:1', /expected 2 to 200 values - got 1/],
    ['store.bridges=1:2:201', /expected 2 to 200 values - got 201/],
    ['store.bridges=1:2', /expected values as from:to:number or a\|b\|c - got "1:2"/],
    ['store.bridges=a:b:3', /expected two ends that can be read - got "a:b"/],
    ['store.water_depth=20:40:3', /expected two ends that can be read/],
    ['store.water_depth=1 m:2 psi:3', /expected two ends that can be read/],
    ['coils[0].rolls=1:4:3', /expected whole numbers - got 1, 2\.5, 4/],
    ['store.lid=closed|shut', /expected one of closed, ajar, open - got "shut"/],
    ['engine.check_valve=true|maybe', /expected true or false - got "maybe"/],
    ['store.bridges=1|x', /expected a plain number - got "x"/],
    ['store.lid=closed|', /expected 2 to 200 values with \| between/],
  ])('refuses %s', (spec, message) => {
    expect(() => axis(spec)).toThrow(message);
  });
});
