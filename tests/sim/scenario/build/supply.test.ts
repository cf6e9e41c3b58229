import { describe, expect, it } from 'vitest';
import { sound } from './support.ts';

describe('the supply', () => {
  it('left out is a small pump from a winter cistern', () => {
    const { supply } = sound({}).plant;
    expect(supply.cold).toEqual({ kind: 'fixed', temperature_C: expect.closeTo(4.444, 3) });
    // 3 gpm and 45 psi.
    expect(supply.pump).toMatchObject({
      open_flow_m3_s: expect.closeTo(1.8927e-4, 8),
      cut_out_Pa: expect.closeTo(310_264, 0),
      power_W: 90,
    });
  });

  it('of a cistern exchanges heat through its insulation', () => {
    const cold = { kind: 'cistern', volume: '1 m3', insulation: '0.88 m2 K/W', start: '8 C' } as const;
    const { supply } = sound({ supply: { cold } }).plant;
    // A cubic metre has 6 m2 of skin; 0.88 and 0.12 of surface film make 1 m2 K/W.
    expect(supply.cold).toMatchObject({
      kind: 'cistern',
      volume_m3: 1,
      conductance_W_K: expect.closeTo(6, 9),
      start_C: 8,
      refill_C: 8,
    });
  });

  it('by month has twelve temperatures', () => {
    const temperature = Array.from({ length: 12 }, (_, i) => `${i + 3} C`);
    const { supply } = sound({ supply: { cold: { kind: 'by month', temperature } } }).plant;
    expect(supply.cold).toEqual({
      kind: 'by month',
      temperature_C: [3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14],
    });
  });
});
