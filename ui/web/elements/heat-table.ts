/** The flows of heat as rows: from where, to where, in both units, and their share of all there was to spend. */
import { html, type nothing, type TemplateResult } from 'lit';
import {
  bothEnergies,
  fixed,
  heatWords,
  ledgerSideWords,
  type Units,
  withDecimalSign,
} from '../../words/index.ts';
import type { HeatBalance, HeatFlow } from '../app/heat-flows.ts';
import { unbroken } from '../app/screen-units.ts';

/** A flow below this share of all heat is left out of the table, not out of the sums. */
export const leastShare = 0.0005;
/** Below this a residual's digits are those of single-precision samples, not of the plant. */
const leastResidual_percent = 0.01;

export function heatTable(balance: HeatBalance, units: Units): TemplateResult {
  const { flows, in_J, out_J, stored_J, residual_J, spent_J } = balance;
  const { head, long } = heatWords;
  const percent = (energy_J: number) => `${fixed((100 * energy_J) / spent_J, 1)}\u00a0%`;
  const cells = (energy_J: number) =>
    html`<td>${unbroken(bothEnergies(energy_J, units))}</td>
      <td>${percent(energy_J)}</td>`;
  const total = (words: string, energy_J: number) =>
    html`<tr class="total">
      <th scope="row">${words}</th>
      ${cells(energy_J)}
    </tr>`;
  const rows = (side: HeatFlow['side']) =>
    flows
      .filter((flow) => flow.side === side && flow.energy_J >= leastShare * spent_J)
      .map(
        ({ from, to, energy_J }) =>
          html`<tr>
            <th scope="row">${heatWords.path(long[from], long[to])}</th>
            ${cells(energy_J)}
          </tr>`,
      );
  const group = (words: string, body: (TemplateResult | TemplateResult[] | typeof nothing)[]) =>
    html`<tbody>
      <tr class="side"><th scope="rowgroup" colspan="3">${words}</th></tr>
      ${body}
    </tbody>`;
  const rest = Math.abs((100 * residual_J) / spent_J);
  return html`<div class="scrolls" tabindex="0" role="group" aria-labelledby="heat-table-title">
    <table class="heat-table">
      <caption id="heat-table-title">${heatWords.caption}</caption>
      <thead>
        <tr>
          <th scope="col">${head.path}</th>
          <th scope="col">${head.energy}</th>
          <th scope="col">${head.share}</th>
        </tr>
      </thead>
      ${group(ledgerSideWords.in, [rows('in'), total(heatWords.allIn, in_J)])}
      ${group(ledgerSideWords.out, [rows('out'), total(heatWords.allOut, out_J)])}
      ${group(heatWords.held, [
        rows('held'),
        total(stored_J < 0 ? heatWords.lost : heatWords.gained, Math.abs(stored_J)),
        html`<tr class="residual">
          <th scope="row">${heatWords.residual}</th>
          <td></td>
          <td>${rest < leastResidual_percent ? heatWords.under(leastResidual_percent) : withDecimalSign(`${rest.toPrecision(2)} %`)}</td>
        </tr>`,
      ])}
      ${group(ledgerSideWords.inside, [rows('inside')])}
    </table>
  </div>`;
}
