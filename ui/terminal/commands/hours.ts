/** `tankful hours FILE`: hours of engine a day, by month, that keep the showers warm, and what they cost. */
import type { Command } from 'commander';
import { hoursAnswer } from '../../../sim/index.ts';
import { commandWords, hoursWords } from '../../words/index.ts';
import { type SweepOptions, sweepAnswer, sweepOptions } from '../sweep-answer.ts';
import type { Terminal } from '../terminal.ts';

export function hoursCommand(program: Command, terminal: Terminal): void {
  const command = program.command('hours').description(commandWords.hours);
  sweepOptions(command).action((file: string, options: SweepOptions) =>
    sweepAnswer(file, options, terminal, hoursAnswer, { words: hoursWords, mainTable: 'months' }),
  );
}
