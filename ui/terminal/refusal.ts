/** How a command stops short: what was wrong, in the house's form, and the exit code. */
import { refusalWords, type Trouble, troubleIn } from '../words/index.ts';

/** `stopped` is what shells give a program that an interrupt ended. */
export const exitCodes = { fine: 0, runFailed: 1, wrongUse: 2, stopped: 130 } as const;

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

/** Somebody stopped it; what was finished has been printed. */
export class Stopped extends Error {}

export function refuse(where: string, expected: string, got: string, fix: string): Refusal {
  return new Refusal([{ where, expected, got, fix }]);
}

/** An error of the simulation speaks in the house's form already; any other is put into it. */
export function troubleOf(error: unknown, where: string, fix: string): Trouble {
  const message = error instanceof Error ? error.message : String(error);
  return troubleIn(message) ?? { where, expected: refusalWords.finish, got: message, fix };
}
