import { describe, expect, it } from 'vitest';
import { readEntry } from '../../../../../sim/index.ts';
import { nodesIn } from '../../../../../ui/web/elements/cards/card-plan.ts';
import { hasRange, readRange, usualRange } from '../../../../../ui/web/elements/cards/range-spec.ts';
import { demo, entryOf, outline } from './demo.ts';

const entry = (part: string, path: string) => entryOf(demo, part, path).entry;
const depth = entry('store', 'store.water_depth');

describe('readRange', () => {
  it('takes two values in any units and a number of steps', () => {
    expect(readRange(depth, { from: '2 ft', to: ' 90 cm', n: '7' })).toEqual({
      ok: true,
      spec: { path: 'store.water_depth', from: '2 ft', to: '90 cm', n: 7 },
    });
  });

  it.each([
    [{ from: '20', to: '30 in', n: '5' }, 'from', 'add the unit'],
    [{ from: '20 in', to: '30 psi', n: '5' }, 'to', 'measures a pressure'],
    [{ from: '20 in', to: '20 in', n: '5' }, 'to', 'move one'],
    [{ from: '1 ft', to: '12 in', n: '5' }, 'to', 'move one'],
    [{ from: '20 in', to: '30 in', n: '1' }, 'n', 'write it as'],
    [{ from: '20 in', to: '30 in', n: '201' }, 'n', 'write it as'],
    [{ from: '20 in', to: '30 in', n: 'many' }, 'n', 'write it as'],
    [{ from: '20 in', to: '99 ft', n: '5' }, 'to', 'check the number'],
  ] as const)('refuses %j at its %s', (typed, box, fix) => {
    const read = readRange(depth, typed);
    expect(read).toMatchObject({ ok: false, box });
    if (!read.ok) expect(read.trouble.fix).toContain(fix);
  });
});

describe('usualRange', () => {
  it('is the band that one would believe', () => {
    const flow = entry('taps', 'taps.showers[0].flow');
    expect(usualRange(flow, 'US')).toEqual({ from: '1.25 gpm', to: '2.5 gpm', n: '5' });
  });

  it('is half as much to half as much again where no band is known', () => {
    expect(usualRange(depth, 'US')).toMatchObject({ from: '16 in', to: '4 ft' });
    expect(usualRange(entry('coils[0]', 'coils[0].rolls'), 'US')).toMatchObject({ from: '1', to: '3' });
  });

  it('can be run as it stands, for every entry that has one', () => {
    for (const part of ['store', 'coils[0]', 'engine', 'collector', 'supply', 'taps', 'site', 'run']) {
      for (const node of nodesIn(outline(demo, part))) {
        if (node.kind !== 'entry' || !hasRange(node.field) || node.value === undefined) continue;
        for (const units of ['US', 'SI'] as const) {
          const read = readRange(node, usualRange(node, units));
          expect(read, `${node.path} ${JSON.stringify(read)}`).toMatchObject({ ok: true });
        }
      }
    }
  });

  it('starts from empty boxes where nothing is known', () => {
    const ground = entry('store', 'store.ground');
    expect(usualRange(ground, 'US')).toEqual({ from: '', to: '', n: '5' });
    expect(readEntry(ground.field, '').ok).toBe(false);
  });
});
