import { describe, expect, it } from 'vitest';
import { progressOn } from '../../../ui/terminal/progress.ts';
import { fakeTerminal } from './fake-terminal.ts';

function drawn(settings: { errIsTerminal: boolean; tick_s: number }, forced: boolean): string {
  const terminal = fakeTerminal(settings);
  const progress = progressOn(terminal, 'Running', forced);
  for (const fraction of [0.1, 0.25, 0.26, 0.5, 1]) progress.onProgress(fraction);
  progress.end();
  return terminal.written.err;
}

describe('progressOn', () => {
  it('stays silent where standard error is no terminal', () => {
    expect(drawn({ errIsTerminal: false, tick_s: 10 }, false)).toBe('');
  });
  it('stays silent for the first second', () => {
    expect(drawn({ errIsTerminal: true, tick_s: 0.15 }, false)).toBe('');
  });
  it('draws over itself after that, and wipes its line', () => {
    expect(drawn({ errIsTerminal: true, tick_s: 0.5 }, false).split('\r')).toEqual([
      '',
      'Running:  25 % ',
      'Running:  26 % ',
      'Running:  50 % ',
      'Running: 100 % ',
      '               ',
      '',
    ]);
  });
  it('writes a line at each tenth when asked where there is no terminal', () => {
    expect(drawn({ errIsTerminal: false, tick_s: 0 }, true)).toBe(
      'Running:  10 %\nRunning:  25 %\nRunning:  50 %\nRunning: 100 %\n',
    );
  });
});
