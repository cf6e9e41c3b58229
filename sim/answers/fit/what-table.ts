/** Tells weather from a log by the head of a table. */
import { measuresNamed } from '../../parts/weather/csv-head.ts';
import { ProblemList } from '../../parts/weather/problems.ts';
import { readTable, splitLine } from '../../parts/weather/text-table.ts';
import { isTmy3 } from '../../parts/weather/tmy3.ts';
import { readLogHead } from './log-head.ts';

/** Both heads stand in the first lines [characters]. */
const LOOKED_AT = 10_000;

/**
 * What a table of text is by its head: `weather` where it has sun, or air with other measures of the weather; `log`
 * where it has a probe in the store; null where it could be neither or either. Never throws.
 */
export function whatTable(text: string): 'weather' | 'log' | null {
  if (isTmy3(text)) return 'weather';
  const problems = new ProblemList();
  const table = readTable(text.slice(0, LOOKED_AT), 0, problems);
  if (!table) return null;
  const cells = splitLine(table.lines[0].text, table.separator);
  const measures = measuresNamed(cells);
  if (measures.some((each) => each === 'sun' || each === 'direct')) return 'weather';
  const { probes } = readLogHead(cells, Number.POSITIVE_INFINITY, '', problems);
  if (probes.length > 0) return 'log';
  return measures.length > 1 ? 'weather' : null;
}
