/** `tankful showers FILE`: how many in a row, now and after dull days, and how each feels second by second. */
import type { Command } from 'commander';
import { showersAnswer } from '../../../sim/index.ts';
import { commandWords, optionWords, refusalWords, showersWords } from '../../words/index.ts';
import { refuse } from '../refusal.ts';
import { type SweepOptions, sweepAnswer, sweepOptions } from '../sweep-answer.ts';
import type { Terminal } from '../terminal.ts';

interface ShowersOptions extends SweepOptions {
  dull?: string;
}

export function showersCommand(program: Command, terminal: Terminal): void {
  const command = program.command('showers').description(commandWords.showers);
  sweepOptions(command)
    .option('--dull <days>', optionWords.dull, '3')
    .action((file: string, options: ShowersOptions) => {
      const dull_days = dullDays(options.dull ?? '3');
      const told = { words: showersWords, mainTable: 'dull' };
      return sweepAnswer(file, options, terminal, (asked) => showersAnswer({ ...asked, dull_days }), told);
    });
}

function dullDays(text: string): number {
  if (/^[1-6]$/.test(text)) return Number(text);
  throw refuse('--dull', refusalWords.dull.expected, `"${text}"`, refusalWords.dull.fix);
}
