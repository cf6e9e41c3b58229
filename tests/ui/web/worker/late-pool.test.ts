import { describe, expect, it, vi } from 'vitest';
import demo from '../../../../scenarios/demo.json';
import type { Scenario } from '../../../../sim/index.ts';
import { latePool } from '../../../../ui/web/worker/late-pool.ts';
import type { Pool } from '../../../../ui/web/worker/pool.ts';

const scenario = demo as unknown as Scenario;
const heard = () => ({ progress: vi.fn(), answered: vi.fn(), failed: vi.fn() });

function handPool() {
  const stop = vi.fn();
  const begun = vi.fn(() => ({ stop }));
  return {
    attach: vi.fn(),
    answer: begun,
    range: begun,
    measure: begun,
    detail: begun,
    endAnswers: vi.fn(),
    stop,
    begun,
  };
}

describe('a pool that is loaded late', () => {
  it('is loaded once, by the first thing asked of it', async () => {
    const pool = handPool();
    const load = vi.fn(async () => pool);
    const late = latePool(load);
    late.attach({ 'year.csv': 'text' });
    expect(load).not.toHaveBeenCalled();
    late.answer('coil', scenario, heard());
    late.range('store.water_depth=20 in:40 in:5', scenario, heard());
    await vi.waitFor(() => expect(pool.begun).toHaveBeenCalledTimes(2));
    expect(load).toHaveBeenCalledTimes(1);
    // Files come before what needs them.
    expect(pool.attach.mock.invocationCallOrder[0]).toBeLessThan(pool.begun.mock.invocationCallOrder[0]);
    late.attach({});
    await vi.waitFor(() => expect(pool.attach).toHaveBeenLastCalledWith({}));
  });

  it('begins and stops what was stopped before it was there', async () => {
    const pool = handPool();
    const late = latePool(async () => pool);
    late.answer('coil', scenario, heard()).stop();
    await vi.waitFor(() => expect(pool.stop).toHaveBeenCalledTimes(1));
    expect(pool.begun).toHaveBeenCalledTimes(1);
  });

  it('says that it could not be loaded, and tries again when asked again', async () => {
    const pool = handPool();
    const load = vi.fn(async (): Promise<Pool> => pool);
    load.mockRejectedValueOnce(new Error('no network'));
    const late = latePool(load);
    const first = heard();
    late.answer('coil', scenario, first);
    await vi.waitFor(() => expect(first.failed).toHaveBeenCalledWith('Error: no network'));
    late.answer('coil', scenario, heard());
    await vi.waitFor(() => expect(pool.begun).toHaveBeenCalledTimes(1));
  });
});
