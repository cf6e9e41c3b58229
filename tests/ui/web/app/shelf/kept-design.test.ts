import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../../../../sim/index.ts';
import { nothingDone } from '../../../../../ui/web/app/shelf/history.ts';
import { keepDesign, type Saved } from '../../../../../ui/web/app/shelf/kept-design.ts';
import { noFiles, type Stored, type Writing } from '../../../../../ui/web/app/shelf/shelf-db.ts';

const start: Stored = {
  record: {
    ...{ id: 'a', name: 'one', began: 'demo', scenario: {} as Scenario, version: 'v1', done: 0 },
    ...{ made_ms: 1, changed_ms: 1, removed_ms: null },
  },
  history: nothingDone,
  attached: noFiles,
};

/** A design whose writings end when and as the test says. */
function held(alone = true) {
  const writings: { writing: Writing; end(error?: Error): Promise<void> }[] = [];
  const told: (Saved | 'elsewhere')[] = [];
  let now_ms = 10;
  const kept = keepDesign(start, start, {
    db: {
      write: (writing) =>
        new Promise((done, failed) => {
          writings.push({
            writing,
            async end(error) {
              if (error) failed(error);
              else done();
              await new Promise((turn) => setTimeout(turn, 0));
            },
          });
        }),
    },
    now: () => now_ms++,
    told: (saved) => told.push(saved),
    alone,
  });
  const become = (name: string) =>
    kept.become({ name, scenario: { name } as Scenario, history: nothingDone, attached: noFiles });
  const names = () => writings.map(({ writing }) => writing.stored.record.name);
  return { kept, become, writings, told, names };
}

describe('a design in the page', () => {
  it('is handed to the database at once, whatever is still being written', () => {
    const { become, writings, names, kept } = held();
    become('two');
    become('three');
    expect(names()).toEqual(['two', 'three']);
    expect(writings[1].writing.builtOn).toBe(writings[0].writing.stored);
    expect(kept.isWritten()).toBe(false);
  });

  it('is told as saved when its newest state is', async () => {
    const { become, writings, told, kept } = held();
    become('two');
    become('three');
    await writings[0].end();
    expect(told).toEqual([]);
    await writings[1].end();
    expect(told).toEqual([{ at: 'saved', ms: 11 }]);
    expect(kept.isWritten()).toBe(true);
  });

  it('is written whole when one state before the newest was not', async () => {
    const { become, writings, told, names, kept } = held();
    become('two');
    become('three');
    await writings[0].end(new Error('no'));
    await writings[1].end();
    expect(told).toEqual([{ at: 'failed', why: 'refused' }]);
    expect(names()).toEqual(['two', 'three', 'three']);
    expect(writings[2].writing.builtOn).toBeNull();
    expect(kept.isWritten()).toBe(false);
    await writings[2].end();
    expect(told[1]).toEqual({ at: 'saved', ms: 11 });
    expect(kept.isWritten()).toBe(true);
  });

  it('waits for the next change after it could not be written, and settles', async () => {
    const { become, writings, names, kept } = held();
    become('two');
    const settled = kept.settled();
    await writings[0].end(new Error('no'));
    await settled;
    expect(names()).toEqual(['two']);
    become('three');
    expect(writings[1].writing.builtOn).toBeNull();
  });

  it('names its own versions where other tabs may write too', () => {
    const { become, writings } = held(false);
    become('two');
    become('three');
    const over = [...(writings[1].writing.over ?? [])];
    expect(over).toEqual(['v1', ...writings.map(({ writing }) => writing.stored.record.version)]);
  });
});
