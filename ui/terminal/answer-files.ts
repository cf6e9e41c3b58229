/** An answer for other programs: JSON in SI, and its main table as CSV with units in the head. */
import type { Answer, Column, Table } from '../../sim/index.ts';
import { csvCell, inColumn, type Say } from '../words/index.ts';

/** The answer with the scenario's name; `more` stands beside them. */
export function answerJson(name: string, answer: Answer, more: Record<string, unknown> = {}): string {
  const lines = Object.entries({ name, ...more, ...answer })
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => `${JSON.stringify(key)}: ${JSON.stringify(value)}`);
  // One line a member, as of a run.
  return `{\n${lines.join(',\n')}\n}\n`;
}

export function tableCsv({ columns, rows }: Table, say: Say, currency: string): string {
  const heads = columns.map((column) => csvCell(headOf(column, say, currency)));
  const lines = rows.map((row) => row.map((cell, i) => csvCell(cellOf(cell, columns[i], say))).join(','));
  return `${[heads.join(','), ...lines].join('\n')}\n`;
}

/** `lowest_tank (F)`: the key without its own SI unit, which the head's replaces. */
function headOf({ key, dimension }: Column, say: Say, currency: string): string {
  if (dimension === 'money') return `${key} (${currency})`;
  if (dimension === 'text' || dimension === 'number' || dimension === 'month') return key;
  const unit = say.unit(dimension) || SI_UNITS[dimension];
  return unit === undefined ? key : `${key.replace(SI_AT_END, '')} (${unit})`;
}

/** Units a key may end with. */
const SI_AT_END = /_(C|K|W_K|W|J|m3_s|m3|m2|m|Pa|kg|m_s|s)$/;
/** What has no column unit of its own stays in SI. */
const SI_UNITS: Partial<Record<Column['dimension'], string>> = { conductance: 'W/K', clock: 's' };

function cellOf(cell: number | string | null, { dimension }: Column, say: Say): number | string | null {
  if (typeof cell !== 'number') return cell;
  const asIs =
    dimension === 'text' || dimension === 'money' || dimension === 'number' || dimension === 'month';
  return asIs ? cell : inColumn(cell, dimension, say.units);
}
