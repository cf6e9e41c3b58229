/** Problems of a file, all at once but not without end. */
import type { Problem } from './types.ts';

const MOST = 20;

/** Keeps the first problems and counts the rest. */
export class ProblemList {
  #kept: Problem[] = [];
  #count = 0;

  get empty(): boolean {
    return this.#count === 0;
  }

  add(where: string, expected: string, got: string, fix: string): void {
    this.#count++;
    if (this.#kept.length < MOST) this.#kept.push({ where, expected, got, fix });
  }

  /** The first twenty, and one more entry that says how many were left out. */
  all(): Problem[] {
    const more = this.#count - this.#kept.length;
    if (more === 0) return this.#kept;
    return [
      ...this.#kept,
      {
        where: 'the rest of the file',
        expected: 'no further problem',
        got: `and ${more} more`,
        fix: 'mend those above first; the others are often of the same kind',
      },
    ];
  }
}

/** What was read, quoted and cut to a length that fits a line. */
export function quote(text: string): string {
  const plain = [...text].map((c) => (c < ' ' ? ' ' : c)).join('');
  return plain.length > 40 ? `"${plain.slice(0, 37)}..."` : `"${plain}"`;
}
