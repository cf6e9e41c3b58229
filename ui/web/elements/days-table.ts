/** The Days panel for those who rather read rows, or have them read. */
import { html, type TemplateResult } from 'lit';
import { momentWords, storeWords, type Units } from '../../words/index.ts';
import { streamsOf } from '../app/days-data.ts';
import { daysTable } from '../app/days-table.ts';
import type { Shown } from '../app/page-state.ts';
import { pageWords, weekdayWords } from '../app/page-words.ts';
import { powerWords, quantityWords } from '../app/screen-units.ts';

export function daysTableView({ result, firstWeekday }: Shown, units: Units): TemplateResult {
  const streams = streamsOf(result.series);
  const { step_s, rows } = daysTable(result.series, result.days);
  const temperature = (value_C: number) => quantityWords('outlet_C', value_C, units);
  return html`<div class="scrolls tall" tabindex="0" role="group" aria-labelledby="days-table-title">
    <table class="days-table">
      <caption id="days-table-title">
        ${pageWords.tableCaption(step_s)}
      </caption>
      <thead>
        <tr>
          <th scope="col">${pageWords.until}</th>
          <th scope="col">${storeWords.top}</th>
          <th scope="col">${storeWords.middle}</th>
          <th scope="col">${storeWords.bottom}</th>
          ${streams.map(({ key }) => html`<th scope="col">${pageWords.streams[key]}</th>`)}
          <th scope="col">${pageWords.ranCold}</th>
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          (row) =>
            html`<tr>
              <th scope="row">
                ${weekdayWords(firstWeekday, row.time_s)} ${momentWords(result.first_day, row.time_s)}
              </th>
              <td>${temperature(row.top_C)}</td>
              <td>${temperature(row.middle_C)}</td>
              <td>${temperature(row.bottom_C)}</td>
              ${streams.map(({ key }) => html`<td>${powerWords(row.heat_W[key], units)}</td>`)}
              <td>${row.cold_s > 0 ? quantityWords('cold_draw_s', row.cold_s, units) : ''}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
