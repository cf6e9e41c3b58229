/** How a command stops short: what was wrong, in the house's form, and the exit code. */
import type { Trouble } from '../words/index.ts';

export const exitCodes = { fine: 0, runFailed: 1, wrongUse: 2 } as const;

type FailureCode = (typeof exitCodes)['runFailed' | 'wrongUse'];

export class Refusal extends Error {
  readonly troubles: readonly Trouble[];
  readonly exitCode: FailureCode;

  constructor(troubles: readonly Trouble[], exitCode: FailureCode = exitCodes.wrongUse) {
    super(troubles.map(({ where }) => where).join(', '));
    this.troubles = troubles;
    this.exitCode = exitCode;
  }
}

export function refuse(where: string, expected: string, got: string, fix: string): Refusal {
  return new Refusal([{ where, expected, got, fix }]);
}
