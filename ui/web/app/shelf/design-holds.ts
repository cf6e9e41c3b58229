/** Of the tabs that have a design open only one may change it: that one holds it until it lets go or is closed. */
export interface DesignHolds {
  /** Whether a hold keeps others away. */
  sure: boolean;
  /** A function that lets go; null if another tab holds the design. */
  take(design: string): Promise<(() => void) | null>;
  /** Takes the design as soon as nobody holds it; the function given back gives up waiting. */
  wait(design: string, taken: (letGo: () => void) => void): () => void;
}

/** By the browser's locks, which end with the tab, however it ends. Without them every tab may change everything. */
export function createHolds(locks: LockManager | undefined): DesignHolds {
  const nameOf = (design: string) => `tankful design ${design}`;

  /** The lock is held for as long as the promise is open that its callback gives back. */
  function hold(taken: (letGo: () => void) => void): Promise<void> {
    return new Promise((letGo) => taken(() => letGo()));
  }

  return {
    sure: locks !== undefined,
    take: (design) =>
      new Promise((answer) => {
        const free = () => answer(() => {});
        if (!locks) free();
        else
          locks
            .request(nameOf(design), { ifAvailable: true }, (lock) => (lock ? hold(answer) : answer(null)))
            .catch(free);
      }),
    wait(design, taken) {
      const giveUp = new AbortController();
      locks
        ?.request(nameOf(design), { signal: giveUp.signal }, () => hold(taken))
        // Given up, or the page may not have locks: either way nothing is to come.
        .catch(() => {});
      return () => giveUp.abort();
    },
  };
}
