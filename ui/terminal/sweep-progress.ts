/** A line on standard error for many runs: "14 of 25, about 6 s left", drawn over itself. */
import { quantityText, reportWords } from '../words/index.ts';
import type { Terminal } from './terminal.ts';

/** Sweeps shorter than this show nothing [s]. */
const patience_s = 1;
const redraw_s = 0.1;
const widest = 60;

export interface SweepProgress {
  onProgress: (done: number, of: number) => void;
  /** Wipes the line. */
  end: () => void;
}

/** `forced` says it from the start, and where standard error is no terminal in a line at each tenth. */
export function sweepProgress(terminal: Terminal, forced = false): SweepProgress {
  const started_s = terminal.now_s();
  let drawn_s = Number.NEGATIVE_INFINITY;
  let drawn = false;
  let tenth = -1;
  const words = (done: number, of: number, now_s: number) => {
    const left_s = ((now_s - started_s) / Math.max(1, done)) * Math.max(0, of - done);
    const left = quantityText(Math.ceil(left_s), 'time', 'SI', { digits: 2, plain: true });
    return reportWords.sweep(done, of, left);
  };
  const overItself = (done: number, of: number) => {
    const now_s = terminal.now_s();
    if ((!forced && now_s - started_s < patience_s) || now_s - drawn_s < redraw_s) return;
    drawn_s = now_s;
    drawn = true;
    terminal.err(`\r${words(done, of, now_s).padEnd(widest)}`);
  };
  const byLines = (done: number, of: number) => {
    const reached = Math.floor((10 * done) / of);
    if (!forced || reached <= tenth) return;
    tenth = reached;
    terminal.err(`${words(done, of, terminal.now_s())}\n`);
  };
  return {
    onProgress: terminal.errIsTerminal ? overItself : byLines,
    end: () => {
      if (drawn) terminal.err(`\r${' '.repeat(widest)}\r`);
    },
  };
}
