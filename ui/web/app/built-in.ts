/**
 * The opening scenario, solved when the page was built: its numbers stand before a worker has woken. It stands in the
 * page as text beside the code.
 */
import type { Answer } from '../../../sim/index.ts';
import type { Units } from '../../words/index.ts';
import type { NamedScenario } from './catalogue.ts';
import { type PackedSeries, packSeries, unpackSeries } from './packed.ts';
import type { AnswerKey, Answers, Shown } from './page-state.ts';

/** Of the opening scenario, which the catalogue has. */
export type Solved = Omit<Shown, 'scenario'>;

/** An answer and its sentence in every reader's units: the words of answers are loaded only for others. */
export type SaidAnswer = Answer & { said: Record<Units, string> };

export interface BuiltIn {
  shown: Solved;
  answers: Partial<Answers>;
  scenarios: NamedScenario[];
}

/** Id of the element that holds the text. */
export const builtInId = 'built-in';

interface Packed {
  shown: Omit<Solved, 'result'> & { result: Omit<Solved['result'], 'series'> & { series: PackedSeries } };
  answers: SaidAnswer[];
  scenarios: NamedScenario[];
}

/** Digits kept of numbers that stand alone: more than are ever shown. */
const digits = 7;

export function packBuiltIn(shown: Solved, answers: SaidAnswer[], scenarios: NamedScenario[]): string {
  const { result } = shown;
  const packed: Packed = {
    shown: { ...shown, result: { ...result, series: packSeries(result.series) } },
    answers,
    scenarios,
  };
  return JSON.stringify(packed, (_, value: unknown) =>
    typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(digits)) : value,
  );
}

export function unpackBuiltIn(text: string): BuiltIn {
  const { shown, answers, scenarios } = JSON.parse(text) as Packed;
  const { result } = shown;
  return {
    shown: { ...shown, result: { ...result, series: unpackSeries(result.series) } },
    answers: Object.fromEntries(
      answers.map((answer) => [answer.key satisfies AnswerKey, { at: 'done', answer }]),
    ),
    scenarios,
  };
}
