import { describe, expect, it } from 'vitest';
import type { Fitting, FittingKind } from '../../../../sim/answers/sheet/index.ts';
import { sheetOf, sheetOfFile, withCoils } from './of-scenario.ts';

const counts = (fittings: readonly Fitting[]) =>
  Object.fromEntries(
    [...new Set(fittings.map(({ kind }) => kind))].map((kind) => [
      kind,
      fittings.reduce((sum, each) => sum + (each.kind === kind ? each.count : 0), 0),
    ]),
  ) as Partial<Record<FittingKind, number>>;

describe('fittings', () => {
  it('of the demo, counted by hand: three coils, two rolls in series, two filled loops', () => {
    const { fittings } = sheetOfFile('demo');
    expect(counts(fittings)).toEqual({
      union: 6,
      coupling: 1,
      relief: 3,
      // The household's accumulator and the collector's vessel.
      expansion: 2,
      mixing_valve: 1,
      // Household: pump and both legs of the mixer; engine; collector.
      check_valve: 5,
      air_vent: 2,
      // Three loops and the store.
      drain: 4,
    });
    expect(
      fittings.filter(({ kind }) => kind === 'union').map(({ tube, count, spare }) => [tube, count, spare]),
    ).toEqual([
      ['3/4 in plumbing tube, type L', 4, 1],
      ['1/2 in refrigeration tube', 2, 1],
    ]);
    expect(fittings.filter(({ missing }) => missing)).toEqual([]);
  });

  it('of rolls in parallel: at either end a tee fewer than rolls, and an elbow', () => {
    const { fittings } = sheetOfFile('tote-sun');
    // Three rolls and two: 2 x 2 + 2 x 1 tees, 2 + 2 elbows.
    expect(counts(fittings)).toMatchObject({ tee: 6, elbow: 4, union: 4, relief: 2, drain: 3 });
    // It drains back: nothing may stand in its way.
    expect(counts(fittings).air_vent).toBeUndefined();
    expect(counts(fittings).check_valve).toBe(3);
  });

  it('says which of them the file does without', () => {
    const open = withCoils([{}], { taps: { coil: 'coil 1', mixing_valve: { fitted: false } } });
    const missing = sheetOf(open).fittings.filter((each) => each.missing);
    expect(missing.map(({ kind, count }) => [kind, count])).toEqual([['mixing_valve', 1]]);
    expect(sheetOfFile('boat').fittings.find(({ kind }) => kind === 'check_valve')?.missing).toBe(true);
  });

  it('of a coil that is piped to nobody are its joints and a relief, for it can be capped; the store keeps its drain', () => {
    const { fittings } = sheetOf(withCoils([{ rolls: 3, join: 'series', roll_length: '10 ft' }]));
    expect(counts(fittings)).toEqual({ coupling: 2, relief: 1, drain: 1 });
  });
});
