/** Which question is answered by what. */
import {
  type Answer,
  breaksAnswer,
  chargingAnswer,
  coilAnswer,
  collectorAnswer,
  type DoJobs,
  doubtsAnswer,
  figureBands,
  fitAnswer,
  hoursAnswer,
  nextAnswer,
  type RangeAnswer,
  type ReadContext,
  rangeAnswer,
  recipeAnswer,
  type Scenario,
  seasonAnswer,
  showersAnswer,
  storeAnswer,
} from '../../../sim/index.ts';
import type { AskQuestion, Measured } from './protocol.ts';

interface Means {
  scenario: Scenario;
  context: ReadContext;
  doJobs: DoJobs;
  onProgress(done: number, of: number): void;
}

export async function answerTo(
  question: AskQuestion,
  means: Means,
): Promise<Answer | RangeAnswer | Measured> {
  if ('bands' in question) return figureBands(means);
  if ('log' in question) return fitAnswer({ ...means, ...question });
  if ('recipe' in question) return recipeAnswer({ ...means, ...question });
  if ('vary' in question) return rangeAnswer({ ...means, vary: [question.vary] });
  // Progress of what needs no runs, in percent.
  const onProgress = (share: number) => means.onProgress(Math.round(share * 100), 100);
  const { key } = question;
  switch (key) {
    case 'coil':
      return coilAnswer({ ...means, onProgress });
    case 'charging':
      return chargingAnswer({ ...means, onProgress });
    case 'showers':
      return showersAnswer(means);
    case 'hours':
      return hoursAnswer(means);
    case 'collector':
      return collectorAnswer(means);
    case 'store':
      return storeAnswer(means);
    case 'breaks':
      return breaksAnswer(means);
    case 'season':
      return seasonAnswer(means);
    case 'doubts':
      return doubtsAnswer(means);
    case 'next':
      return nextAnswer(means);
  }
}
