/** `tankful range FILE --vary path=from:to:number`: one or two inputs over values, any figures out. */
import type { Command } from 'commander';
import { type RangeAnswer, rangeAnswer } from '../../../sim/index.ts';
import { commandWords, optionWords, sayIn } from '../../words/index.ts';
import { unitsOf } from '../answer-options.ts';
import type { Overrides } from '../load.ts';
import { rangeCsv, rangeJson, rangeText } from '../range-report.ts';
import { type SweepOptions, sweepOptions, sweepOver } from '../sweep-answer.ts';
import type { Terminal } from '../terminal.ts';

interface RangeOptions extends SweepOptions, Overrides {
  vary: string[];
  figure: string[];
}

export function rangeCommand(program: Command, terminal: Terminal): void {
  const command = program.command('range').description(commandWords.range);
  const also = (value: string, before: string[]) => [...before, value];
  sweepOptions(command)
    .option('--vary <input>', optionWords.vary, also, [])
    .option('--figure <key>', optionWords.figure, also, [])
    .option('--days <number>', optionWords.days)
    .option('--from <date>', optionWords.from)
    .action((file: string, options: RangeOptions) => range(file, options, terminal));
}

function range(file: string, options: RangeOptions, terminal: Terminal): Promise<void> {
  return sweepOver(file, options, terminal, async (asked, { read }) => {
    const answer = await rangeAnswer({ ...asked, vary: options.vary, figures: options.figure });
    return () => terminal.out(told(answer, read.plant.name, options, terminal));
  });
}

function told(answer: RangeAnswer, name: string, options: RangeOptions, terminal: Terminal): string {
  if (options.json) return rangeJson(name, answer);
  const screen = terminal.screen(options.plain === true);
  const say = sayIn(unitsOf(options.units), { plain: !screen.unicode });
  return options.csv ? rangeCsv(answer, say) : rangeText(name, answer, say, screen);
}
