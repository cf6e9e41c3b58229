/** What was filled in for the builder, in the order in which it matters. */
import type { FilledDefault } from '../../scenario/index.ts';
import type { Answer } from '../answer.ts';
import { movesHeat } from '../matters.ts';

/** Least trusted first. */
const GRADES: FilledDefault['grade'][] = ['invented', 'D', 'C', 'B', 'A'];

/**
 * Assumptions, most influential first: by the largest share of an answer's band that one of them moves from its low to
 * its high end; then those with a band that can move heat, though no answer here hangs on them; then by how far they are
 * to be trusted.
 */
export function byInfluence(filled: readonly FilledDefault[], answers: readonly Answer[]): FilledDefault[] {
  const influence = new Map<string, number>();
  for (const { levers, facts, headline } of answers) {
    const fact = facts[headline];
    const width = fact ? fact.high - fact.low : 0;
    for (const { path, low, high } of levers) {
      const share = width > 0 ? Math.abs(high.value - low.value) / width : 0;
      influence.set(path, Math.max(share, influence.get(path) ?? 0));
    }
  }
  const rank = ({ path, band, grade }: FilledDefault) => [
    influence.get(path) ?? 0,
    band && movesHeat(path) ? 1 : 0,
    -GRADES.indexOf(grade),
  ];
  return [...filled].sort((a, b) => {
    const [p, q] = [rank(a), rank(b)];
    const differs = p.findIndex((each, i) => each !== q[i]);
    return differs < 0 ? 0 : q[differs] - p[differs];
  });
}
