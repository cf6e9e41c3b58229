/** `tankful fit FILE LOG`: what the owner's log says about losses, coils and the engine's heat. */
import { basename, dirname } from 'node:path';
import type { Command } from 'commander';
import { fitAnswer, fittedScenario } from '../../../sim/index.ts';
import { sayIn } from '../../words/index.ts';
import { answerOptions, unitsOf } from '../answer-options.ts';
import { readText, writeAll } from '../files.ts';
import { fitCsv, fitText } from '../fit-report.ts';
import { type SweepOptions, sweepOver } from '../sweep-answer.ts';
import type { Terminal } from '../terminal.ts';

interface FitOptions extends SweepOptions {
  coolDown?: true;
  write?: string;
}

const logFile = { what: 'a log (CSV text)', mostBytes: 32 * 1024 * 1024 };

export function fitCommand(program: Command, terminal: Terminal): void {
  const command = program
    .command('fit')
    .description('hold a log of the real store against the run: what it tells of losses, coils and engine')
    .argument('<file>', 'scenario file')
    .argument('<log>', 'log as CSV, with a head such as: time,top (F),bottom (F),room (F)')
    .option('--weather <file>', 'weather file in place of the weather in the file')
    .option('--cool-down', 'nothing was drawn and the engine stood, as in an overnight test')
    .option('--write <file>', 'write the scenario with the values found there');
  answerOptions(command)
    .option('--progress', 'say how far it is on standard error')
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
