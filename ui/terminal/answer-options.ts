/** Options that the commands with an answer share. */
import type { Command } from 'commander';
import { type Answer, type DimensionKey, type FilledDefault, parseQuantity } from '../../sim/index.ts';
import {
  type AnswerWords,
  optionWords,
  quantityText,
  refusalWords,
  sayIn,
  spanText,
  type UnitSystem,
} from '../words/index.ts';
import { answerJson, tableCsv } from './answer-files.ts';
import { answerText } from './answer-report.ts';
import { Refusal, refuse } from './refusal.ts';
import type { Terminal } from './terminal.ts';

export interface AnswerOptions {
  weather?: string;
  units?: string;
  json?: true;
  csv?: true;
  plain?: true;
}

export function answerOptions(command: Command): Command {
  return command
    .option('--units <system>', optionWords.units, 'us')
    .option('--json', optionWords.json)
    .option('--csv', optionWords.csv)
    .option('--plain', optionWords.plain);
}

export function unitsOf(word: string | undefined): UnitSystem {
  const units = word?.toUpperCase();
  if (units === 'US' || units === 'SI') return units;
  throw refuse('--units', refusalWords.units.expected, `"${word}"`, refusalWords.units.fix);
}

/** One of them at most. */
export function checkForm({ json, csv }: AnswerOptions): void {
  const { expected, got, fix } = refusalWords.oneForm;
  if (json && csv) throw refuse(refusalWords.commandLine, expected, got, fix);
}

/** An option's quantity in SI, within a range. */
export function quantityOption(
  flag: string,
  text: string,
  dimension: DimensionKey,
  [low, high]: readonly [number, number],
  example: string,
): number {
  const read = parseQuantity(text, dimension);
  if (!read.ok) throw refuse(flag, read.expected, read.got, read.fix);
  if (read.value >= low && read.value <= high) return read.value;
  const [least, most] = [low, high].map((value) => quantityText(value, dimension, 'US'));
  throw refuse(flag, spanText(least, most), `"${text}"`, refusalWords.writtenAs(`${flag} "${example}"`));
}

/** An error of an answer speaks in the house's form, a line each problem. */
export function refusalOf(error: unknown): unknown {
  if (!(error instanceof RangeError)) return error;
  const troubles = error.message.split('\n').map((line) => {
    const [where, expected, got, ...fix] = line.split(' - ');
    return {
      where,
      expected: (expected ?? '').replace(/^expected /, ''),
      got: (got ?? '').replace(/^got /, ''),
      fix: fix.join(' - '),
    };
  });
  return new Refusal(troubles);
}

export interface Told {
  name: string;
  answer: Answer;
  words: AnswerWords;
  filled: readonly FilledDefault[];
  currency: string;
  /** Table that --csv prints. */
  mainTable: string;
  /** Beside the answer in JSON. */
  more?: Record<string, unknown>;
  /** Further answers of the same report. */
  others?: { answer: Answer; words: AnswerWords }[];
}

/** Prints an answer in the form asked for. */
export function tell(told: Told, options: AnswerOptions, terminal: Terminal): void {
  const { name, answer, words, filled, currency, mainTable, more, others = [] } = told;
  const units = unitsOf(options.units);
  if (options.json) {
    terminal.out(answerJson(name, answer, more));
    return;
  }
  const screen = terminal.screen(options.plain === true);
  const say = sayIn(units, { plain: !screen.unicode, currency });
  if (options.csv) {
    terminal.out(tableCsv(answer.tables[mainTable], say, currency));
    return;
  }
  const texts = [{ answer, words }, ...others].map((each) => answerText({ ...each, filled, say }, screen));
  terminal.out(texts.join('\n'));
}
