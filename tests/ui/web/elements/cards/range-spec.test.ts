import { describe, expect, it } from 'vitest';
import { edited, entering, readEntry, readScenario } from '../../../../../sim/index.ts';
import { nodesIn } from '../../../../../ui/web/elements/cards/card-plan.ts';
import { hasRange, readRange, usualRange } from '../../../../../ui/web/elements/cards/range-spec.ts';
import { demo, entryOf, outline, readOf } from './demo.ts';

const entry = (part: string, path: string) => entryOf(demo, part, path).entry;
const whole = { scenario: demo, filled: readOf(demo).filled };
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
    expect(usualRange(flow, 'US', whole)).toEqual({ from: '1.25 gpm', to: '2.5 gpm', n: '5' });
  });

  it('is half as much to half as much again where no band is known', () => {
    const water = entry('taps', 'taps.draws[0].volume');
    expect(usualRange(water, 'US', whole)).toEqual({ from: '1.5 gal', to: '4.5 gal', n: '5' });
  });

  it('ends where the rest of the design ends it', () => {
    // The demo's box is 36 in high inside, and a third roll of its household coil would stand out of the water.
    expect(usualRange(depth, 'US', whole).to).toBe('36 in');
    expect(usualRange(depth, 'SI', whole).to).toMatch(/^91\.4 cm$|^914 mm$/);
    const rolls = entry('coils[0]', 'coils[0].rolls');
    expect(usualRange(rolls, 'US', whole)).toEqual({ from: '1', to: '2', n: '2' });
  });

  it('can be run as it stands, for every entry that has one', () => {
    const all = ['store', 'coils[0]', 'coils[1]', 'engine', 'collector', 'supply', 'taps', 'site', 'run'];
    const stuck: string[] = [];
    for (const [i, part] of all.entries()) {
      for (const node of nodesIn(outline(demo, part))) {
        if (node.kind !== 'entry' || !hasRange(node.field) || node.value === undefined) continue;
        const range = usualRange(node, i % 2 === 0 ? 'US' : 'SI', whole);
        const read = readRange(node, range);
        expect(read, `${node.path} ${JSON.stringify(read)}`).toMatchObject({ ok: true });
        const runs = [range.from, range.to].every((end) => {
          const typed = readEntry(node.field, end);
          const value = typed.ok ? typed.value.value : end;
          return readScenario(edited(demo, entering(demo, node.path, value, whole.filled).edits)).ok;
        });
        if (!runs) stuck.push(node.path);
      }
    }
    // What no other value of this one input alone goes with: the next table row, a taller coil, an exhaust to catch.
    const corrections = ['angle', 'lengthwise', 'crosswise'].map((key) => `collector.incidence.${key}[0]`);
    expect(stuck).toEqual(['coils[1].rolls', 'engine.exhaust_share', ...corrections]);
  });

  it('starts from empty boxes where nothing is known', () => {
    const ground = entry('store', 'store.ground');
    expect(usualRange(ground, 'US', whole)).toEqual({ from: '', to: '', n: '5' });
    expect(readEntry(ground.field, '').ok).toBe(false);
  });
});
