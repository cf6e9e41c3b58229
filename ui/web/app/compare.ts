/** A pinned design beside the one that stands in the page: what was changed, and what came of it. */
import type { DimensionKey, Result, Scenario } from '../../../sim/index.ts';
import {
  answerWords,
  type FigureKey,
  figureWords,
  fileText,
  quantityText,
  type Say,
  type Units,
} from '../../words/index.ts';
import { answerKeys } from './asking.ts';
import { dimensionOf } from './figure-text.ts';
import { inputLabel } from './input-label.ts';
import type { AnswerKey, Answers } from './page-state.ts';

export interface ChangedInput {
  path: string;
  label: string;
  /** As in the file, in the reader's language; null where it says nothing. */
  was: string | null;
  is: string | null;
}

export interface ChangedFigure {
  key: string;
  label: string;
  was: string;
  is: string;
  /** How much more or less; null where one of them is not known. */
  by: string | null;
}

/** Every input that differs, in the file's order; a part that only one of the two has is one input. */
export function changedInputs(before: Scenario, after: Scenario): ChangedInput[] {
  return differing(before, after, '').map(({ path, was, is }) => ({
    path,
    label: inputLabel(path, is === undefined ? before : after),
    was: textOf(was, path),
    is: textOf(is, path),
  }));
}

interface Differing {
  path: string;
  was: unknown;
  is: unknown;
}

/** What a file says of itself is no input. */
const aside = new Set(['name', 'note', 'format', 'version']);

function differing(was: unknown, is: unknown, path: string): Differing[] {
  if (isPart(was) && isPart(is)) {
    const keys = [...new Set([...Object.keys(was), ...Object.keys(is)])];
    return keys
      .filter((key) => path !== '' || !aside.has(key))
      .flatMap((key) => differing(was[key], is[key], path === '' ? key : `${path}.${key}`));
  }
  if (Array.isArray(was) && Array.isArray(is)) {
    const many = Math.max(was.length, is.length);
    return Array.from({ length: many }, (_, i) => differing(was[i], is[i], `${path}[${i}]`)).flat();
  }
  return JSON.stringify(was) === JSON.stringify(is) ? [] : [{ path, was, is }];
}

function isPart(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A value of the file; of a whole part its name, or all that it holds. */
function textOf(value: unknown, path: string): string | null {
  if (value === undefined) return null;
  if (Array.isArray(value)) return value.map((each) => textOf(each, path)).join(', ');
  if (!isPart(value)) return fileText(path, String(value));
  const { name } = value;
  return typeof name === 'string'
    ? name
    : Object.entries(value)
        .map(([key, each]) => textOf(each, key))
        .join(', ');
}

/** Figures that a builder looks at first. */
const mainFigures: readonly FigureKey[] = [
  'showers_cold',
  'cold_shower_s',
  'cold_draw_s',
  'delivered_m3',
  'store_top_C_max',
  'store_mean_C',
  'store_mean_C_end',
  'engine_heat_J',
  'radiator_J',
  'fuel_m3',
  'solar_heat_J',
  'loss_J',
  'tap_flow_m3_s_min',
  'backup_fuel_m3',
];

/** Main figures whose text differs. */
export function changedFigures(
  before: Result['figures'],
  after: Result['figures'],
  units: Units,
): ChangedFigure[] {
  return mainFigures.flatMap((key) => {
    const [was, is] = [before[key] ?? null, after[key] ?? null];
    const dimension = dimensionOf(key);
    const text = (value: number | null) =>
      value === null ? figureWords[key].none : quantityText(value, dimension, units);
    if (text(was) === text(is)) return [];
    const by = was === null || is === null ? null : differenceText(is - was, dimension, units);
    return [{ key, label: figureWords[key].label, was: text(was), is: text(is), by }];
  });
}

/** With its sign, to the two digits that what it is the difference of allows; that of temperatures is none of them. */
export function differenceText(difference: number, dimension: DimensionKey, units: Units): string {
  const own = dimension === 'temperature' ? 'temperature_difference' : dimension;
  const sign = difference < 0 ? '−' : '+';
  return `${sign}${quantityText(Math.abs(difference), own, units, { digits: 2 })}`;
}

export interface ChangedAnswer {
  key: AnswerKey;
  /** What the number is called. */
  headline: string;
  was: string;
  is: string;
  by: string | null;
}

/** Answers that both designs have, each the one of its own design. */
export function changedAnswers(before: Answers, after: Answers, design: Scenario, say: Say): ChangedAnswer[] {
  return answerKeys.flatMap((key) => {
    const { answer: was } = before[key];
    const { answer: is, of } = after[key];
    const [a, b] = [was?.facts[was.headline], is?.facts[is.headline]];
    if (!was || !is || !a || !b || of !== design || was.headline !== is.headline) return [];
    const [own, other] = [say.banded(a), say.banded(b)];
    if (own === other) return [];
    const { dimension } = a;
    const by = dimension === 'money' ? null : differenceText(b.value - a.value, dimension, say.units);
    return [
      { key, headline: answerWords[key].headline[was.headline] ?? was.headline, was: own, is: other, by },
    ];
  });
}
