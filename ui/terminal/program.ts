/** The command line: commands and options, and what their failures become. */
import { Command, CommanderError } from 'commander';
import packageJson from '../../package.json' with { type: 'json' };
import { refusalWords, troubleLine } from '../words/index.ts';
import { breaksCommand } from './commands/breaks.ts';
import { checkCommand } from './commands/check.ts';
import { coilCommand } from './commands/coil.ts';
import { doubtsCommand } from './commands/doubts.ts';
import { fitCommand } from './commands/fit.ts';
import { hoursCommand } from './commands/hours.ts';
import { nextCommand } from './commands/next.ts';
import { rangeCommand } from './commands/range.ts';
import { runCommand } from './commands/run.ts';
import { schemaCommand } from './commands/schema.ts';
import { seasonCommand } from './commands/season.ts';
import { sheetCommand } from './commands/sheet.ts';
import { showersCommand } from './commands/showers.ts';
import { storeCommand } from './commands/store.ts';
import { sunCommand } from './commands/sun.ts';
import { exitCodes, Refusal, Stopped, troubleOf } from './refusal.ts';
import type { Terminal } from './terminal.ts';
import { harmless } from './text.ts';

/** Runs one command line (without node and the program's name) and gives the exit code. Never throws. */
export async function runProgram(words: readonly string[], terminal: Terminal): Promise<number> {
  const program = new Command('tankful')
    .description(packageJson.description)
    .version(packageJson.version)
    .showSuggestionAfterError();
  // Commands copy these settings when they are made.
  program.exitOverride().configureOutput({
    writeOut: terminal.out,
    writeErr: terminal.err,
    getOutHelpWidth: () => terminal.screen(false).width,
    outputError: (message, write) => write(harmless(usageLine(message))),
  });
  runCommand(program, terminal);
  checkCommand(program, terminal);
  coilCommand(program, terminal);
  showersCommand(program, terminal);
  hoursCommand(program, terminal);
  rangeCommand(program, terminal);
  storeCommand(program, terminal);
  sunCommand(program, terminal);
  doubtsCommand(program, terminal);
  nextCommand(program, terminal);
  breaksCommand(program, terminal);
  seasonCommand(program, terminal);
  fitCommand(program, terminal);
  sheetCommand(program, terminal);
  schemaCommand(program, terminal);
  try {
    await program.parseAsync(words, { from: 'user' });
    return exitCodes.fine;
  } catch (error) {
    return exitCodeOf(error, terminal);
  }
}

function exitCodeOf(error: unknown, terminal: Terminal): number {
  // Help and version that were asked for end with 0; every other stop of the parser is wrong use.
  if (error instanceof CommanderError) return error.exitCode === 0 ? exitCodes.fine : exitCodes.wrongUse;
  if (error instanceof Stopped) return exitCodes.stopped;
  if (error instanceof Refusal) {
    for (const trouble of error.troubles) terminal.err(`${harmless(troubleLine(trouble))}\n`);
    return error.exitCode;
  }
  const trouble = troubleOf(error, 'tankful', refusalWords.report);
  terminal.err(`${harmless(troubleLine(trouble))}\n`);
  return exitCodes.runFailed;
}

/** The parser's own sentence, in the house's form. */
function usageLine(message: string): string {
  const got = message
    .trim()
    .replace(/^error: /, '')
    .replace(/\s*\n\s*/g, ' ');
  const line = {
    where: refusalWords.commandLine,
    got,
    ...refusalWords.command,
  };
  return `${troubleLine(line)}\n`;
}
