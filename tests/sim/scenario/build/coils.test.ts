import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../../../sim/scenario/index.ts';
import { coil, collector, engine, problemsWith, sound } from './support.ts';

type Coil = NonNullable<Scenario['coils']>[number];
const taps = { coil: 'coil' };

function one(parts: Partial<Coil>, more: Partial<Scenario> = { taps }) {
  const read = sound({ coils: [{ ...coil, ...parts }], ...more });
  return { ...read, coil: read.plant.coils[0] };
}

describe('a coil', () => {
  it('ends where its last turn does', () => {
    // 60 ft of 7/8 in tube on 28 in, 3/4 in apart: 18.288 / (pi 0.7112) = 8.18 turns of 41.2 mm and the tube's 22.2 mm.
    const { coil: made } = one({ from: '4 in' });
    expect(made.pitch_m).toBeCloseTo(0.0412, 4);
    expect(made.bottom_m).toBeCloseTo(0.1016, 9);
    expect(made.top_m - made.bottom_m).toBeCloseTo(8.18 * 0.0412 + 0.0222, 2);
  });

  it.each([
    ['touching', 22.2, 0.5],
    ['finger gap', 41.2, 0.75],
    ['spread', 73.2, 0.9],
  ] as const)('with turns %s has its pitch and bundling', (spacing, pitch_mm, bundling) => {
    const { coil: made, byPath } = one({ spacing, roll_length: '30 ft' });
    expect(1000 * made.pitch_m).toBeCloseTo(pitch_mm, 0);
    expect(made.bundling).toBe(bundling);
    const [low, high] = (byPath.get('coils[0].bundling')?.band ?? []).map(Number);
    expect(low).toBeLessThan(bundling);
    expect(high).toBeGreaterThan(bundling);
  });

  it.each([
    // Walls of 0.045, 0.032 and 0.097 in, a tenth thicker or thinner, PEX only thicker; bores of 0.785, 0.311 and 0.681 in.
    [{ kind: 'plumbing L', size: '3/4 in' }, [1 - 0.009 / 0.785, 1 + 0.009 / 0.785]],
    [{ kind: 'refrigeration', size: '3/8 in' }, [1 - 0.0064 / 0.311, 1 + 0.0064 / 0.311]],
    [{ kind: 'PEX', size: '3/4 in' }, [1 - 0.0194 / 0.681, 1]],
  ])('of %o may have the bore that its standard lets it have', (tube, ends) => {
    const { coil: made, byPath } = one({ tube: tube as Coil['tube'], roll_length: '20 ft' });
    expect(made.friction).toBe(1);
    const band = (byPath.get('coils[0].bore')?.band ?? []).map(Number);
    expect(band[0]).toBeCloseTo(ends[0], 3);
    expect(band[1]).toBeCloseTo(ends[1], 3);
  });

  it('measured by hand has its own bore, and a source’s coil no doubt that moves nothing', () => {
    const tube = { kind: 'own', material: 'copper', outside: '7/8 in', inside: '0.785 in' } as const;
    const { byPath } = one({ tube });
    expect(byPath.get('coils[0].bore')?.band).toBeNull();
    expect(byPath.get('coils[0].friction')?.band).toEqual(['0.9', '1.25']);
    const idle = one({}, {}).byPath;
    expect(idle.get('coils[0].friction')?.band).toBeNull();
    expect(idle.get('coils[0].bore')?.band).toBeNull();
  });

  it('is refused a bore that leaves no wall', () => {
    const [problem] = problemsWith({ coils: [{ ...coil, bore: 1.2 }], taps });
    expect(problem).toMatchObject({ path: 'coils[0].bore', expected: expect.stringContaining('1.11') });
  });

  it('spread over a height is drawn out to fill it', () => {
    const { coil: made } = one({ spacing: 'spread', roll_length: '30 ft', from: '4 in', to: '28 in' });
    expect(made.top_m).toBeCloseTo(0.7112, 9);
    // 30 ft on 28 in is 4.09 turns; 24 in less the tube over them is 144 mm each.
    expect(made.pitch_m).toBeCloseTo((0.6096 - 0.0222) / 4.09, 2);
  });

  it('shorter than the height it is given ends early, and that is noted', () => {
    const { coil: made, notes } = one({ roll_length: '30 ft', from: '4 in', to: '28 in' });
    expect(made.top_m).toBeLessThan(0.4);
    expect(notes).toEqual([{ path: 'coils[0].to', text: expect.stringContaining('well below "to"') }]);
  });

  it('wound side by side is half as high', () => {
    const height = (side_by_side: number) => {
      const { coil: made } = one({ side_by_side, from: '4 in' });
      return made.top_m - made.bottom_m - made.tube.outside_diameter_m;
    };
    expect(height(2)).toBeCloseTo(height(1) / 2, 9);
  });

  it('counts all its rolls', () => {
    const height = (parts: Partial<Coil>) => one({ from: '2 in', ...parts }).coil.top_m;
    expect(height({ rolls: 2, roll_length: '30 ft', join: 'parallel' })).toBeCloseTo(height({}), 9);
  });

  it('is fed from the bottom for the household and from the top for a source', () => {
    expect(one({}).coil.fed_from).toBe('bottom');
    expect(one({}, { engine }).coil.fed_from).toBe('top');
    expect(one({}, { collector }).coil.fed_from).toBe('top');
    expect(one({ fed_from: 'bottom' }, { engine }).coil.fed_from).toBe('bottom');
  });

  it('through which nothing flows is noted', () => {
    expect(one({}, {}).notes).toEqual([{ path: 'coils[0]', text: expect.stringContaining('"coil"') }]);
  });

  it('takes plumbing and refrigeration tube of one name for two tubes', () => {
    const outside = (kind: 'plumbing L' | 'refrigeration') =>
      one({ tube: { kind, size: '1/2 in' } }).coil.tube.outside_diameter_m / 0.0254;
    expect(outside('plumbing L')).toBeCloseTo(0.625, 9);
    expect(outside('refrigeration')).toBeCloseTo(0.5, 9);
  });

  it('of its own tube is what the caliper says', () => {
    const tube = { kind: 'own', material: 'stainless steel', outside: '16 mm', inside: '14 mm' } as const;
    expect(one({ tube }).coil.tube).toMatchObject({
      outside_diameter_m: 0.016,
      inside_diameter_m: 0.014,
      conductivity_W_mK: 15.5,
    });
  });

  it('too wide for a lying cylinder is refused by its narrower side', () => {
    const inside = { shape: 'lying cylinder', diameter: '40 in', length: '26 in' } as const;
    expect(problemsWith({ store: { inside }, taps })).toEqual([
      expect.objectContaining({ path: 'coils[0].coil_diameter' }),
    ]);
  });
});
