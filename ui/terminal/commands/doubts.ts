/** `tankful doubts FILE`: the same days many times over, with everything one is unsure of somewhere between its ends. */
import type { Command } from 'commander';
import { doubtsAnswer } from '../../../sim/index.ts';
import { commandWords, doubtsWords, optionWords, refusalWords } from '../../words/index.ts';
import { refuse } from '../refusal.ts';
import { type SweepOptions, sweepAnswer, sweepOptions } from '../sweep-answer.ts';
import type { Terminal } from '../terminal.ts';

interface DoubtsOptions extends SweepOptions {
  runs: string;
  seed: string;
}

export function doubtsCommand(program: Command, terminal: Terminal): void {
  const command = program.command('doubts').description(commandWords.doubts);
  sweepOptions(command)
    .option('--runs <number>', optionWords.runs, '20')
    .option('--seed <number>', optionWords.seed, '1')
    .action((file: string, options: DoubtsOptions) => {
      const runs = whole('--runs', options.runs, 2, 200);
      const seed = whole('--seed', options.seed, 0, 4_294_967_295);
      const told = { words: doubtsWords, mainTable: 'runs' };
      return sweepAnswer(file, options, terminal, (asked) => doubtsAnswer({ ...asked, runs, seed }), told);
    });
}

function whole(flag: string, text: string, least: number, most: number): number {
  const value = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (value >= least && value <= most) return value;
  throw refuse(
    flag,
    refusalWords.whole(least, most),
    `"${text}"`,
    refusalWords.writtenAs(`${flag} ${least}`),
  );
}
