/** Which answer is worked out by what. */
import {
  type Answer,
  chargingAnswer,
  coilAnswer,
  type DoJobs,
  type ReadContext,
  type Scenario,
} from '../../../sim/index.ts';

interface Means {
  doJobs: DoJobs;
  onProgress(done: number, of: number): void;
}

export async function answerTo(
  key: Answer['key'],
  question: { scenario: Scenario; context: ReadContext },
  { onProgress }: Means,
): Promise<Answer> {
  // Progress of what needs no runs, in percent.
  const byShare = { ...question, onProgress: (share: number) => onProgress(Math.round(share * 100), 100) };
  switch (key) {
    case 'coil':
      return coilAnswer(byShare);
    case 'charging':
      return chargingAnswer(byShare);
    default:
      throw new RangeError(`${key} - expected an answer that can be asked - got one that cannot`);
  }
}
