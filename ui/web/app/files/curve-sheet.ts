/** Curves and ranges as numbers, as their tables have them. */
import type { RangeAnswer } from '../../../../sim/index.ts';
import {
  chartWords,
  type FigureKey,
  figureWords,
  inColumn,
  inputInUnits,
  sayIn,
  type Units,
  withPoint,
} from '../../../words/index.ts';
import type { AnswerCurve } from '../answer-curve.ts';
import { dimensionOf } from '../figure-text.ts';
import { headOf, type Sheet } from './csv.ts';

/** `name`: what x is. Months and words stand as they are shown. */
export function curveSheet({ x, y, at, atWords, lines, thin }: AnswerCurve, name: string): Sheet {
  const all = [...lines, ...thin];
  return {
    head: [headOf(name, x.unit), ...all.map(({ label }) => headOf(label, y.unit))],
    rows: at.map((value, i) => [x.unit === '' ? atWords[i] : value, ...all.map(({ values }) => values[i])]),
  };
}

/** A row a run; why one could not be run stands in the last column. */
export function rangeSheet({ axes: [axis], figures, points }: RangeAnswer, units: Units): Sheet {
  const say = sayIn(units);
  return {
    head: [
      axis.label,
      ...figures.map((key) => headOf(figureWords[key as FigureKey].label, say.unit(dimensionOf(key)))),
      chartWords.problem,
    ],
    rows: points.map(({ values, figures: found, problem }) => [
      withPoint(inputInUnits(axis.path, String(values[0]), units)),
      ...figures.map((key) => {
        const value = found?.[key] ?? null;
        return value === null ? null : inColumn(value, dimensionOf(key), units);
      }),
      problem,
    ]),
  };
}
