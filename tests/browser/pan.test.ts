/** A year sampled every minute pans at thirty frames a second. */
import { expect, it } from 'vitest';
import type { TankfulDays } from '../../ui/web/elements/tankful-days.ts';
import { visit } from './support/visit.ts';

const frames = 24;

/** Puts a year of minutes in place of the demo's run: every channel repeats, the store swings and flickers. */
function showYear(): Promise<unknown> {
  const days = document.querySelector<TankfulDays>('tankful-days');
  if (!days) throw new Error('no days');
  const { result } = days.shown;
  const { series } = result;
  const samples = 365 * 1440 + 1;
  const layer_C = new Float32Array(samples * series.layers);
  for (let i = 0; i < layer_C.length; i++) {
    const minute = Math.floor(i / series.layers);
    layer_C[i] = 40 + (i % series.layers) + 12 * Math.sin(minute / 229) + 2 * Math.sin(minute * 0.37);
  }
  const channels = Object.fromEntries(
    Object.entries(series.channels).map(([key, values]) => [
      key,
      Float32Array.from({ length: samples }, (_, i) => values[i % values.length]),
    ]),
  );
  const time_s = Float64Array.from({ length: samples }, (_, i) => i * 60);
  const events = Array.from({ length: 365 * 8 }, (_, i) => ({
    time_s: i * 10_800,
    part: 'made up',
    name: i % 2 === 0 ? 'engine.start' : 'engine.stop',
  }));
  const year = { ...series, interval_s: 60, time_s, layer_C, channels };
  days.shown = { ...days.shown, result: { ...result, days: 365, events, series: year } };
  return days.updateComplete;
}

it.each([180, 30, 7])('a window of %d days', async (length_days) => {
  const { page } = await visit();
  await page.waitForSelector('tankful-days .stage svg .line.top');
  await page.evaluate(showYear);
  const pan = () =>
    page.evaluate(
      async ([length, count]) => {
        const days = document.querySelector<TankfulDays>('tankful-days');
        if (!days) throw new Error('no days');
        for (let frame = 0; frame < count; frame++) {
          const from_s = 86_400 * (20 + frame * 0.31);
          days.window_s = [from_s, from_s + length * 86_400];
          await new Promise(requestAnimationFrame);
        }
      },
      [length_days, frames],
    );
  await pan();
  // Time of the page's own thread, so that a busy machine counts for nothing.
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
  const busy_s = async () => {
    const { metrics } = await devtools.send('Performance.getMetrics');
    return metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
  };
  const before_s = await busy_s();
  await pan();
  const frame_ms = (1000 * ((await busy_s()) - before_s)) / frames;
  expect(frame_ms).toBeGreaterThan(1);
  expect(frame_ms).toBeLessThan(33);
});
