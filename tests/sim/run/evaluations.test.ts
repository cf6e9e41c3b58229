/** Ceilings on work: what a run costs is counted, not timed, so that a busy machine changes nothing. */
import { describe, expect, it } from 'vitest';
import { runExample } from '../../bench/support/runs.ts';

describe('the demo', () => {
  it('takes at most 30,000 evaluations for a week', () => {
    expect(runExample('demo', { days: 7 }).run.evaluations).toBeLessThan(30_000);
  });

  it('takes at most 1.2 million evaluations for a year', () => {
    const { run, ledger } = runExample('demo', { days: 365 });
    expect(run.evaluations).toBeLessThan(1_200_000);
    expect(ledger.residual_percent).toBeLessThan(1e-4);
  }, 60_000);
});
