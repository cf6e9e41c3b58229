/** `tankful next FILE`: what to change next, by what it gains for the money. */
import type { Command } from 'commander';
import { nextAnswer } from '../../../sim/index.ts';
import { commandWords, nextWords } from '../../words/index.ts';
import { type SweepOptions, sweepAnswer, sweepOptions } from '../sweep-answer.ts';
import type { Terminal } from '../terminal.ts';

export function nextCommand(program: Command, terminal: Terminal): void {
  const command = program.command('next').description(commandWords.next);
  sweepOptions(command).action((file: string, options: SweepOptions) =>
    sweepAnswer(file, options, terminal, nextAnswer, { words: nextWords, mainTable: 'changes' }),
  );
}
