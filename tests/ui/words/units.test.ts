import { describe, expect, it } from 'vitest';
import { bothPowers, quantityText, speakIn } from '../../../ui/words/index.ts';

describe('mixed units', () => {
  it('measure as a tape, a jug and a thermometer of the United States do', () => {
    expect(quantityText(0.508, 'length', 'mixed')).toBe('20 in');
    expect(quantityText(3.785411784e-3 * 5, 'volume', 'mixed')).toBe('5 gal');
    expect(speakIn('mixed').temperature(100)).toBe('212 °F');
  });

  it('count heat as batteries do', () => {
    expect(quantityText(3.6e6 * 12, 'energy', 'mixed')).toBe('12 kWh');
    expect(quantityText(4000, 'power', 'mixed')).toBe('4 kW');
  });

  it('turn a difference of temperatures without the shift of the scale', () => {
    expect(quantityText(10, 'temperature_difference', 'mixed')).toBe('18 °F');
    expect(quantityText(10, 'temperature_difference', 'SI')).toBe('10 K');
  });
});

describe('a heat flow', () => {
  it('stands in kilowatts and British thermal units, the reader’s own first', () => {
    // 1 kW = 3412.14 Btu/h
    expect(bothPowers(4000, 'SI')).toBe('4 kW (13.6 kBtu/h)');
    expect(bothPowers(4000, 'mixed')).toBe('4 kW (13.6 kBtu/h)');
    expect(bothPowers(4000, 'US')).toBe('13.6 kBtu/h (4 kW)');
  });
});
