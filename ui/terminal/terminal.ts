/** What a command may use of the world; tests hand in their own. */
import type { ReadContext, Scenario } from '../../sim/index.ts';
import { openPool, type Pool, workersIn } from './pool.ts';
import { type Screen, screenOf } from './screen.ts';

export interface Terminal {
  out: (text: string) => void;
  err: (text: string) => void;
  /** `plain` asks for ASCII without colour. */
  screen: (plain: boolean) => Screen;
  /** Whether progress may be drawn over itself on standard error. */
  errIsTerminal: boolean;
  now_s: () => number;
  today: () => Date;
  openPool: (scenario: Scenario, context: ReadContext) => Pool;
}

export function processTerminal(): Terminal {
  const { stdout, stderr, env, platform } = process;
  return {
    out: (text) => void stdout.write(text),
    err: (text) => void stderr.write(text),
    screen: (plain) =>
      screenOf({ columns: stdout.columns, isTerminal: Boolean(stdout.isTTY), env, platform }, plain),
    errIsTerminal: Boolean(stderr.isTTY),
    now_s: () => performance.now() / 1000,
    today: () => new Date(),
    openPool: (scenario, context) => openPool(scenario, context, workersIn(env)),
  };
}
