/** Answers as they stand on the page: those of every day first, the others by what they are about. */
import { answerGroupWords } from '../../words/index.ts';
import type { AnswerKey } from './page-state.ts';

type Group = keyof typeof answerGroupWords;

const groupOf: Readonly<Record<AnswerKey, Group>> = {
  showers: 'everyday',
  coil: 'everyday',
  charging: 'everyday',
  collector: 'year',
  hours: 'year',
  store: 'change',
  next: 'change',
  season: 'year',
  doubts: 'unsure',
  breaks: 'unsure',
};

/** The answers' keys by group, in their order; groups without any are left out. */
export function grouped(keys: readonly AnswerKey[]): { heading: string; keys: AnswerKey[] }[] {
  return (Object.keys(answerGroupWords) as Group[])
    .map((group) => ({
      heading: answerGroupWords[group],
      keys: keys.filter((key) => groupOf[key] === group),
    }))
    .filter(({ keys }) => keys.length > 0);
}
