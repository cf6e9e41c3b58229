/** An error on the way to a result, in the one shape that a person reads. */
import type { Problem } from '../../../sim/index.ts';

export function failure(error: unknown): Problem {
  return {
    path: '',
    expected: 'a result',
    got: error instanceof Error ? error.message : String(error),
    fix: 'change the design where the message points',
  };
}
