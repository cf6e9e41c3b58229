/** The store by its balances: what leaves one side enters the other, and what is equal stays. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeOf } from '../../../../sim/parts/layout.ts';
import { REFERENCE_HEAT_CAPACITY } from '../../../../sim/parts/liquid.ts';
import { waterBoilingPoint, waterConductivity, waterEnthalpy } from '../../../../sim/physics/water.ts';
import { roomAt, SEALED, sheet } from '../../support/plant.ts';
import { StoreRig } from '../../support/store-rig.ts';

const sealed = { insulation: { sides: SEALED, bottom: SEALED, lid: SEALED } };
const thin = { material: 'none', thickness_m: 1e-9, conductivity_W_mK: 0.1, max_C: null };
const ramp = (low: number, high: number, n = 10) =>
  Array.from({ length: n }, (_, i) => low + ((high - low) * i) / (n - 1));

describe('a store', () => {
  it('as warm as what stands around it stays as it is', () => {
    const rig = new StoreRig({ surroundings: roomAt(21) }).set(new Array(10).fill(21)).rates();
    expect(Math.max(...rig.out.map(Math.abs))).toBeLessThan(1e-12);
  });

  it('sealed and of one temperature stays as it is', () => {
    const rig = new StoreRig(sealed).set(new Array(10).fill(70)).rates();
    expect(Math.abs(rig.gain_W)).toBeLessThan(1e-6);
  });

  it('books what its layers gain and lose, whatever it is and wherever it stands', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 99.9, noNaN: true }), { minLength: 10, maxLength: 10 }),
        fc.array(fc.double({ min: -3000, max: 9000, noNaN: true }), { minLength: 10, maxLength: 10 }),
        fc.constantFrom(0, 0.03, 1),
        fc.constantFrom('float' as const, 'by hand' as const),
        fc.constantFrom(roomAt(15), { kind: 'outdoors' as const }),
        (layers_C, heat_W, vapour_share, make_up, surroundings) => {
          const rig = new StoreRig({ vapour_share, make_up, surroundings }).set(layers_C).rates(heat_W);
          const given = heat_W.reduce((sum, w) => sum + w, 0);
          const scale = heat_W.reduce((sum, w) => sum + Math.abs(w), 1e4);
          expect(Math.abs(rig.gain_W - rig.booked_W - given)).toBeLessThan(1e-10 * scale);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('holds above 0 C what its water holds', () => {
    const rig = new StoreRig().set(new Array(10).fill(63));
    const mass = rig.store.mass_kg.reduce((sum, m) => sum + m, 0);
    // 1 m by 0.8 m by 0.8 m of water at 50 C: 988.04 kg/m3 (IAPWS-95).
    expect(mass / (0.64 * 988.04)).toBeCloseTo(1, 4);
    expect(rig.store.energy(rig.y) / (mass * waterEnthalpy(63))).toBeCloseTo(1, 4);
  });

  it('reads a height between the middles of layers', () => {
    // Layers of 8 cm: middles at 4, 12, .. 76 cm.
    const { store } = new StoreRig().set([20, 30, 40, 42, 44, 46, 48, 50, 60, 64]).rates();
    const read = [0, 0.04, 0.08, 0.12, 0.7, 0.76, 0.8, 5].map((z) => store.at_C(z));
    [20, 20, 25, 30, 61, 64, 64, 64].forEach((t, i) => {
      expect(read[i]).toBeCloseTo(t, 6);
    });
  });
});

describe('conduction', () => {
  it('between two layers carries k A dT / dz from the warm to the cold', () => {
    const rig = new StoreRig({ ...sealed, wall: thin }).set([
      ...new Array(5).fill(40),
      ...new Array(5).fill(50),
    ]);
    rig.rates();
    const gain = (i: number) => rig.out[rig.store.first + i] * rig.store.mass_kg[i] * REFERENCE_HEAT_CAPACITY;
    const expected = (waterConductivity(50) * 0.8 * 10) / 0.08;
    expect(gain(4) / expected).toBeCloseTo(1, 3);
    expect(gain(5)).toBeCloseTo(-gain(4), 9);
    expect(gain(3)).toBeCloseTo(0, 9);
  });

  it('along the wall adds the wall’s share', () => {
    const wall = { material: 'steel', thickness_m: 0.003, conductivity_W_mK: 50, max_C: null };
    const at = (w: typeof wall) => {
      const rig = new StoreRig({ ...sealed, wall: w }).set([
        ...new Array(5).fill(40),
        ...new Array(5).fill(50),
      ]);
      rig.rates();
      return rig.out[rig.store.first + 4] * rig.store.mass_kg[4] * REFERENCE_HEAT_CAPACITY;
    };
    // k_wall times perimeter times thickness, over the layers' distance.
    const along = (50 * 3.6 * 0.003 * 10) / 0.08;
    expect((at(wall) - at(thin)) / along).toBeCloseTo(1, 6);
  });

  it('through the walls is the conductance of each face times its lead', () => {
    const rig = new StoreRig({
      wall: thin,
      bridges: 1.5,
      surroundings: roomAt(12),
      ground_C: 6,
      insulation: { sides: [sheet(4)], bottom: [sheet(2)], lid: [sheet(5)] },
    }).set(ramp(30, 75));
    rig.rates();
    const films = 1 / 300 + 1 / 8;
    const mean = (30 + 75) / 2;
    const side = ((3.6 * 0.8) / (films + 4)) * (mean - 12);
    const bottom = (0.8 / (films + 2)) * (30 - 6);
    const lid = (0.8 / (films + 5)) * (75 - 12);
    expect(rig.path('store_conducted') / (1.5 * (side + bottom + lid))).toBeCloseTo(1, 6);
    expect(rig.path('store_surface_air')).toBe(0);
    expect(rig.path('store_lid_vapour')).toBe(0);
  });
});

describe('an open surface', () => {
  it('loses by vapour, warmth and radiation, and less of each under a lid ajar', () => {
    const paths = ['store_surface_air', 'store_lid_vapour'] as const;
    const at = (vapour_share: number) => {
      const rig = new StoreRig({ vapour_share }).set(new Array(10).fill(60)).rates();
      return paths.map((key) => rig.path(key));
    };
    const open = at(1);
    at(0.03).forEach((w, i) => {
      expect(w / open[i]).toBeCloseTo(0.03, 9);
    });
    expect(at(0)).toEqual([0, 0]);
  });

  it('loses at 60 C what pools of that warmth were measured to lose', () => {
    const rig = new StoreRig({ vapour_share: 1, surroundings: roomAt(20), make_up: 'by hand' });
    rig.set(new Array(10).fill(60)).rates();
    // 2.60 kg/(m2 h) and 1,705 W/m2 latent at 60 C, air 20 C and half its moisture (Shah, shared/physics.md 6), 0.8 m2.
    expect((rig.out[placeOf.evaporated_kg] * 3600) / (0.8 * 2.6)).toBeCloseTo(1, 2);
    expect(rig.path('store_lid_vapour') / (0.8 * 1705)).toBeCloseTo(1, 2);
    // Convection and radiation, 11 to 13 W/(m2 K) over 40 K (the same section).
    const film = rig.path('store_surface_air') / (0.8 * 40);
    expect(film).toBeGreaterThan(11);
    expect(film).toBeLessThan(13);
  });

  it.each([1, 0.02])(
    'gives off vapour by its multiplier past %f of its lid, and warmth as before',
    (share) => {
      const [plain, more] = [1, 1.4].map((evaporation) => {
        const rig = new StoreRig({ vapour_share: share, evaporation, make_up: 'by hand' });
        rig.set(new Array(10).fill(60)).rates();
        return [rig.out[placeOf.evaporated_kg], rig.path('store_lid_vapour'), rig.path('store_surface_air')];
      });
      expect(more[0] / plain[0]).toBeCloseTo(1.4, 9);
      expect(more[1] / plain[1]).toBeCloseTo(1.4, 9);
      expect(more[2]).toBe(plain[2]);
    },
  );

  it('kept by a float takes in cold water for the vapour it loses', () => {
    const rig = new StoreRig({ vapour_share: 1, make_up_C: 10 }).set(new Array(10).fill(60)).rates();
    const vapour = rig.out[placeOf.evaporated_kg];
    expect(rig.path('make_up_water') / (vapour * waterEnthalpy(10))).toBeCloseTo(1, 4);
  });
});

describe('at the boiling point', () => {
  const boiling = waterBoilingPoint(101_325);

  it('all heat put in leaves as steam, and the steam accounts for it', () => {
    const rig = new StoreRig({ ...sealed, make_up: 'by hand' }).set(new Array(10).fill(boiling - 1e-9));
    rig.rates([5000, 0, 0, 3000]);
    expect(Math.abs(rig.gain_W)).toBeLessThan(1e-3);
    expect(rig.path('store_boiled')).toBeCloseTo(8000, 3);
    // Latent heat at 100 C: 2,256.5 kJ/kg (steam tables).
    expect(rig.out[placeOf.boiled_kg] / (8000 / 2_256_500)).toBeCloseTo(1, 3);
  });

  it('a kelvin below it nothing steams', () => {
    const rig = new StoreRig(sealed).set(new Array(10).fill(boiling - 1.001)).rates([5000]);
    expect(rig.path('store_boiled')).toBe(0);
    expect(rig.gain_W).toBeCloseTo(5000, 3);
  });

  it('heat below cool layers warms them and makes no steam', () => {
    const rig = new StoreRig(sealed).set(ramp(50, boiling - 0.5)).rates([5000]);
    expect(rig.path('store_boiled')).toBe(0);
  });

  it('is lower the higher the store stands', () => {
    // Water boils at 94.9 to 95.0 C at 1,500 m (standard atmosphere and IAPWS saturation, checks.json water.boil).
    expect(new StoreRig({}, 10, 1500).store.boiling_C).toBeCloseTo(94.95, 1);
  });
});

describe('sheets with a service limit', () => {
  it('stand at the share of the drop that lies before their warm side', () => {
    const foam = { material: 'foam', thickness_m: 0.1, resistance_m2K_W: 4, max_C: 80 };
    const { store } = new StoreRig({
      liner: { material: 'EPDM', max_C: 85 },
      wall: { material: 'plywood', thickness_m: 0.012, conductivity_W_mK: 0.12, max_C: 70 },
      insulation: { sides: [sheet(1), foam], bottom: [], lid: [foam] },
    });
    const whole = 1 / 300 + 0.1 + 1 + 4 + 1 / 8;
    const shares = store.walls.limits.map(({ kind, drop_share }) => [kind, drop_share] as const);
    expect(shares.map(([kind]) => kind)).toEqual(['liner', 'wall', 'foam', 'foam']);
    expect(shares[0][1]).toBe(0);
    expect(shares[1][1]).toBeCloseTo(1 / 300 / whole, 9);
    expect(shares[2][1]).toBeCloseTo((1 / 300 + 0.1 + 1) / whole, 9);
    expect(shares[3][1]).toBeCloseTo(1 / 300 / (1 / 300 + 4 + 1 / 8), 9);
  });
});
