/** The known word nearest to a mistyped one. */
import { editDistance } from '../quantity/edit-distance.ts';

/** The nearest of `known`, or null where none is near enough to be meant. Case, spaces and dashes count little. */
export function nearestWord(word: string, known: readonly string[]): string | null {
  const plain = (text: string) => text.toLowerCase().replace(/[\s\-_]+/g, '_');
  const wanted = plain(word.slice(0, 60));
  let best: string | null = null;
  let least = Math.max(1, Math.floor(wanted.length / 3)) + 0.5;
  for (const candidate of known) {
    const other = plain(candidate);
    const distance = editDistance(wanted, other);
    // A word that begins another, as in "temp" for "temperature", is meant as well.
    const begins =
      wanted.length >= 3 && (other.startsWith(wanted) || wanted.startsWith(other)) ? 1.25 : Infinity;
    const score = Math.min(distance, begins);
    if (score < least) [best, least] = [candidate, score];
  }
  return best;
}
