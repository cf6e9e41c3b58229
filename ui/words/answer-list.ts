/** The words of every answer, by its key. */
import type { Answer } from '../../sim/index.ts';
import { breaksWords } from './answer-breaks.ts';
import { chargingWords } from './answer-charging.ts';
import { coilWords } from './answer-coil.ts';
import { doubtsWords } from './answer-doubts.ts';
import { hoursWords } from './answer-hours.ts';
import { nextWords } from './answer-next.ts';
import { seasonWords } from './answer-season.ts';
import { showersWords } from './answer-showers.ts';
import { storeAnswerWords } from './answer-store.ts';
import { collectorWords } from './answer-sun.ts';
import type { AnswerWords } from './answers.ts';

export const answerWords: Readonly<Record<Answer['key'], AnswerWords>> = {
  showers: showersWords,
  coil: coilWords,
  charging: chargingWords,
  collector: collectorWords,
  hours: hoursWords,
  store: storeAnswerWords,
  breaks: breaksWords,
  season: seasonWords,
  doubts: doubtsWords,
  next: nextWords,
};
