/** `tankful season FILE`: a whole year by months: hours, fuel, sun, cold showers, losses, water made up. */
import type { Command } from 'commander';
import { seasonAnswer } from '../../../sim/index.ts';
import { commandWords, seasonWords } from '../../words/index.ts';
import { type SweepOptions, sweepAnswer, sweepOptions } from '../sweep-answer.ts';
import type { Terminal } from '../terminal.ts';

export function seasonCommand(program: Command, terminal: Terminal): void {
  const command = program.command('season').description(commandWords.season);
  sweepOptions(command).action((file: string, options: SweepOptions) =>
    sweepAnswer(file, options, terminal, seasonAnswer, { words: seasonWords, mainTable: 'months' }),
  );
}
