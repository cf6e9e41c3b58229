/** What each answer is called, and what they stand under; the rest of their words is loaded when they are told. */
import type { Answer } from '../../sim/index.ts';

export const answerTitles: Readonly<Record<Answer['key'], string>> = {
  showers: 'Showers in a row',
  coil: 'The household coil',
  charging: 'The engine’s coil',
  collector: 'The sun over the year',
  hours: 'Hours of engine a day',
  store: 'Store and insulation',
  breaks: 'What breaks it',
  season: 'The season by months',
  doubts: 'Doubts',
  next: 'The next dollar',
};

/** Headings of groups of answers; those of every day come first and need none. */
export const answerGroupWords = {
  everyday: '',
  year: 'Over the year',
  change: 'What to change',
  unsure: 'What is not sure',
} as const;
