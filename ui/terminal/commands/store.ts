/** `tankful store FILE`: what the store loses, how long it carries the household, how long it takes to heat. */
import type { Command } from 'commander';
import { storeAnswer } from '../../../sim/index.ts';
import { commandWords, storeAnswerWords } from '../../words/index.ts';
import { type SweepOptions, sweepAnswer, sweepOptions } from '../sweep-answer.ts';
import type { Terminal } from '../terminal.ts';

export function storeCommand(program: Command, terminal: Terminal): void {
  const command = program.command('store').description(commandWords.store);
  sweepOptions(command).action((file: string, options: SweepOptions) =>
    sweepAnswer(file, options, terminal, storeAnswer, { words: storeAnswerWords, mainTable: 'all' }),
  );
}
