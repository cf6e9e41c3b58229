/** The known word nearest to a mistyped one. */

/**
 * Number of single-letter insertions, deletions, changes and swaps of neighbours that turn `a` into `b`
 * (optimal string alignment; textbook dynamic programming, from memory).
 */
export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = last[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1);
      row[j] = Math.min(change, last[j] + 1, row[j - 1] + 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length];
}

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
