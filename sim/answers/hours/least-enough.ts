/** The least whole number that is enough, where more is never worse: found in few tries, many at once in rounds. */

export class LeastEnough {
  readonly #most: number;
  readonly #guess: number;
  /** Known not to be enough; -1 where nothing is. */
  #low: number;
  /** Known to be enough; one past the most where nothing is. */
  #high: number;
  #stride = 1;
  #tried = false;
  #tooLittle = false;

  /** @param guess tried first: neighbours of a good one are soon found; @param least nothing below it is asked */
  constructor(most: number, guess: number, least = 0) {
    this.#most = most;
    this.#guess = Math.min(most, Math.max(least, guess));
    this.#low = least - 1;
    this.#high = most + 1;
  }

  /** What to try next; null when it is known. Away from the guess in growing strides, then by halves. */
  get next(): number | null {
    if (this.#high - this.#low <= 1) return null;
    if (!this.#tried) return this.#guess;
    if (this.#high > this.#most) return Math.min(this.#most, this.#low + this.#stride);
    // Down from the guess until something is too little.
    if (!this.#tooLittle) return Math.max(this.#low + 1, this.#high - this.#stride);
    return Math.floor((this.#low + this.#high) / 2);
  }

  tell(tried: number, enough: boolean): void {
    this.#stride *= this.#tried ? 2 : 1;
    this.#tried = true;
    if (enough) this.#high = tried;
    else {
      this.#low = tried;
      this.#tooLittle = true;
    }
  }

  /** The least that is enough; null where even the most is not. To be asked when `next` is null. */
  get found(): number | null {
    return this.#high > this.#most ? null : this.#high;
  }
}

/**
 * Drives searches in lockstep: each round tries what every open search wants next, so that threads have work.
 *
 * @param attempt whether each try was enough; null ends that search (a run failed, or somebody stopped)
 * @returns for each search whether it came to its end
 */
export async function searchAll(
  searches: readonly LeastEnough[],
  attempt: (tries: { search: number; steps: number }[]) => Promise<(boolean | null)[]>,
): Promise<boolean[]> {
  const over = searches.map(() => false);
  for (;;) {
    const tries = searches.flatMap((search, i) => {
      const steps = over[i] ? null : search.next;
      return steps === null ? [] : [{ search: i, steps }];
    });
    if (tries.length === 0) return searches.map((search) => search.next === null);
    const enough = await attempt(tries);
    for (const [i, { search, steps }] of tries.entries()) {
      const told = enough[i];
      if (told === null) over[search] = true;
      else searches[search].tell(steps, told);
    }
  }
}
