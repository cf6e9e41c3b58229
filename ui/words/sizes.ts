/** Sizes of files as people say them. */
import { numberFormat } from './locale.ts';

const number = numberFormat({ maximumSignificantDigits: 3 });

/** "64 kB", "1.2 MB": thousands of 1000, as file managers and shops count. */
export function sizeWords(bytes: number): string {
  if (bytes < 1000) return `${number.format(bytes)} bytes`;
  return bytes < 1e6 ? `${number.format(bytes / 1000)} kB` : `${number.format(bytes / 1e6)} MB`;
}
