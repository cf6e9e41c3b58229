/** The year by months, small, for the build sheet. */
import type { Answer } from '../../sim/index.ts';
import { seasonWords } from './answer-season.ts';
import { rowsOf, shownColumns } from './answers.ts';
import type { Say } from './say.ts';
import type { SheetBlock } from './sheet.ts';

/** Null where the year was not worked out. */
export function seasonBlock(answers: readonly Answer[], say: Say): SheetBlock | null {
  const answer = answers.find(({ key }) => key === 'season');
  const [shown] = seasonWords.tables;
  if (!answer || rowsOf(answer, shown.key).length === 0) return null;
  const columns = shownColumns(shown, answer, say);
  return {
    key: 'season',
    title: shown.title(answer, say),
    lines: [],
    table: {
      heads: columns.map(({ head }) => head(say).filter(Boolean).join(', ')),
      rows: rowsOf(answer, shown.key).map((row) => columns.map(({ cell }) => cell(row, say))),
    },
  };
}
