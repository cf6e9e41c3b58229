import { describe, expect, it } from 'vitest';
import { conductivityAt, MATERIALS } from '../../../sim/physics/materials.ts';
import {
  findTube,
  ownTube,
  TUBE_MATERIALS,
  TUBE_STANDARDS,
  tubeSizes,
  tubeSource,
} from '../../../sim/physics/tubes.ts';

describe.each(TUBE_STANDARDS)('%s', (standard) => {
  it('finds each size it lists, thicker and thicker, with a wall between bore and outside', () => {
    const sizes = tubeSizes(standard);
    expect(sizes.length).toBeGreaterThan(4);
    let last = 0;
    for (const size of sizes) {
      const tube = findTube(standard, size);
      expect(tube, size).not.toBeNull();
      if (!tube) continue;
      expect(tube.outside_diameter_m).toBeGreaterThanOrEqual(last);
      last = tube.outside_diameter_m;
      expect(tube.inside_diameter_m).toBeGreaterThan(0.5 * tube.outside_diameter_m);
      expect(tube.inside_diameter_m).toBeLessThan(tube.outside_diameter_m);
      expect(tube.label).toContain(size);
    }
    expect(tubeSource(standard).source).toMatch(/ASTM|EN/);
  });

  it.each(['', '7/3 in', '__proto__', 'constructor', '99'])('has no size %j', (size) => {
    expect(findTube(standard, size)).toBeNull();
  });
});

describe('sizes', () => {
  it.each([
    ['plumbing L', '1-1/4 in', ['1 1/4"', '1-1/4', ' 1 1/4 in. ', '1 1/4 inch']],
    ['metric copper', '15x1 mm', ['15 x 1.0 mm', '15×1', '15 mm', '15']],
    ['refrigeration', '3/8 in', ['3/8', '3/8 IN', '3/8in']],
  ] as const)('of %s %s are read however they are written', (standard, size, ways) => {
    const tube = findTube(standard, size);
    expect(tube).not.toBeNull();
    for (const way of ways) expect(findTube(standard, way), way).toEqual(tube);
  });

  it('called by one name differ by 1/8 in between plumbing and refrigeration', () => {
    const plumbing = findTube('plumbing L', '1/2');
    const refrigeration = findTube('refrigeration', '1/2');
    const difference = (plumbing?.outside_diameter_m ?? 0) - (refrigeration?.outside_diameter_m ?? 0);
    expect(difference).toBeCloseTo(0.0254 / 8, 12);
  });
});

describe('own tube', () => {
  it('carries its material’s numbers', () => {
    expect(ownTube('mine', 'copper', 0.012, 0.01)).toMatchObject({
      conductivity_W_mK: 339,
      density_kg_m3: 8940,
    });
  });

  it.each([
    ['kryptonite', 0.012, 0.01],
    ['toString', 0.012, 0.01],
    ['copper', 0.01, 0.012],
    ['copper', 0.01, 0],
    ['copper', Number.NaN, 0.01],
  ])('of %s, %f outside and %f inside is refused', (material, outside, inside) => {
    expect(() => ownTube('mine', material, outside, inside)).toThrow(/ - expected .* - got .* - /);
  });
});

describe('materials', () => {
  it('insulate worse when warm, fibres most', () => {
    const wool = MATERIALS['mineral wool'];
    expect(conductivityAt(wool, 24)).toBe(wool.conductivity_W_mK);
    expect(conductivityAt(wool, 54) / wool.conductivity_W_mK).toBeCloseTo(1.15, 2);
    expect(MATERIALS.polyiso.slope_1_K).toBeLessThan(wool.slope_1_K);
  });

  it('name a source and a plausible conductivity and limit', () => {
    for (const [name, { conductivity_W_mK, max_C, source, use }] of Object.entries(MATERIALS)) {
      expect(source.length, name).toBeGreaterThan(10);
      expect(conductivity_W_mK, name).toBeGreaterThan(0.01);
      if (use === 'insulation') expect(conductivity_W_mK, name).toBeLessThan(0.08);
      if (max_C !== null) expect(max_C, name).toBeGreaterThan(40);
    }
  });

  it('agree between tube and wall', () => {
    expect(MATERIALS.copper.conductivity_W_mK).toBe(TUBE_MATERIALS.copper.conductivity_W_mK);
  });
});
