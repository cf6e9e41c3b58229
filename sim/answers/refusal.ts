/** A refusal in the house form. */
export function refusal(where: string, expected: string, got: string, fix: string): RangeError {
  return new RangeError(`${where} - expected ${expected} - got ${got} - ${fix}`);
}
