/** `tankful sun FILE`: what each size of collector brings over a simulated year. */
import type { Command } from 'commander';
import { collectorAnswer } from '../../../sim/index.ts';
import { collectorWords, commandWords } from '../../words/index.ts';
import { type SweepOptions, sweepAnswer, sweepOptions } from '../sweep-answer.ts';
import type { Terminal } from '../terminal.ts';

export function sunCommand(program: Command, terminal: Terminal): void {
  const command = program.command('sun').description(commandWords.sun);
  sweepOptions(command).action((file: string, options: SweepOptions) =>
    sweepAnswer(file, options, terminal, collectorAnswer, { words: collectorWords, mainTable: 'long' }),
  );
}
