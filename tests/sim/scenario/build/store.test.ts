import { describe, expect, it } from 'vitest';
import { sound } from './support.ts';

const inside = { shape: 'box', length: '48 in', width: '36 in', height: '36 in' } as const;

describe('the store', () => {
  it('is filled to 92 % unless the file says otherwise', () => {
    const { plant, byPath } = sound({});
    expect(plant.store.water_depth_m).toBeCloseTo(0.92 * 0.9144, 9);
    expect(byPath.get('store.water_depth')).toMatchObject({ grade: 'D' });
  });

  it('of a tote is the common caged one of thin polyethylene', () => {
    const { store } = sound({ store: { inside: { shape: 'tote' } }, coils: [] }).plant;
    // From memory: about 1.1 x 0.95 x 1.0 m inside, some 1040 litres brimful (275 gallons nominal).
    expect(store.shape).toEqual({ kind: 'box', length_m: 1.1, width_m: 0.95, height_m: 1 });
    expect(store.wall).toMatchObject({ material: 'polyethylene', thickness_m: 0.002, max_C: 49 });
  });

  it.each([
    [
      { shape: 'upright cylinder', diameter: '24 in', height: '48 in' },
      { kind: 'upright cylinder', diameter_m: 0.6096, height_m: 1.2192 },
      'steel',
    ],
    [
      { shape: 'lying cylinder', diameter: '24 in', length: '48 in' },
      { kind: 'lying cylinder', diameter_m: 0.6096, length_m: 1.2192 },
      'steel',
    ],
    [inside, { kind: 'box', length_m: 1.2192, width_m: 0.9144, height_m: 0.9144 }, 'plywood'],
  ] as const)('of shape %o', (read, shape, material) => {
    const { store } = sound({ store: { inside: read }, coils: [] }).plant;
    expect(store.shape).toEqual(shape);
    expect(store.wall.material).toBe(material);
  });

  it('has sheets by label or by thickness over conductivity', () => {
    const sides = [
      { material: 'XPS', thickness: '2 in', resistance: 'R-10' },
      { material: 'EPS', thickness: '38 mm', limit: '70 C' },
    ];
    const { plant } = sound({ store: { inside, insulation: { sides } } });
    // R-10 is 1.7611 m2 K/W (NIST SP 811: R-1 = 0.176110); EPS 38 mm at 0.038 W/(m K) is 1 m2 K/W.
    const [labelled, computed] = plant.store.insulation.sides;
    expect(labelled).toMatchObject({ resistance_m2K_W: expect.closeTo(1.7611, 4), max_C: 74 });
    expect(computed.resistance_m2K_W).toBeCloseTo(1, 9);
    expect(computed.max_C).toBeCloseTo(70, 9);
    // What the file does not say of bottom and lid is taken from the sides, and told of.
    expect(plant.store.insulation.bottom).toEqual(plant.store.insulation.sides);
    expect(plant.store.insulation.lid).toEqual(plant.store.insulation.sides);
  });

  it('may stand bare when the file says so', () => {
    const insulation = { sides: [], bottom: [], lid: [] };
    expect(sound({ store: { inside, insulation } }).plant.store.insulation).toEqual(insulation);
  });

  it.each([
    ['closed', 0.02, ['0 %', '5 %']],
    ['ajar', 0.25, ['10 %', '50 %']],
    ['open', 1, null],
  ] as const)('with its lid %s lets vapour escape', (lid, share, band) => {
    const { plant, byPath } = sound({ store: { inside, lid } });
    expect(plant.store.vapour_share).toBe(share);
    expect(byPath.get('store.vapour_escape')?.band).toEqual(band);
  });

  // Shah against Carrier's active pool at 30 C, and against three quarters of it, still water, at 90 C (shared/physics.md 6).
  it('has a band of evaporation that holds the other published forms', () => {
    const { plant, byPath } = sound({ store: { inside } });
    const [low, high] = (byPath.get('store.evaporation')?.band ?? []).map(Number);
    expect(plant.store.evaporation).toBe(1);
    expect(0.41 / 0.29).toBeLessThan(high + 0.02);
    expect(7.36 / 11.43).toBeGreaterThan(low - 0.01);
    expect(0.82).toBeGreaterThan(low);
    expect(1.18).toBeLessThan(high);
  });

  it('is noted when filled to the brim', () => {
    const { notes } = sound({ store: { inside, water_depth: '35.8 in' }, coils: [] });
    expect(notes).toEqual([{ path: 'store.water_depth', text: expect.stringContaining('will run over') }]);
  });
});
