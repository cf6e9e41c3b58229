import { describe, expect, it } from 'vitest';
import { sweepProgress } from '../../../ui/terminal/sweep-progress.ts';
import { fakeTerminal } from './fake-terminal.ts';

describe('sweepProgress', () => {
  it('says how many are done and how long the rest will take, over itself', () => {
    // The clock ticks a second at each look: at the start, and once a call.
    const terminal = fakeTerminal({ errIsTerminal: true, tick_s: 1 });
    const progress = sweepProgress(terminal);
    for (let done = 1; done <= 14; done++) progress.onProgress(done, 25);
    const lines = terminal.written.err.split('\r').map((line) => line.trimEnd());
    expect(lines.at(-1)).toBe('14 of 25, about 11 s left');
    progress.end();
    expect(terminal.written.err).toMatch(/\r +\r$/);
  });

  it('keeps still while a sweep is short', () => {
    const terminal = fakeTerminal({ errIsTerminal: true, tick_s: 0.01 });
    const progress = sweepProgress(terminal);
    for (let done = 1; done <= 20; done++) progress.onProgress(done, 20);
    progress.end();
    expect(terminal.written.err).toBe('');
  });

  it('is silent where standard error is no terminal, unless asked: then a line at each tenth', () => {
    const quiet = fakeTerminal({ tick_s: 1 });
    sweepProgress(quiet).onProgress(1, 2);
    expect(quiet.written.err).toBe('');
    const asked = fakeTerminal({ tick_s: 1 });
    const { onProgress } = sweepProgress(asked, true);
    for (let done = 1; done <= 40; done++) onProgress(done, 40);
    const lines = asked.written.err.trimEnd().split('\n');
    expect(lines).toHaveLength(11);
    expect(lines.at(-1)).toBe('40 of 40, about 0 s left');
  });
});
