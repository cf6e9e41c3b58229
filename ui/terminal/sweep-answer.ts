/** A command whose answer takes many runs: on threads, with progress, stopped cleanly by an interrupt. */
import type { Command } from 'commander';
import type { Answer, DoJobs, ReadContext, Scenario } from '../../sim/index.ts';
import { type AnswerWords, optionWords } from '../words/index.ts';
import { type AnswerOptions, answerOptions, checkForm, refusalOf, tell, unitsOf } from './answer-options.ts';
import { type Loaded, loadScenario, type Overrides } from './load.ts';
import { Stopped } from './refusal.ts';
import { sweepProgress } from './sweep-progress.ts';
import type { Terminal } from './terminal.ts';

export interface SweepOptions extends AnswerOptions {
  progress?: true;
}

/** A file, weather in place of the file's, and how to print; `--progress` for where standard error is no terminal. */
export function sweepOptions(command: Command): Command {
  command.argument('<file>', optionWords.file);
  command.option('--weather <file>', optionWords.weather);
  return answerOptions(command).option('--progress', optionWords.progress);
}

/** What an answer that takes runs is asked with. */
export interface Asked {
  scenario: Scenario;
  context: ReadContext;
  doJobs: DoJobs;
  onProgress: (done: number, of: number) => void;
}

/**
 * Loads a scenario and works through its runs; what `work` prints is printed whether or not somebody stopped them.
 * @throws Stopped if somebody did, so that the exit code says so
 */
export async function sweepOver(
  file: string,
  options: SweepOptions & Overrides,
  terminal: Terminal,
  work: (asked: Asked, loaded: Loaded) => Promise<() => void>,
): Promise<void> {
  unitsOf(options.units);
  checkForm(options);
  const loaded = loadScenario(file, options);
  const scenario = loaded.json as unknown as Scenario;
  const { context } = loaded;
  const progress = sweepProgress(terminal, options.progress === true);
  const pool = terminal.openPool(scenario, context);
  try {
    const { doJobs } = pool;
    const print = await work({ scenario, context, doJobs, onProgress: progress.onProgress }, loaded);
    progress.end();
    print();
  } catch (error) {
    throw refusalOf(error);
  } finally {
    progress.end();
    await pool.close();
  }
  if (pool.stopped) throw new Stopped();
}

/** The usual case: one answer, told in its words. */
export function sweepAnswer(
  file: string,
  options: SweepOptions & Overrides,
  terminal: Terminal,
  ask: (asked: Asked) => Promise<Answer>,
  told: { words: AnswerWords; mainTable: string },
): Promise<void> {
  return sweepOver(file, options, terminal, async (asked, { read }) => {
    const answer = await ask(asked);
    const { name, prices } = read.plant;
    const { currency } = prices;
    return () => tell({ name, answer, filled: read.filled, currency, ...told }, options, terminal);
  });
}
