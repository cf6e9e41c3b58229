/** Pieces of the build sheet. */
import { html, nothing, type TemplateResult } from 'lit';
import {
  type SheetBlock,
  type SheetCautions,
  severityWords,
  sheetCautionWords,
  sheetWords,
} from '../../../words/index.ts';
import { unbroken } from '../section/section-views.ts';

/** A title, then a table if there is one, then sentences. */
export function blockView({ key, title, lines, table }: SheetBlock): TemplateResult {
  return html`<section class="sheet-block ${key}">
    <h2>${title}</h2>
    ${table ? tableView(table, title) : nothing} ${lines.map((line) => html`<p>${unbroken(line)}</p>`)}
  </section>`;
}

/** In a frame of its own, that can be moved sideways where the page is narrow. */
export function tableView({ heads, rows }: NonNullable<SheetBlock['table']>, title: string): TemplateResult {
  return html`<div class="sheet-table" role="region" tabindex="0" aria-label=${title}>
    <table>
      <thead>
        <tr>
          ${heads.map((head) => (head === '' ? html`<td></td>` : html`<th scope="col">${head}</th>`))}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ([first, ...cells]) =>
            html`<tr>
              <th scope="row">${unbroken(first)}</th>
              ${cells.map((cell) => html`<td>${unbroken(cell)}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

export function answersView(sentences: readonly { title: string; sentence: string }[]): TemplateResult {
  return html`<section class="sheet-block answers-said">
    <h2>${sheetWords.answers}</h2>
    ${
      sentences.length === 0
        ? html`<p>${sheetWords.noAnswers}</p>`
        : sentences.map(
            ({ title, sentence }) => html`<p><strong>${title}.</strong> ${unbroken(sentence)}</p>`,
          )
    }
  </section>`;
}

export function cautionsView({ cause, standing }: SheetCautions): TemplateResult {
  return html`<section class="sheet-block cautions-said">
    <h2>${sheetCautionWords.title}</h2>
    <p class="lead">${sheetCautionWords.cause}</p>
    <ul>
      ${cause.map(
        ({ severity, title, text }) =>
          html`<li class=${severity}>
            <strong>${severityWords[severity]}: ${title}.</strong> ${unbroken(text)}
          </li>`,
      )}
    </ul>
    <p class="lead">${sheetCautionWords.standing}</p>
    <ul>
      ${standing.map(({ title, text }) => html`<li><strong>${title}.</strong> ${unbroken(text)}</li>`)}
    </ul>
  </section>`;
}
