/** What to mind beside an answer, in words. */
import type { Answer, AnswerCaution } from '../../sim/index.ts';
import type { AnswerWords } from './answers.ts';
import { isCaution } from './caution-titles.ts';
import { type CautionSaid, cautionWords, licensedWords, sayCaution } from './cautions.ts';
import type { Say } from './say.ts';
import { speakIn } from './speak.ts';

/** Codes and licensed trades have a say also in these, which only answers have. */
const licensedMinds: ReadonlySet<string> = new Set([
  'pause_scald',
  'valve_assumed',
  'fit_mixing_valve',
  'fit_relief',
  'vent_stays_open',
  'open_lid',
  'coolant',
  'boils_in_some',
  'already_boils',
]);

/** An answer's own sentence has no title; one that is also a run's is as licensed as there. */
export interface AnswerCautionSaid extends Pick<CautionSaid, 'licensed'> {
  title: string | null;
  text: string;
}

/** A caution that stands beside an answer, in a sentence or two. */
export function answerCaution(
  caution: AnswerCaution,
  answer: Answer,
  words: AnswerWords,
  say: Say,
): AnswerCautionSaid {
  const { key } = caution;
  const own = words.cautions[key];
  const due = isCaution(key) ? 'licensed' in cautionWords[key] : licensedMinds.has(key);
  const licensed = due ? licensedWords : null;
  if (own) return { title: null, text: own(answer, say), licensed };
  const { title, says, todo } = sayCaution({ ...caution, part: '' }, speakIn(say.units));
  return { title, text: `${says} ${todo}`.trim(), licensed };
}
