/** What each answer is called; the rest of its words is loaded when it is told. */
import type { Answer } from '../../sim/index.ts';

export const answerTitles: Readonly<Record<Answer['key'], string>> = {
  showers: 'Showers in a row',
  coil: 'The household coil',
  charging: 'The engine’s coil',
  collector: 'The sun over the year',
  hours: 'Hours of engine a day',
  store: 'Store and insulation',
};
