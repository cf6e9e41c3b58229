/** An answer as a terminal shows it: sentence, reason, tables, curve, what would change it most, cautions. */
import type { Answer, FilledDefault } from '../../sim/index.ts';
import {
  type AnswerWords,
  answerCaution,
  answerReportWords,
  fromSim,
  inputInUnits,
  type RowByKey,
  rowsOf,
  type Say,
  type ShownTable,
  shownColumns,
  takenWords,
} from '../words/index.ts';
import { cautionLines, licensedLines } from './caution-lines.ts';
import { curveLines } from './curve-chart.ts';
import { paint, type Screen } from './screen.ts';
import { type Align, tableLines } from './table.ts';
import { ascii, harmless, wrap } from './text.ts';

export interface AnswerReport {
  answer: Answer;
  words: AnswerWords;
  filled: readonly FilledDefault[];
  say: Say;
}

const mostLevers = 4;

export function answerText({ answer, words, filled, say }: AnswerReport, screen: Screen): string {
  const said = (sentence: string) => wrap(harmless(sentence), screen.width);
  const sections = [
    [
      paint(screen, 'bold', words.title),
      ...said(words.sentence(answer, say)),
      ...said(words.reason(answer, say)),
      ...words.more(answer, say).flatMap(said),
    ],
    ...words.curves.map(({ key, title, lines }) => {
      const curve = answer.curves[key];
      return curve ? curveLines(curve, { title: title(answer, say), lines }, say, screen) : [];
    }),
    ...words.tables.map((table) => shownTable(answer, table, say, screen)),
    leverLines({ answer, words, filled, say }, screen),
    mindLines({ answer, words, filled, say }, screen),
    [
      ...(answer.taken ?? []).flatMap((key) => wrap(harmless(takenWords[key] ?? key), screen.width, '  ')),
      ...(answer.stopped ? [answerReportWords.stopped] : []),
    ],
  ];
  const text = sections
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n');
  return screen.unicode ? `${text}\n` : ascii(`${text}\n`);
}

/** What to mind, and once for all of it that codes and licensed trades decide. */
function mindLines({ answer, words, say }: AnswerReport, screen: Screen): string[] {
  const shown = answer.cautions.map((caution) => ({
    ...answerCaution(caution, answer, words, say),
    severity: caution.severity,
  }));
  return [...shown.flatMap((each) => cautionLines(each, screen)), ...licensedLines(shown, screen)];
}

function shownTable(answer: Answer, shown: ShownTable, say: Say, screen: Screen): string[] {
  const present = answer.tables[shown.key]?.present ?? null;
  const rows = rowsOf(answer, shown.key)
    .map((row, i) => ({ row, isPresent: i === present }))
    .filter(({ row }) => shown.rows?.(row) ?? true);
  if (rows.length === 0) return [];
  const columns = shownColumns(shown, answer, say);
  const heads = columns.map(({ head }) => head(say));
  const cells = ({ row, isPresent }: { row: RowByKey; isPresent: boolean }) => [
    isPresent ? '>' : '',
    ...columns.map(({ cell }) => harmless(cell(row, say))),
  ];
  const align: Align[] = ['left', ...columns.map(({ left }): Align => (left ? 'left' : 'right'))];
  const lines = tableLines(
    [['', ...heads.map(([first]) => first)], ['', ...heads.map(([, second]) => second)], ...rows.map(cells)],
    align,
  );
  return [
    ...wrap(harmless(shown.title(answer, say)), screen.width).map((line) => paint(screen, 'bold', line)),
    ...lines,
  ];
}

/** What would change the headline most, each as it is at either end of its band, and what to measure first. */
function leverLines({ answer, words, filled, say }: AnswerReport, screen: Screen): string[] {
  const fact = answer.facts[answer.headline];
  const top = answer.levers.slice(0, mostLevers);
  if (!fact || top.length === 0) return [];
  const told = new Map(filled.map((entry) => [entry.path, entry]));
  const name = words.headline[answer.headline] ?? answer.headline;
  const lines = top.map(({ path, low, high }) => {
    const [from, to] = [low, high].map(({ text, value }) =>
      answerReportWords.leverEnd(say.value({ ...fact, value }), inputInUnits(path, text, say.units)),
    );
    return `  ${fromSim(told.get(path)?.label ?? path)}: ${from}, ${to} (${path})`;
  });
  const first = told.get(top[0].path)?.measure;
  return [
    paint(screen, 'bold', answerReportWords.levers(name)),
    ...lines.flatMap((line) => wrap(harmless(line), screen.width, '    ')),
    ...(first ? wrap(harmless(`  ${answerReportWords.measureFirst(first)}`), screen.width, '    ') : []),
  ];
}
