/** The figures by group, in both systems, with their bands and the cautions that stand beside them. */
import { type Caution, type FigureBands, glossary, type Result } from '../../sim/index.ts';
import {
  type FigureGroup,
  type FigureKey,
  figureGroups,
  figureWords,
  numberText,
  quantityText,
  sayCaution,
  spanText,
  speakIn,
  titleOf,
  together,
  type UnitSystem,
} from '../words/index.ts';
import { type CautionShown, cautionLines } from './caution-lines.ts';
import { paint, type Screen } from './screen.ts';
import { tableLines } from './table.ts';

export interface FiguresInput {
  result: Pick<Result, 'figures' | 'cautions'>;
  bands: FigureBands['bands'];
  units: UnitSystem;
}

const order = Object.keys(figureWords) as FigureKey[];

/** Figures of the group that are known, and those whose absence says something: no cold draw, ever. */
function keysOf(group: FigureGroup, figures: Result['figures']): FigureKey[] {
  const keys = order.filter((key) => figureWords[key].group === group && key in figures);
  if (keys.every((key) => figures[key] === null)) return [];
  return keys.filter((key) => figures[key] !== null || figureWords[key].none === 'never');
}

export function figureLines(input: FiguresInput, screen: Screen): string[] {
  const { figures, cautions } = input.result;
  const groups = (Object.keys(figureGroups) as FigureGroup[])
    .map((group) => ({ group, keys: keysOf(group, figures) }))
    .filter(({ keys }) => keys.length > 0);
  // One table for all groups, so that their columns stand under one another.
  const shown = groups.flatMap(({ keys }) => keys);
  const table = tableLines(
    shown.map((key) => cells(key, input, !screen.unicode)),
    ['left', 'right', 'right', 'left'],
  );
  const lineOf = new Map(shown.map((key, i) => [key, table[i]]));
  return groups.flatMap(({ group, keys }) => [
    paint(screen, 'bold', figureGroups[group]),
    ...keys.flatMap((key) => [
      lineOf.get(key) ?? '',
      ...saidCautions(
        cautions.filter(({ figure }) => figure === key),
        input.units,
        screen,
      ).flatMap((said) => cautionLines(said, screen)),
    ]),
  ]);
}

/** Cautions that stand beside no figure shown. */
export function looseCautions({ figures, cautions }: FiguresInput['result']): Caution[] {
  const standing = new Set<string>(
    (Object.keys(figureGroups) as FigureGroup[]).flatMap((group) => keysOf(group, figures)),
  );
  return cautions.filter(({ figure }) => figure === undefined || !standing.has(figure));
}

function cells(key: FigureKey, { result, bands, units }: FiguresInput, plain: boolean): string[] {
  const { label, none } = figureWords[key];
  const value = result.figures[key];
  if (value === null) return [`  ${label}`, none];
  const said = (number: number, system: UnitSystem) => inUnits(key, number, system, plain);
  const first = said(value, units);
  const other = said(value, units === 'US' ? 'SI' : 'US');
  const band = bands[key];
  return [
    `  ${label}`,
    first,
    other === first ? '' : `(${other})`,
    band ? spanText(said(band.low, units), said(band.high, units)) : '',
  ];
}

const dimensionOf = new Map(glossary.map(({ key, dimension }) => [key, dimension]));

function inUnits(key: FigureKey, value: number, units: UnitSystem, plain: boolean): string {
  const dimension = dimensionOf.get(key);
  return dimension
    ? quantityText(value, dimension, units, { plain })
    : numberText(Number(value.toPrecision(4)));
}

/** A run's cautions with their numbers in them; what is alike of several parts once. */
export function saidCautions(
  cautions: readonly Caution[],
  units: UnitSystem,
  screen: Screen,
): CautionShown[] {
  return together(cautions).map(({ caution, parts }) => {
    const { title, says, todo, licensed } = sayCaution(caution, speakIn(units, { plain: !screen.unicode }));
    return {
      severity: caution.severity,
      title: titleOf(title, parts),
      text: `${says} ${todo}`,
      licensed,
    };
  });
}
