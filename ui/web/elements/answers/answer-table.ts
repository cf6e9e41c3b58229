/** A table of an answer, as its words have it. */
import { html, nothing, type TemplateResult } from 'lit';
import { type Answer, type Column, printedSymbol } from '../../../../sim/index.ts';
import {
  answerViewWords,
  columnNames,
  type RowByKey,
  rowsOf,
  type Say,
  type ShownColumn,
  type ShownTable,
  shownColumns,
} from '../../../words/index.ts';

/** @param input how the page names the input at a path */
export function answerTable(
  answer: Answer,
  shown: ShownTable,
  say: Say,
  input: (path: string) => TemplateResult,
): TemplateResult | typeof nothing {
  const present = answer.tables[shown.key]?.present ?? null;
  const rows = rowsOf(answer, shown.key)
    .map((row, i) => ({ row, isPresent: i === present }))
    .filter(({ row }) => shown.rows?.(row) ?? true);
  if (rows.length === 0) return nothing;
  const [first, ...others] = shownColumns(shown, answer, say);
  const title = shown.title(answer, say);
  const content = ({ cell, isPath }: ShownColumn, row: RowByKey) =>
    isPath ? input(cell(row, say)) : cell(row, say);
  const head = ([name, unit]: [string, string], left: ShownColumn['left']) =>
    html`<th scope="col" class=${left ? 'words' : nothing}>${name} ${unit === '' ? nothing : html`<span class="unit">${printedSymbol(unit)}</span>`}</th>`;
  return titledTable(
    title,
    html`<table class="answer-table" aria-label=${title}>
      <thead>
        <tr>
          ${[first, ...others].map((column) => head(column.head(say), column.left))}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ({ row, isPresent }) =>
            html`<tr class=${isPresent ? 'present' : nothing}>
              <th scope="row">
                ${isPresent ? html`<span aria-hidden="true">&gt; </span>` : nothing}${content(first, row)}
                ${isPresent ? html`<span class="unseen">(${answerViewWords.presentRow})</span>` : nothing}
              </th>
              ${others.map(
                (column) => html`<td class=${column.left ? 'words' : nothing}>${content(column, row)}</td>`,
              )}
            </tr>`,
        )}
      </tbody>
    </table>`,
  );
}

/** A title that stays in sight while the table is scrolled sideways. */
export function titledTable(title: string, table: TemplateResult): TemplateResult {
  return html`<div>
    <h3>${title}</h3>
    <div class="scrolls" tabindex="0" role="group" aria-label=${title}>${table}</div>
  </div>`;
}

/** What a curve's axis measures. */
export function columnName({ key }: Column): string {
  return columnNames[key] ?? '';
}
