/** A terminal that only remembers what was written. */
import { doHere } from '../../../sim/index.ts';
import { runProgram } from '../../../ui/terminal/program.ts';
import type { Screen } from '../../../ui/terminal/screen.ts';
import type { Terminal } from '../../../ui/terminal/terminal.ts';

export interface Outcome {
  code: number;
  out: string;
  err: string;
}

export interface Written extends Terminal {
  written: { out: string; err: string };
}

/** Its clock advances by `tick_s` each time it is read. */
export function fakeTerminal({ errIsTerminal = false, tick_s = 0 } = {}): Written {
  const written = { out: '', err: '' };
  let now_s = 0;
  return {
    written,
    out: (text) => {
      written.out += text;
    },
    err: (text) => {
      written.err += text;
    },
    screen: (plain): Screen => ({ width: 80, unicode: !plain, colour: false }),
    errIsTerminal,
    openPool: (scenario, context) => ({
      doJobs: doHere(scenario, context),
      stopped: false,
      close: async () => {},
    }),
    today: () => new Date(2027, 0, 9, 12),
    now_s: () => {
      now_s += tick_s;
      return now_s;
    },
  };
}

export async function tankful(...words: string[]): Promise<Outcome> {
  const terminal = fakeTerminal();
  return { code: await runProgram(words, terminal), ...terminal.written };
}
