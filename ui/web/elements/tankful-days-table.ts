/** What the panels show of the window, for those who rather read rows, or have them read. */
import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { DimensionKey } from '../../../sim/index.ts';
import { daysWords, quantityText, type Units } from '../../words/index.ts';
import type { DaysData, DaysShown, HeatKey } from '../app/days-data.ts';
import { type DaysRow, daysTable } from '../app/days-table.ts';
import { momentTitle } from '../app/moments.ts';
import { powerWords } from '../app/screen-units.ts';
import type { TimeSpan } from '../charts/frame.ts';
import { LightElement } from './light-element.ts';

type Column = [head: string, cell: (row: DaysRow) => string];

@customElement('tankful-days-table')
export class TankfulDaysTable extends LightElement {
  @property({ attribute: false }) data!: DaysData;
  @property({ attribute: false }) shown!: DaysShown;
  @property({ attribute: false }) window!: TimeSpan;
  @property({ attribute: false }) units: Units = 'US';

  override render(): TemplateResult {
    const { shown, window, units } = this;
    const { series, heat, water, sun, tap } = this.data;
    const { step_s, rows } = daysTable(series, window);
    const each = step_s >= 86_400 ? 'day' : step_s === series.interval_s ? 'sample' : 'hour';
    const quantity = (dimension: DimensionKey, value: number) =>
      Number.isNaN(value) ? '' : quantityText(value, dimension, units);
    const { lines, streams } = daysWords;
    const columns: Column[] = [
      ...(['top', 'middle', 'bottom'] as const).map(
        (key): Column => [lines[key], (row) => quantity('temperature', row[`${key}_C`])],
      ),
      ...heat.streams.map(
        ({ key }): Column => [
          streams[key as HeatKey],
          (row) => powerWords(row.heat_W[key as HeatKey], units),
        ],
      ),
      ...(water ? [[daysWords.flow, (row) => quantity('flow', row.flow_m3_s)] as Column] : []),
      ...(tap ? [[daysWords.warmest, (row) => quantity('temperature', row.outlet_C)] as Column] : []),
      ...(sun ? [[lines.sun_W_m2, (row) => quantity('irradiance', row.sun_W_m2)] as Column] : []),
      [daysWords.rows.cold, (row) => (row.cold_s > 0 ? quantity('time', row.cold_s) : '')],
    ];
    return html`<div class="scrolls tall" tabindex="0" role="group" aria-labelledby="days-table-title">
      <table class="days-table">
        <caption id="days-table-title">
          ${daysWords.tableCaption(daysWords.row[each])}
        </caption>
        <thead>
          <tr>
            <th scope="col">${daysWords.until}</th>
            ${columns.map(([head]) => html`<th scope="col">${head}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            (row) =>
              html`<tr>
                <th scope="row">${momentTitle(shown, row.time_s)}</th>
                ${columns.map(([, cell]) => html`<td>${cell(row)}</td>`)}
              </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }
}
