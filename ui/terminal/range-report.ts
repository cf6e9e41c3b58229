/** A range as table and curve, as CSV, as JSON. */
import {
  type Curve,
  type DimensionKey,
  glossary,
  type RangeAnswer,
  type RangePoint,
} from '../../sim/index.ts';
import {
  csvCell,
  errorText,
  type FigureKey,
  figureWords,
  fileText,
  fromSim,
  inColumn,
  noNumber,
  rangeReportWords,
  type Say,
  withDecimalSign,
} from '../words/index.ts';
import { curveLines } from './curve-chart.ts';
import { paint, type Screen } from './screen.ts';
import { type Align, tableLines } from './table.ts';
import { ascii, harmless, wrap } from './text.ts';

/** Enough to tell neighbours apart. */
const DIGITS = 4;
/** Samples carry no more. */
const FILE_DIGITS = 7;
/** Of failures, the first few say enough. */
const MOST_PROBLEMS = 3;

export function rangeText(name: string, answer: RangeAnswer, say: Say, screen: Screen): string {
  const { axes, figures, points, done } = answer;
  const heads = [
    [...axes.map(({ label }) => fromSim(label)), ...figures.map(labelOf)],
    [...axes.map(() => ''), ...figures.map((key) => say.unit(dimensionOf(key)))],
  ];
  const shown = (text: string) => (screen.unicode ? withDecimalSign(text) : text);
  const rows = points.map((point) => [
    ...point.values.map((value, i) => harmless(shown(fileText(axes[i].path, String(value))))),
    ...figures.map((key) => shown(cell(point, key, say, DIGITS)) || noNumber),
  ]);
  const align: Align[] = [...axes.map((): Align => 'left'), ...figures.map((): Align => 'right')];
  // Labels are long and figures many: a line each, by number, and the numbers head the columns.
  const numbered = figures.map(
    (key, i) => `  ${i + 1}  ${labelOf(key)} (${say.unit(dimensionOf(key)) || rangeReportWords.number})`,
  );
  const short = [[...axes.map(({ path }) => path), ...figures.map((_, i) => `${i + 1}`)]];
  const full = tableLines([...heads, ...rows], align);
  const fits = full.every((line) => line.length <= screen.width);
  const table = fits ? full : [...tableLines([...short, ...rows], align), '', ...numbered];
  const sections = [
    [
      paint(screen, 'bold', harmless(name)),
      ...wrap(harmless(rangeReportWords.varied(axes.map(({ path }) => path))), screen.width),
    ],
    curveOf(answer, say, screen),
    table,
    problemLines(points, screen),
    done < points.length ? [rangeReportWords.stopped(done, points.length)] : [],
  ];
  const text = sections
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n');
  return screen.unicode ? `${text}\n` : ascii(`${text}\n`);
}

function problemLines(points: readonly RangePoint[], screen: Screen): string[] {
  const failed = points.filter(({ problem }) => problem !== null);
  return failed.length === 0
    ? []
    : [
        rangeReportWords.failed(failed.length, points.length),
        ...failed
          .slice(0, MOST_PROBLEMS)
          .flatMap(({ values, problem }) =>
            wrap(
              harmless(`  ${values.join(', ')}: ${errorText(problem?.split('\n', 1)[0] ?? '')}`),
              screen.width,
              '    ',
            ),
          ),
      ];
}

/** The first figure over a single axis of numbers. */
function curveOf({ axes, figures, points }: RangeAnswer, say: Say, screen: Screen): string[] {
  const [axis, ...others] = axes;
  const [key] = figures;
  const at = axis.at.filter((value) => value !== null);
  if (others.length > 0 || key === undefined || at.length < axis.at.length || axis.dimension === 'text')
    return [];
  const curve: Curve = {
    x: { key: axis.path, dimension: axis.dimension },
    at,
    lines: [
      {
        name: key,
        y: { key, dimension: dimensionOf(key) },
        values: points.map(({ figures: told }) => told?.[key] ?? null),
      },
    ],
    present: null,
    knee: null,
  };
  return curveLines(curve, { title: labelOf(key), lines: { [key]: labelOf(key) } }, say, screen);
}

export function rangeCsv({ axes, figures, points }: RangeAnswer, say: Say): string {
  const head = [
    ...axes.map(({ path }) => path),
    ...figures.map((key) => {
      const unit = say.unit(dimensionOf(key));
      return unit === '' ? key : `${key.replace(SI_AT_END, '')} (${unit})`;
    }),
    'problem',
  ];
  const rows = points.map((point) => [
    ...point.values.map(String),
    ...figures.map((key) => cell(point, key, say, FILE_DIGITS)),
    point.figures === null ? (point.problem?.replaceAll('\n', '; ') ?? rangeReportWords.undone) : '',
  ]);
  return `${[head, ...rows].map((row) => row.map(csvCell).join(',')).join('\n')}\n`;
}

/** The unit a key names, before `_min`, `_max` or `_end`: the head names its own. */
const SI_AT_END = /_(C|J|m3_s|m3|m|Pa|kg|m_s|s)(?=$|_(?:min|max|end)$)/;

export function rangeJson(name: string, { axes, figures, points, done }: RangeAnswer): string {
  const chosen = ({ figures: told, ...point }: RangePoint) => ({
    ...point,
    figures: told && Object.fromEntries(figures.map((key) => [key, told[key] ?? null])),
  });
  const members = { name, axes, figures, done, points: points.map(chosen) };
  const lines = Object.entries(members).map(
    ([key, value]) => `${JSON.stringify(key)}: ${JSON.stringify(value)}`,
  );
  return `{\n${lines.join(',\n')}\n}\n`;
}

const dimensions = new Map(glossary.map(({ key, dimension }) => [key, dimension]));

function dimensionOf(key: string): DimensionKey {
  return dimensions.get(key) ?? 'count';
}

function labelOf(key: string): string {
  return Object.hasOwn(figureWords, key) ? figureWords[key as FigureKey].label : key;
}

/** Empty where there is no number. */
function cell({ figures }: RangePoint, key: string, say: Say, digits: number): string {
  const value = figures?.[key] ?? null;
  if (value === null) return '';
  return String(Number(inColumn(value, dimensionOf(key), say.units).toPrecision(digits)));
}
