/** A line on standard error for many runs: "14 of 25, about 6 s left", drawn over itself. */
import { quantityText } from '../words/index.ts';
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

export function sweepProgress(terminal: Terminal): SweepProgress {
  const started_s = terminal.now_s();
  let drawn_s = Number.NEGATIVE_INFINITY;
  let drawn = false;
  return {
    onProgress(done, of) {
      const now_s = terminal.now_s();
      if (!terminal.errIsTerminal || now_s - started_s < patience_s || now_s - drawn_s < redraw_s) return;
      drawn_s = now_s;
      drawn = true;
      const left_s = ((now_s - started_s) / Math.max(1, done)) * Math.max(0, of - done);
      const left = quantityText(Math.ceil(left_s), 'time', 'SI', { digits: 2, plain: true });
      terminal.err(`\r${`${done} of ${of}, about ${left} left`.padEnd(widest)}`);
    },
    end: () => {
      if (drawn) terminal.err(`\r${' '.repeat(widest)}\r`);
    },
  };
}
