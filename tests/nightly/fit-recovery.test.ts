import { expect, it } from 'vitest';
import { recoveries } from '../sim/answers/fit/recovery.ts';

it('200 logs with noise, offsets and gaps give back known values within the band, nine times in ten', async () => {
  const seeds = Array.from({ length: 200 }, (_, i) => i + 101);
  const { held, told, refused } = await recoveries(seeds);
  process.stdout.write(`${held} of ${told} values held, ${refused} logs refused\n`);
  expect(refused).toBeLessThanOrEqual(2);
  expect(told).toBeGreaterThanOrEqual(400);
  expect(held / told).toBeGreaterThanOrEqual(0.9);
});
