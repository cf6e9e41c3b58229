/** `tankful breaks FILE`: one thing fails at a time: what happens, when, how hot, and what protects. */
import type { Command } from 'commander';
import { breaksAnswer } from '../../../sim/index.ts';
import { breaksWords, commandWords } from '../../words/index.ts';
import { type SweepOptions, sweepAnswer, sweepOptions } from '../sweep-answer.ts';
import type { Terminal } from '../terminal.ts';

export function breaksCommand(program: Command, terminal: Terminal): void {
  const command = program.command('breaks').description(commandWords.breaks);
  sweepOptions(command).action((file: string, options: SweepOptions) =>
    sweepAnswer(file, options, terminal, breaksAnswer, { words: breaksWords, mainTable: 'failures' }),
  );
}
