/**
 * The band of an answer: one mechanism for all of them. Each doubtful input is put at its low and at its high
 * value, one at a time, everything else as it stands; the answer works its facts out anew at each end by
 * whatever means it has (a march of the coil, a whole run on another thread), and `bandsOf` combines them.
 */
import type { Banded, Lever } from './answer.ts';
import type { Edit } from './edit.ts';
import { entered, type File } from './entered.ts';
import type { Job } from './job.ts';

/** A doubt as the edits that put it at either end. */
export interface Doubt {
  path: string;
  low: { text: string; edits: Edit[] };
  high: { text: string; edits: Edit[] };
}

/** What an answer found, by name, SI; null where there is nothing to find. */
export type Facts = Record<string, number | null>;

/** A fact without a band: counted, or typed in. */
export function exactly(value: number, dimension: Banded['dimension']): Banded {
  return { value, low: value, high: value, numerical: 0, dimension };
}

/** How a fact is printed and what may stand for it. */
export interface FactKind extends Pick<Banded, 'dimension'> {
  /** What it can be at the least and at the most: sums of squares may reach past it. */
  least?: number;
  greatest?: number;
  /** How well it is computed (half-width). */
  numerical?: number;
  /** What is taken at an end where nothing is found, as boiling where no store is hot enough; without it that end counts as no move. */
  none?: number;
}

/** True for the paths given and all that lies under them. */
export function under(...paths: string[]): (path: string) => boolean {
  return (path) => paths.some((p) => path === p || path.startsWith(`${p}.`) || path.startsWith(`${p}[`));
}

/**
 * The doubts that matter to an answer: every default actually filled in that has a band, and every mark (which
 * takes the place of a default's own band at the same path). Where the file leaves a whole out, as a collector's
 * rating, the other values that stood in for it are written down beside the one put at its end.
 *
 * @param matters whether the input at a path can move the answer: what cannot is not tried
 */
export function doubtsOf(file: File, matters: (path: string) => boolean): Doubt[] {
  const { filled, marks } = file;
  const marked = new Set(marks.map((mark) => mark.path));
  const open = filled.flatMap(({ path, band }) => (band && !marked.has(path) ? [{ path, band }] : []));
  return [...open, ...marks]
    .filter(({ path }) => matters(path))
    .map(({ path, band }) => {
      const end = (text: string) => ({ text, edits: entered(file, [[path, inFile(text)]]) });
      return { path, low: end(band[0]), high: end(band[1]) };
    });
}

/** A multiplier is a plain number in the file, a quantity is a text. */
function inFile(text: string): string | number {
  return /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text;
}

/** The jobs that `bandsOf` wants the facts of: low and high of each doubt in turn. */
export function doubtJobs(doubts: readonly Doubt[]): Job[] {
  return doubts.flatMap(({ low, high }) => [{ edits: low.edits }, { edits: high.edits }]);
}

export interface Bands {
  facts: Record<string, Banded>;
  /** Doubts that move the fact asked for, largest first. */
  levers: (fact: string) => Lever[];
  /** Paths of doubts with an end at which the scenario no longer holds together: not in the bands. */
  untried: string[];
}

/**
 * Bands of facts by the root of the sum of squares, upward and downward deviations apart:
 * high = value + sqrt(sum of max(0, deviations of a doubt)^2), low alike. Doubts are taken as independent and
 * as not at their worst all at once, which an honest range for a decision needs (judgement; the sum itself
 * would be the range nobody ever sees). `numerical` stays apart: it is not the inputs' doubt.
 *
 * @param base the facts as the scenario stands; those that are null have no band
 * @param ends facts of `doubtJobs(doubts)`, in their order; null where a job failed
 */
export function bandsOf(
  base: Facts,
  ends: readonly (Facts | null)[],
  doubts: readonly Doubt[],
  kinds: Record<string, FactKind>,
): Bands {
  const tried = doubts.flatMap((doubt, i) => {
    const [low, high] = [ends[2 * i], ends[2 * i + 1]];
    return low && high ? [{ doubt, low, high }] : [];
  });
  const facts: Record<string, Banded> = {};
  for (const [key, kind] of Object.entries(kinds)) {
    const value = base[key];
    if (value === null || value === undefined) continue;
    let down = 0;
    let up = 0;
    for (const { low, high } of tried) {
      const moves = [low, high].map((end) => (end[key] ?? kind.none ?? value) - value);
      down += Math.min(0, ...moves) ** 2;
      up += Math.max(0, ...moves) ** 2;
    }
    const { least = Number.NEGATIVE_INFINITY, greatest = Number.POSITIVE_INFINITY, numerical = 0 } = kind;
    facts[key] = {
      value,
      low: Math.max(least, value - Math.sqrt(down)),
      high: Math.min(greatest, value + Math.sqrt(up)),
      numerical,
      dimension: kind.dimension,
    };
  }
  const levers = (fact: string): Lever[] => {
    const { numerical: noise = 0, none = null } = kinds[fact] ?? {};
    return tried
      .flatMap(({ doubt, low, high }) => {
        const [a, b] = [low[fact] ?? none, high[fact] ?? none];
        if (a === null || b === null || Math.abs(b - a) <= noise) return [];
        return [
          {
            path: doubt.path,
            low: { text: doubt.low.text, value: a },
            high: { text: doubt.high.text, value: b },
          },
        ];
      })
      .sort((p, q) => Math.abs(q.high.value - q.low.value) - Math.abs(p.high.value - p.low.value));
  };
  const untried = doubts.filter((doubt) => !tried.some((t) => t.doubt === doubt)).map(({ path }) => path);
  return { facts, levers, untried };
}
