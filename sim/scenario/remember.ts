/**
 * Keeps the last result of a costly pure function. A year of weather takes longer to make than the rest of a
 * scenario to read, and an answer reads hundreds of variants of one scenario whose weather is the same.
 * The result is shared between readings: nobody may write to it.
 */
export function rememberLast<A extends readonly unknown[], R>(
  make: (...args: A) => R,
  keysOf: (...args: A) => readonly (string | number | undefined | object)[],
): (...args: A) => R {
  let last: { keys: readonly unknown[]; result: R } | null = null;
  return (...args) => {
    const keys = keysOf(...args);
    if (last === null || keys.length !== last.keys.length || keys.some((key, i) => key !== last?.keys[i])) {
      last = { keys, result: make(...args) };
    }
    return last.result;
  };
}
