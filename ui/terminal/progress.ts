/** A line on standard error that says how far a long run is, drawn over itself. */
import type { Terminal } from './terminal.ts';

/** Runs shorter than this show nothing. */
const patience_s = 1;
const redraw_s = 0.1;

export interface Progress {
  onProgress: (fraction: number) => void;
  /** Wipes the line. */
  end: () => void;
}

/** `forced` draws from the start, and where standard error is no terminal one line at each tenth. */
export function progressOn(terminal: Terminal, what: string, forced: boolean): Progress {
  const percent = (fraction: number) => `${what}: ${String(Math.floor(fraction * 100)).padStart(3)} %`;
  const started_s = terminal.now_s();
  let drawn_s = Number.NEGATIVE_INFINITY;
  let tenth = -1;
  let drawn = false;

  const overItself = (fraction: number) => {
    const now_s = terminal.now_s();
    if (now_s - drawn_s < redraw_s || (!forced && now_s - started_s < patience_s)) return;
    drawn_s = now_s;
    drawn = true;
    terminal.err(`\r${percent(fraction)} `);
  };
  const byLines = (fraction: number) => {
    if (!forced || Math.floor(fraction * 10) === tenth) return;
    tenth = Math.floor(fraction * 10);
    terminal.err(`${percent(fraction)}\n`);
  };
  return {
    onProgress: terminal.errIsTerminal ? overItself : byLines,
    end: () => {
      if (drawn) terminal.err(`\r${' '.repeat(percent(1).length + 1)}\r`);
    },
  };
}
