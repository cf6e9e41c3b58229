import { describe, expect, it } from 'vitest';
import { overview } from '../../../../ui/web/charts/overview.ts';

const frame = { width: 120, height: 44, left: 10, right: 10, top: 4, bottom: 4 };

describe('overview', () => {
  it('shows how far a line ranged over the whole run, and where water ran cold', () => {
    const data = { time_s: [0, 50, 100], values: [10, 20, 10], cold: [{ from_s: 50, to_s: 60 }] };
    expect(overview(data, frame, { from_s: 0, to_s: 100 })).toBe(
      '<path class="reach" d="M10,36.5L60,6.5L110,36.5L110,37.5L60,7.5L10,37.5Z"/>' +
        '<g class="cold-marks"><rect x="60" y="35" width="10" height="5"/></g>',
    );
  });

  it('loses no dip of a year', () => {
    const time_s = Float64Array.from({ length: 525_601 }, (_, i) => i * 60);
    const values = new Float32Array(525_601).fill(60);
    values[300_001] = 0;
    const drawn = overview({ time_s, values, cold: [] }, frame, { from_s: 0, to_s: 365 * 86_400 });
    // 0 to 60 with a degree to spare at both ends: nought is 36 px x 1/62 above the foot.
    expect(drawn).toContain(`,${Math.round((40 - 36 / 62 + 0.5) * 10) / 10}L`);
  });

  it('is empty for a run without samples', () => {
    expect(overview({ time_s: [], values: [], cold: [] }, frame, { from_s: 0, to_s: 1 })).not.toContain(
      'NaN',
    );
  });
});
