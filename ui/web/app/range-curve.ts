/** A range as a curve: one of its figures over the input that was varied. */
import { outlineOf, type RangeAnswer, readEntry, type Scenario } from '../../../sim/index.ts';
import { answerViewWords, type FigureKey, figureWords, type Say } from '../../words/index.ts';
import { type AnswerCurve, answerCurve } from './answer-curve.ts';
import { dimensionOf } from './figure-text.ts';

/** Null where the input has no size, as a word has none, or where fewer than two runs gave the figure. */
export function rangeCurve(
  { axes: [axis], points }: RangeAnswer,
  figure: string,
  of: Scenario,
  say: Say,
): AnswerCurve | null {
  const { path, dimension } = axis;
  const known = points
    .map(({ figures }, i) => ({ at: axis.at[i], value: figures?.[figure] ?? null }))
    .filter((point): point is { at: number; value: number | null } => point.at !== null)
    .sort((a, b) => a.at - b.at);
  if (dimension === 'text' || known.length === 0) return null;
  const curve = {
    x: { key: path, dimension },
    lines: [
      {
        name: figure,
        y: { key: figure, dimension: dimensionOf(figure) },
        values: known.map(({ value }) => value),
      },
    ],
    at: known.map(({ at }) => at),
    present: presentOf(path, of),
    knee: null,
  };
  return answerCurve(curve, { lines: { [figure]: figureWords[figure as FigureKey].label } }, say);
}

/** The input as the design has it; null where the design leaves it to its default. */
function presentOf(path: string, of: Scenario): number | null {
  const entry = outlineOf(of, path);
  if (entry?.kind !== 'entry' || entry.value === undefined) return null;
  const read = readEntry(entry.field, String(entry.value));
  return read.ok && typeof read.value.means === 'number' ? read.value.means : null;
}

/** What a chart of it is called. */
export function rangeTitle(figure: string, label: string): string {
  return answerViewWords.over(figureWords[figure as FigureKey].label, label);
}
