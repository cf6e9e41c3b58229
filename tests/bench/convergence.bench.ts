/**
 * What the numbers are worth: how far results move with the number of layers and with the tolerance. Prints the
 * tables that DEVELOPERS.md quotes. The short version that every run of the tests makes is
 * tests/sim/run/convergence.test.ts.
 */
import { describe, expect, it } from 'vitest';
import type { Result } from '../../sim/index.ts';
import { apart, layerErrors, quantile, rms, runExample } from './support/runs.ts';

const percent = (share: number) => `${(100 * share).toFixed(3)} %`;
const kelvin = (k: number) => `${k.toFixed(3)} K`;

/**
 * One line of a table. Of solar heat nothing is asserted: on some evenings of the demo it hangs on a hair whether the
 * collectors' pump stops or runs on through the night on the store's own heat, and with it 2 % of a month's solar heat.
 */
function row(name: string | number, run: Result, reference: Result): Record<string, string | number> {
  const errors = layerErrors(run, reference);
  return {
    run: name,
    household: percent(apart('household_heat_J', run, reference)),
    engine: run.figures.engine_heat_J === null ? '-' : percent(apart('engine_heat_J', run, reference)),
    solar: percent(apart('solar_heat_J', run, reference)),
    'rms layer': kelvin(rms(errors)),
    'p99 layer': kelvin(quantile(errors, 0.99)),
    'max layer': kelvin(errors[errors.length - 1]),
    events: run.events.length - reference.events.length,
    evaluations: run.run.evaluations,
  };
}

describe.each(['demo', 'tote-sun'])('four weeks of %s', (name) => {
  it('converge with the number of layers', () => {
    const tolerance = 1e-5;
    const reference = runExample(name, { days: 28, layers: 160, tolerance });
    const runs = [5, 10, 20, 40, 80].map((layers) => runExample(name, { days: 28, layers, tolerance }));
    console.table(runs.map((run) => row(run.series.layers, run, reference)));
    const off = runs.map((run) => Math.abs(apart('household_heat_J', run, reference)));
    expect(off[2]).toBeLessThan(0.005);
    expect(off[4]).toBeLessThan(0.001);
  });

  it('converge with the tolerance', () => {
    const reference = runExample(name, { days: 28, tolerance: 1e-8 });
    const runs = [1e-3, 1e-4, 1e-5, 1e-6].map((tolerance) => runExample(name, { days: 28, tolerance }));
    console.table(runs.map((run, i) => row(`1e-${3 + i}`, run, reference)));
    const off = runs.map((run) => Math.abs(apart('household_heat_J', run, reference)));
    expect(off[1]).toBeLessThan(0.001);
    expect(off[3]).toBeLessThan(0.0005);
  });
});
