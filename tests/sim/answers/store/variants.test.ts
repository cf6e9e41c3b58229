import { describe, expect, it } from 'vitest';
import {
  presentThickness,
  resistanceOf,
  thicknessOf,
  variantOf,
} from '../../../../sim/answers/store/variants.ts';
import { edited, type PlantDescription, readScenario, type Scenario } from '../../../../sim/index.ts';
import { smallScenario } from '../small.ts';

function plantOf(scenario: unknown): PlantDescription {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.plant;
}
const { store } = smallScenario() as unknown as { store: Record<string, unknown> };
const withStore = (over: Record<string, unknown>): Scenario =>
  smallScenario({ store: { ...store, ...over } });
const variant = (scenario: Scenario, over: Partial<Parameters<typeof variantOf>[2]>) => {
  const plant = plantOf(scenario);
  const { lid } = plant.store;
  return variantOf(plant, scenario, { thickness: presentThickness(plant), lid, volume: 1, ...over });
};
const read = (scenario: Scenario, over: Partial<Parameters<typeof variantOf>[2]>) =>
  plantOf(edited(scenario, variant(scenario, over).edits));

describe('a store of another kind', () => {
  it('is the present one where nothing is chosen, without an edit', () => {
    expect(variant(smallScenario(), {})).toMatchObject({ present: true, edits: [], foam_money: 0 });
  });

  it('is read with its insulation thicker on every face, and with nothing else changed', () => {
    const before = plantOf(smallScenario()).store;
    const after = read(smallScenario(), { thickness: 3 }).store;
    for (const face of ['sides', 'bottom', 'lid'] as const) {
      expect(resistanceOf(after.insulation[face])).toBeCloseTo(2 * resistanceOf(before.insulation[face]), 9);
      expect(thicknessOf(after.insulation[face])).toBeCloseTo(0.2, 9);
    }
    expect({ ...after, insulation: null }).toEqual({ ...before, insulation: null });
  });

  it('keeps sheets that are no insulation as they are', () => {
    const plywood = { material: 'plywood', thickness: '12 mm' };
    const lid = [{ material: 'XPS', thickness: '50 mm' }, plywood];
    const scenario = withStore({ insulation: { sides: [], bottom: [], lid } });
    const after = read(scenario, { thickness: 4 }).store.insulation.lid;
    expect(after.map(({ thickness_m }) => thickness_m)).toEqual([expect.closeTo(0.15, 9), 0.012]);
  });

  it('gets foam where it has none', () => {
    const bare = withStore({ insulation: { sides: [], bottom: [], lid: [] } });
    expect(presentThickness(plantOf(bare))).toBe(0);
    const after = read(bare, { thickness: 2 }).store.insulation;
    expect(after.sides).toMatchObject([{ material: 'polyiso', thickness_m: expect.closeTo(0.0508, 9) }]);
  });

  it('pays for foam by area and thickness', () => {
    // 0.8 x 0.8 x 0.9 m: sides 2.88 m2, bottom and lid 0.64 m2 each; 100 mm more at 10 for a square metre of 25 mm.
    expect(variant(smallScenario(), { thickness: 3 }).foam_money).toBeCloseTo(4 * 10 * (2.88 + 1.28), 6);
    expect(variant(smallScenario(), { thickness: 0 }).foam_money).toBeCloseTo(-2 * 10 * (2.88 + 1.28), 6);
  });

  it('forgets what was measured of one lid under another', () => {
    const scenario = withStore({ vapour_escape: '1 %' });
    expect(read(scenario, { lid: 'open' }).store).toMatchObject({ lid: 'open', vapour_share: 1 });
    expect(read(scenario, { thickness: 3 }).store.vapour_share).toBeCloseTo(0.01, 12);
  });

  it('holds so many times the water at the same depth, whatever its shape', () => {
    for (const inside of [
      { shape: 'box', length: '0.8 m', width: '0.8 m', height: '0.9 m' },
      { shape: 'upright cylinder', diameter: '0.9 m', height: '0.9 m' },
      { shape: 'lying cylinder', diameter: '1 m', length: '1.2 m' },
      { shape: 'tote' },
    ]) {
      const scenario = withStore({ inside });
      const found = variant(scenario, { volume: 1.5 });
      expect(found.volume_m3 / variant(scenario, {}).volume_m3).toBeCloseTo(1.5, 9);
      const [before, after] = [plantOf(scenario).store, read(scenario, { volume: 1.5 }).store];
      expect(after.water_depth_m).toBeCloseTo(before.water_depth_m, 9);
      expect(after.wall).toEqual(before.wall);
    }
  });
});
