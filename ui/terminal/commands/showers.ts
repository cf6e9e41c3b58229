/** `tankful showers FILE`: how many in a row, now and after dull days, and how each feels second by second. */
import type { Command } from 'commander';
import { type Scenario, showersAnswer } from '../../../sim/index.ts';
import { showersWords } from '../../words/index.ts';
import { type AnswerOptions, answerOptions, checkForm, refusalOf, tell, unitsOf } from '../answer-options.ts';
import { loadScenario } from '../load.ts';
import { refuse } from '../refusal.ts';
import { sweepProgress } from '../sweep-progress.ts';
import type { Terminal } from '../terminal.ts';

interface ShowersOptions extends AnswerOptions {
  dull?: string;
}

export function showersCommand(program: Command, terminal: Terminal): void {
  const command = program
    .command('showers')
    .description(
      'how many showers in a row, now and after dull days; the wait for the next; second by second',
    )
    .argument('<file>', 'scenario file')
    .option('--dull <days>', 'dull days to tell of, 1 to 6', '3')
    .option('--weather <file>', 'weather file in place of the weather in the file');
  answerOptions(command).action((file: string, options: ShowersOptions) => showers(file, options, terminal));
}

async function showers(file: string, options: ShowersOptions, terminal: Terminal): Promise<void> {
  unitsOf(options.units);
  checkForm(options);
  const dull = options.dull ?? '3';
  if (!/^[1-6]$/.test(dull)) {
    throw refuse('--dull', 'a whole number of days, 1 to 6', `"${dull}"`, 'write it as in --dull 3');
  }
  const { json, weatherFiles, read } = loadScenario(file, options);
  const scenario = json as unknown as Scenario;
  const context = { weatherFiles };
  const pool = terminal.openPool(scenario, context);
  const progress = sweepProgress(terminal);
  try {
    const answer = await showersAnswer({
      scenario,
      context,
      doJobs: pool.doJobs,
      dull_days: Number(dull),
      onProgress: progress.onProgress,
    });
    progress.end();
    const { name, prices } = read.plant;
    const { currency } = prices;
    tell(
      { name, answer, words: showersWords, filled: read.filled, currency, mainTable: 'dull' },
      options,
      terminal,
    );
  } catch (error) {
    throw refusalOf(error);
  } finally {
    progress.end();
    await pool.close();
  }
}
