/** `tankful fit FILE LOG`: what the owner's log says about losses, coils and the engine's heat. */
import { basename, dirname } from 'node:path';
import type { Command } from 'commander';
import { fitAnswer, fittedScenario } from '../../../sim/index.ts';
import { commandWords, optionWords, sayIn, terminalFileWords } from '../../words/index.ts';
import { answerOptions, unitsOf } from '../answer-options.ts';
import { readText, writeAll } from '../files.ts';
import { fitCsv, fitText } from '../fit-report.ts';
import { type SweepOptions, sweepOver } from '../sweep-answer.ts';
import type { Terminal } from '../terminal.ts';

interface FitOptions extends SweepOptions {
  coolDown?: true;
  write?: string;
}

const logFile = { what: terminalFileWords.log, mostBytes: 32 * 1024 * 1024 };

export function fitCommand(program: Command, terminal: Terminal): void {
  const command = program
    .command('fit')
    .description(commandWords.fit)
    .argument('<file>', optionWords.file)
    .argument('<log>', optionWords.log)
    .option('--weather <file>', optionWords.weather)
    .option('--cool-down', optionWords.coolDown)
    .option('--write <file>', optionWords.write);
  answerOptions(command)
    .option('--progress', optionWords.progress)
    .action((file: string, log: string, options: FitOptions) => fitTo(file, log, options, terminal));
}

function fitTo(file: string, log: string, options: FitOptions, terminal: Terminal): Promise<void> {
  return sweepOver(file, options, terminal, async (asked, { read }) => {
    const question = { ...asked, log: readText(log, logFile), coolDown: options.coolDown === true };
    const answer = await fitAnswer(question);
    return () => {
      const { write } = options;
      if (write !== undefined) {
        const text = `${JSON.stringify(fittedScenario(asked.scenario, answer), null, 2)}\n`;
        writeAll(dirname(write), { [basename(write)]: text });
      }
      if (options.json) return terminal.out(`${JSON.stringify({ name: read.plant.name, ...answer })}\n`);
      if (options.csv) return terminal.out(fitCsv(answer));
      const screen = terminal.screen(options.plain === true);
      const say = sayIn(unitsOf(options.units), { plain: !screen.unicode });
      const coils = read.plant.coils.map(({ name }) => name);
      terminal.out(fitText({ answer, coils, filled: read.filled, wrote: write ?? null }, say, screen));
    };
  });
}
