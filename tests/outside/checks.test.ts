/** Compares every value of checks.json, block by block, and proves that no comparison vanished. */
import { describe, expect, it } from 'vitest';
import { awaited, blocks } from './blocks/index.ts';
import { answerOf, type Check, checks, checksOf, excusesOf, leavesOf, offBy } from './checks.ts';
import { notCompared } from './not-compared.ts';

/** Leaves of a check that no excuse covers. */
function due(check: Check): string[] {
  const excuses = excusesOf(notCompared, check);
  if (excuses.some(({ leaves }) => leaves === '*')) return [];
  const excused = new Set(excuses.flatMap(({ leaves }) => leaves));
  return [...leavesOf(check.expected).keys()].filter((path) => !excused.has(path));
}

describe.each(blocks)('$name', (block) => {
  it.each(checksOf(block).filter((check) => due(check).length > 0))('$id', (check) => {
    const got = answerOf(block, check);
    const expected = leavesOf(check.expected);
    const wrong = due(check)
      .map((path) => ({ path, got: got.get(path), expected: expected.get(path) ?? null }))
      .filter(({ got, expected }) => !(offBy(check, got, expected) <= 1));
    expect(
      wrong,
      `${check.what} [${check.units}], tolerance ${check.tol} ${check.tol_kind}, ${check.source}`,
    ).toEqual([]);
  });

  it('compares no fewer values than before', () => {
    const compared = checksOf(block).reduce((sum, check) => sum + due(check).length, 0);
    expect(compared).toBeGreaterThanOrEqual(block.atLeast);
  });

  it('answers nothing that checks.json does not ask or an excuse covers', () => {
    const idle = checksOf(block).flatMap((check) => {
      const asked = new Set(due(check));
      if (asked.size === 0) return [`${check.id}: excused as a whole, yet a block claims it`];
      return [...answerOf(block, check).keys()]
        .filter((path) => !asked.has(path))
        .map((path) => `${check.id} ${path}`);
    });
    expect(idle).toEqual([]);
  });

  it.each(Object.keys(block.answers))('has checks that begin with %s', (key) => {
    expect(checks.filter(({ id }) => id.startsWith(key))).not.toEqual([]);
  });
});

describe('checks.json', () => {
  it('is compared or excused id by id, once each', () => {
    const wrong = checks.flatMap((check) => {
      const claims = blocks.filter((block) => checksOf(block).includes(check)).length;
      const left = due(check).length;
      const waits = awaited.some((beginning) => check.id.startsWith(beginning));
      const wanted = left > 0 && !waits ? 1 : 0;
      return claims === wanted ? [] : [`${check.id}: claimed by ${claims} blocks, expected ${wanted}`];
    });
    expect(wrong).toEqual([]);
  });

  it('has no id twice', () => {
    expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
  });
});

describe('not-compared', () => {
  it.each(notCompared)('still finds $ids $leaves', ({ ids, leaves, because }) => {
    const covered = checks.filter(({ id }) => id.startsWith(ids));
    expect(covered).not.toEqual([]);
    expect(because.length).toBeGreaterThan(10);
    if (leaves === '*') return;
    const present = new Set(covered.flatMap(({ expected }) => [...leavesOf(expected).keys()]));
    expect(leaves.filter((path) => !present.has(path))).toEqual([]);
  });
});
