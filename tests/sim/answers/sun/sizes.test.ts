import { describe, expect, it } from 'vitest';
import { dullestWeek, sizePrice, sizesAround, stopsPaying } from '../../../../sim/answers/sun/sizes.ts';
import { edited, type PlantDescription, readScenario } from '../../../../sim/index.ts';
import { sunnyScenario } from '../small.ts';

function plantOf(scenario: unknown): PlantDescription {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.plant;
}
const collectorIn = (scenario: unknown) => {
  const { collector } = plantOf(scenario);
  if (!collector) throw new Error('no collector');
  return collector;
};

describe('sizes around the present one', () => {
  it('go from none to three times, with the present among them', () => {
    const scenario = sunnyScenario();
    const sizes = sizesAround(collectorIn(scenario), scenario);
    expect(sizes.map(({ area_m2 }) => area_m2)).toEqual([0, 1, 2, 3, 4, 6]);
    expect(sizes.filter(({ present }) => present).map(({ area_m2 }) => area_m2)).toEqual([2]);
  });

  it('are what the reader then sees, flow and all', () => {
    const { collector } = sunnyScenario() as unknown as { collector: Record<string, unknown> };
    for (const over of [{}, { pump_flow: '3 L/min' }]) {
      const scenario = sunnyScenario({ collector: { ...collector, ...over } });
      const present = collectorIn(scenario);
      for (const { area_m2, edits } of sizesAround(present, scenario)) {
        const changed = plantOf(edited(scenario, edits)).collector;
        if (area_m2 === 0) expect(changed).toBeNull();
        else {
          expect(changed?.area_m2).toBeCloseTo(area_m2, 9);
          expect(changed?.pump_flow_m3_s).toBeCloseTo((present.pump_flow_m3_s * area_m2) / 2, 12);
        }
      }
    }
  });

  it('are whole tubes where tubes are counted', () => {
    const scenario = sunnyScenario({
      collector: {
        coil: 'sun',
        kind: 'evacuated tubes',
        size: { by: 'tubes', tubes: 5, absorber_each: '0.1 m2' },
      },
    });
    const sizes = sizesAround(collectorIn(scenario), scenario);
    expect(sizes.map(({ tubes }) => tubes)).toEqual([0, 3, 5, 8, 10, 15]);
    expect(sizes.map(({ area_m2 }) => area_m2)).toEqual(
      [0, 0.3, 0.5, 0.8, 1, 1.5].map((area) => expect.closeTo(area, 9)),
    );
  });

  it('cost by the tube where the file names its price, else by the area', () => {
    const { prices } = plantOf(sunnyScenario({ prices: { collector_per_m2: 100, collector_per_tube: 20 } }));
    const size = { area_m2: 2, tubes: 30, present: true, edits: [] };
    expect(sizePrice(size, prices)).toBe(600);
    expect(sizePrice({ ...size, tubes: null }, prices)).toBe(200);
    expect(sizePrice(size, { ...prices, collector_per_tube: null })).toBe(200);
  });
});

describe('stopsPaying', () => {
  it('finds where a saturating collector brings half of the first square metre’s', () => {
    // heat = a - a^2/20 brings 1 - a/10 a square metre: 0.975 between 0 and 0.5, half of that at 5.125.
    const areas = Array.from({ length: 21 }, (_, i) => i / 2);
    expect(
      stopsPaying(
        areas,
        areas.map((a) => a - a ** 2 / 20),
      ),
    ).toBeCloseTo(5.125, 9);
  });
  it('finds nothing where each square metre brings as much as the first', () => {
    expect(stopsPaying([0, 1, 2, 3], [0, 10, 20, 30])).toBeNull();
  });
  it('does without sizes that are not known', () => {
    expect(stopsPaying([0, 1, 2, 3], [0, 10, null, 12])).toBeGreaterThan(0.5);
    expect(stopsPaying([0, 1], [null, null])).toBeNull();
  });
});

describe('dullestWeek', () => {
  it('finds the seven days with least light, over New Year too', () => {
    const light = new Float64Array(8760).fill(100);
    light.fill(1, 24 * 200, 24 * 207);
    expect(dullestWeek(light)).toBe(200);
    light.fill(0, 24 * 362);
    light.fill(0, 0, 24 * 4);
    expect(dullestWeek(light)).toBe(362);
  });
});
