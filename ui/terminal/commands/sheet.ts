/** `tankful sheet FILE`: the build sheet, as the page prints it, in text. */
import type { Command } from 'commander';
import {
  type Answer,
  buildSheet,
  byInfluence,
  chargingAnswer,
  coilAnswer,
  givenInputs,
  type PlantDescription,
  sectionFacts,
  showersAnswer,
  simulate,
} from '../../../sim/index.ts';
import { commandWords, optionWords } from '../../words/index.ts';
import { type SheetTold, sheetText } from '../sheet-report.ts';
import { type Asked, type SweepOptions, sweepOver } from '../sweep-answer.ts';
import type { Terminal } from '../terminal.ts';

export function sheetCommand(program: Command, terminal: Terminal): void {
  program
    .command('sheet')
    .description(commandWords.sheet)
    .argument('<file>', optionWords.file)
    .option('--weather <file>', optionWords.weather)
    .option('--json', optionWords.json)
    .option('--plain', optionWords.plain)
    .option('--progress', optionWords.progress)
    .action((file: string, options: SweepOptions) => sheet(file, { ...options, units: 'us' }, terminal));
}

function sheet(file: string, options: SweepOptions, terminal: Terminal): Promise<void> {
  return sweepOver(file, options, terminal, async (asked, { read }) => {
    const { plant, sketch, filled } = read;
    const facts = sectionFacts(plant, sketch);
    const told: SheetTold = {
      name: plant.name,
      file,
      scenario: asked.scenario,
      facts,
      sheet: buildSheet(facts),
      cautions: simulate(plant).cautions,
      filled,
      answers: await quickAnswers(asked, plant),
      currency: plant.prices.currency,
      today: terminal.today(),
    };
    return () =>
      terminal.out(options.json ? sheetJson(told) : sheetText(told, terminal.screen(options.plain === true)));
  });
}

/** Those that the page works out unasked. */
async function quickAnswers(asked: Asked, { taps, engine }: PlantDescription): Promise<Answer[]> {
  const { scenario, context } = asked;
  return [
    ...(taps ? [await showersAnswer(asked), coilAnswer({ scenario, context })] : []),
    ...(engine ? [chargingAnswer({ scenario, context })] : []),
  ];
}

function sheetJson({ name, scenario, sheet, cautions, filled, answers, today }: SheetTold): string {
  const content = {
    name,
    date: today.toISOString().slice(0, 10),
    ...sheet,
    answers,
    cautions,
    given: givenInputs(scenario, filled),
    assumptions: byInfluence(filled, answers),
  };
  return `${JSON.stringify(content)}\n`;
}
