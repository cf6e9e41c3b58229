import { expect, it } from 'vitest';
import { recoveries } from './recovery.ts';

it('20 logs with noise, offsets and gaps give back known values within the band, nine times in ten', async () => {
  const seeds = Array.from({ length: 20 }, (_, i) => i + 1);
  const { held, told, refused } = await recoveries(seeds);
  expect(refused).toBe(0);
  expect(told).toBeGreaterThanOrEqual(30);
  expect(held / told).toBeGreaterThanOrEqual(0.9);
}, 300_000);
