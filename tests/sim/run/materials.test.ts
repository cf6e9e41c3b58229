import { describe, expect, it } from 'vitest';
import type { CoilDescription, StoreDescription } from '../../../sim/parts/description.ts';
import { simulate } from '../../../sim/run/simulation.ts';
import { coilOf, engineOf, plantOf, storeOf, tubeOf } from '../support/plant.ts';

function keysOf(coil: Partial<CoilDescription>, store: Partial<StoreDescription>, full_C: number): string[] {
  const plant = plantOf({
    store: storeOf(store),
    coils: [coilOf('charging', coil)],
    engine: engineOf('charging', { thermostat_full_C: full_C }),
    run: { days: 1 },
  });
  return simulate(plant).cautions.map(({ key }) => key);
}
const steel = { ...storeOf().wall, material: 'steel' };
const copper = { tube: tubeOf('plumbing L', '3/4 in') };
const plastic = { tube: { ...copper.tube, material: 'PEX' } };

describe('cautions of materials', () => {
  it('name copper in bare steel, and nothing behind a liner or of another metal', () => {
    expect(keysOf(copper, { wall: steel, liner: null }, 90)).toContain('mixed_metals');
    const liner = { material: 'EPDM', max_C: 80 };
    expect(keysOf(copper, { wall: steel, liner }, 90)).not.toContain('mixed_metals');
    expect(keysOf(plastic, { wall: steel, liner: null }, 90)).not.toContain('mixed_metals');
  });

  it('name plastic in coolant past 180 °F, its rating at 100 psi', () => {
    // 82.2 °C.
    expect(keysOf(plastic, {}, 83)).toContain('plastic_tube');
    expect(keysOf(plastic, {}, 81)).not.toContain('plastic_tube');
    expect(keysOf(copper, {}, 83)).not.toContain('plastic_tube');
  });

  it('stand with every engine: it burns', () => {
    expect(keysOf(copper, {}, 90)).toContain('hot_engine');
  });
});
