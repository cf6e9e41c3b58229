import { describe, expect, it } from 'vitest';
import { fitAnswer, fittedScenario } from '../../../../sim/answers/fit/fit.ts';
import { doHere, type Edit, edited } from '../../../../sim/index.ts';
import { logged, type MadeLog, madeLog } from './made-log.ts';

const night: MadeLog = {
  truth: [],
  seed: 1,
  from_h: 20,
  to_h: 34,
  every_min: 15,
  noise_K: 0.1,
  offsets_K: [0.2, -0.2],
  gaps: 0.1,
};
const still: Edit[] = [
  { path: 'taps', value: undefined },
  { path: 'engine.runs', value: { kind: 'timetable', spans: [] } },
];
const loss = (value: number): Edit => ({ path: 'store.bridges', value });

function fitTo(log: string, coolDown = false) {
  const scenario = logged();
  return fitAnswer({ scenario, context: {}, doJobs: doHere(scenario, {}), log, coolDown });
}

describe('a fit to a log', () => {
  it('finds the loss of an overnight cool-down, and says that it tells nothing else', async () => {
    const log = madeLog(logged(), { ...night, truth: [...still, loss(2.2)], fahrenheit: true });
    const answer = await fitTo(log, true);
    const found = answer.inputs.find(({ path }) => path === 'store.bridges');
    expect(found?.told).toBe(true);
    expect(found?.low).toBeLessThan(2.2);
    expect(found?.high).toBeGreaterThan(2.2);
    expect(found?.left).toBeLessThan(0.9);
    expect(answer.inputs.filter(({ told }) => told)).toHaveLength(1);
    expect(answer.rms_K.after).toBeLessThan(answer.rms_K.before);
    expect(answer.rms_K.after).toBeCloseTo(0.1, 1);
    const edited = fittedScenario(logged(), answer) as unknown as { store: { bridges: number } };
    expect(edited.store.bridges).toBeCloseTo(found?.value ?? 0, 3);
  }, 60_000);

  const past = (value: string): Edit => ({ path: 'store.vapour_escape', value });
  const nightWith = (edits: Edit[]) =>
    madeLog(logged(), { ...night, truth: [...still, loss(1.6), ...edits] });
  async function lossOf(log: string, more: Edit[] = []) {
    const scenario = edited(logged(), more);
    const doJobs = doHere(scenario, {});
    const answer = await fitAnswer({ scenario, context: {}, doJobs, log, coolDown: true });
    return { ...answer, walls: answer.inputs.find(({ path }) => path === 'store.bridges') };
  }

  it.each(['0.8 %', '2 %', '5 %'])(
    'holds the loss through the walls though %s of the vapour gets past the lid',
    async (share) => {
      const log = nightWith([past(share)]);
      const { walls, beside } = await lossOf(log);
      expect(walls?.low).toBeLessThan(1.6);
      expect(walls?.high).toBeGreaterThan(1.6);
      expect(beside.map(({ path }) => path)).toEqual(['store.vapour_escape']);
      // Measured, it takes nothing from what a night tells.
      const known = await lossOf(log, [past(share)]);
      expect(known.beside).toEqual([]);
      expect(known.walls?.left).toBeLessThan(0.7 * (walls?.left ?? 0));
      expect(Math.abs((known.walls?.value ?? 0) - 1.6)).toBeLessThan(0.15);
    },
    60_000,
  );

  it('says that a lid ajar hides the walls, and how to part the two', async () => {
    const ajar: Edit = { path: 'store.lid', value: 'ajar' };
    await expect(lossOf(nightWith([ajar]), [ajar])).rejects.toThrow(
      /tape the lid shut all round, leave the vent open/,
    );
  }, 60_000);

  it('finds loss and jacket share from two days with draws and the engine', async () => {
    const truth = [loss(1.2), { path: 'engine.jacket_share', value: '30 %' }];
    const log = madeLog(logged(), { ...night, truth, from_h: 12, to_h: 48, every_min: 20 });
    const answer = await fitTo(log);
    const jacket = answer.inputs.find(({ path }) => path === 'engine.jacket_share');
    expect(jacket?.told).toBe(true);
    expect(jacket?.low).toBeLessThan(0.3);
    expect(jacket?.high).toBeGreaterThan(0.3);
  }, 60_000);

  it('refuses a log in which nothing shows', async () => {
    const rows = ['20:00', '20:10', '20:20'].map((clock) => `2027-01-10 ${clock},55,62`);
    // The probes lie 7 K apart all the time; one of them falls by 1 K.
    rows.push('2027-01-10 20:30,55,61');
    const log = ['time,at 10 cm (C),at 70 cm (C)', ...rows].join('\n');
    await expect(fitTo(log, true)).rejects.toThrow(
      /^the log - expected one that narrows at least one input - got 8 readings over 0\.5 h in which no probe moves by more than 1\.8 °F \(1 K\) - /,
    );
  }, 60_000);

  it('flags a probe that wanders', async () => {
    const log = madeLog(logged(), { ...night, from_h: 12, to_h: 48, every_min: 20 });
    const wandering = log.split('\n').map((line, row, all) => {
      const [time, low, high] = line.split(',');
      return row === 0 ? line : [time, low, (Number(high) + (3 * row) / all.length).toFixed(2)].join(',');
    });
    const { probes } = await fitTo(wandering.join('\n'));
    // 3 K over 36 h is 2 K a day; the run goes some of the way along with it.
    const [still_K, wandering_K] = probes.map(({ drift_K_day }) => drift_K_day ?? 0);
    expect(wandering_K).toBeGreaterThan(0.5);
    expect(wandering_K - still_K).toBeGreaterThan(1);
    expect(wandering_K - still_K).toBeLessThan(2.5);
  }, 60_000);
});
