/** The quick estimate for a live drag: milliseconds, warm, with reading the scenario; how far it is off the full run. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { forEstimate } from '../../sim/answers/estimate.ts';
import { edited, estimate, estimateError, readScenario, type Scenario, simulate } from '../../sim/index.ts';

const AIM_MS = 100;
const DRAGS = 15;

function plantOf(scenario: Scenario) {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error('refused');
  return read.plant;
}

describe.each(['demo', 'tote-sun', 'nobody-home', 'boat'])('%s', (name) => {
  const scenario = JSON.parse(
    readFileSync(new URL(`../../scenarios/${name}.json`, import.meta.url), 'utf8'),
  ) as Scenario;

  it('is estimated in a fraction of the full run’s time', () => {
    const timed = (work: () => void): number => {
      const times = Array.from({ length: DRAGS }, () => {
        const started = performance.now();
        work();
        return performance.now() - started;
      });
      return times.sort((a, b) => a - b)[Math.floor(DRAGS / 2)];
    };
    let drag = 0;
    // Each drag is another scenario: it is read anew.
    const dragged = () =>
      plantOf(edited(scenario, [{ path: 'store.bridges', value: Number((1.2 + 0.01 * drag++).toFixed(2)) }]));
    timed(() => estimate(dragged()));
    const quick_ms = timed(() => estimate(dragged()));
    const full_ms = timed(() => simulate(dragged()));
    const plant = plantOf(scenario);
    const { days, interval_s } = forEstimate(plant).run;
    const same = simulate({ ...plant, run: { ...plant.run, days, interval_s } });
    const { top_rms_K, household, solar } = estimateError(estimate(plant), same);
    const share = (value: number | null) => (value === null ? 'none' : `${(100 * value).toFixed(1)} %`);
    console.log(
      `${name}: ${quick_ms.toFixed(0)} ms warm for ${days} days (${quick_ms <= AIM_MS ? 'within' : 'over'} the ${AIM_MS} ms aimed at), the file’s own ${plant.run.days} days ${full_ms.toFixed(0)} ms; off: top ${top_rms_K.toFixed(2)} K rms, household heat ${share(household)}, solar ${share(solar)}`,
    );
    expect(quick_ms).toBeLessThan(full_ms);
  });
});
