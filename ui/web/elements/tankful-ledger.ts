/** Where the heat goes: each path's energy, what stayed in the store, and what the sum leaves over. */
import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { formatQuantity, type Ledger, type LedgerPath } from '../../../sim/index.ts';
import { ledgerSideWords, ledgerTotalWords, ledgerWords, type UnitSystem } from '../../words/index.ts';
import { LightElement } from './light-element.ts';

const sides = ['in', 'out', 'inside'] as const;

@customElement('tankful-ledger')
export class TankfulLedger extends LightElement {
  @property({ attribute: false }) ledger!: Ledger;
  @property({ attribute: false }) units: UnitSystem = 'US';

  override render(): TemplateResult {
    const { paths, stored_change_J, residual_J, residual_percent, throughput_J } = this.ledger;
    const total = (side: LedgerPath['side']) =>
      paths.filter((path) => path.side === side).reduce((sum, { energy_J }) => sum + energy_J, 0);
    const stored = stored_change_J < 0 ? ledgerTotalWords.unstored : ledgerTotalWords.stored;
    return html`
      <section class="panel" aria-labelledby="ledger-title">
        <h2 id="ledger-title">${ledgerTotalWords.title}</h2>
        <div class="scrolls" tabindex="0" role="group" aria-labelledby="ledger-title">
          <table class="ledger">
            <thead>
              <tr>
                <th scope="col">Path</th>
                <th scope="col">Energy</th>
                <th scope="col">Share</th>
              </tr>
            </thead>
            ${sides.map((side) => {
              const rows = paths.filter((path) => path.side === side && path.energy_J !== 0);
              return html`<tbody>
                <tr class="side">
                  <th scope="rowgroup" colspan="3">${ledgerSideWords[side]}</th>
                </tr>
                ${rows.map(({ key, energy_J }) => this.row(pathWords(key), energy_J, throughput_J))}
                ${side === 'in' ? this.row(ledgerTotalWords.allIn, total('in'), throughput_J, 'total') : ''}
                ${
                  side === 'out'
                    ? html`${this.row(ledgerTotalWords.allOut, total('out'), throughput_J, 'total')}
                    ${this.row(stored, Math.abs(stored_change_J), throughput_J, 'total')}
                    <tr class="total residual">
                      <th scope="row">${ledgerTotalWords.residual}</th>
                      <td>${formatQuantity(residual_J, 'energy', this.units)}</td>
                      <td>${residual_percent.toPrecision(1)} %</td>
                    </tr>`
                    : ''
                }
              </tbody>`;
            })}
          </table>
        </div>
      </section>
    `;
  }

  private row(words: string, energy_J: number, throughput_J: number, name = ''): TemplateResult {
    const share = throughput_J > 0 ? `${((100 * energy_J) / throughput_J).toFixed(1)} %` : '';
    return html`<tr class=${name}>
      <th scope="row">${words}</th>
      <td>${formatQuantity(energy_J, 'energy', this.units)}</td>
      <td>${share}</td>
    </tr>`;
  }
}

function pathWords(key: string): string {
  return ledgerWords[key as keyof typeof ledgerWords] ?? key;
}
