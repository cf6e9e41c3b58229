/** Where the heat goes: each path's energy, what stayed in the store, and what the sum leaves over. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Ledger, LedgerPath } from '../../../sim/index.ts';
import {
  ledgerSideWords,
  ledgerTotalWords,
  ledgerWords,
  quantityText,
  type Units,
} from '../../words/index.ts';
import { pageWords } from '../app/page-words.ts';
import { LightElement } from './light-element.ts';

/** A path that carried less than this share of all heat is left out of the table, not out of the sums. */
const leastShare = 0.0005;
/** Below this a residual's digits are those of the arithmetic, not of the plant. */
const leastResidual_percent = 0.0001;

@customElement('tankful-ledger')
export class TankfulLedger extends LightElement {
  @property({ attribute: false }) ledger!: Ledger;
  @property({ attribute: false }) units: Units = 'US';

  override render(): TemplateResult {
    const { stored_change_J, residual_percent } = this.ledger;
    const { path, energy, share } = pageWords.ledgerHead;
    return html`
      <section class="panel" aria-labelledby="ledger-title">
        <h2 id="ledger-title">${ledgerTotalWords.title}</h2>
        <div class="scrolls" tabindex="0" role="group" aria-labelledby="ledger-title">
          <table class="ledger">
            <thead>
              <tr>
                <th scope="col">${path}</th>
                <th scope="col">${energy}</th>
                <th scope="col">${share}</th>
                <td class="bar"></td>
              </tr>
            </thead>
            ${this.side('in', [
              this.row(ledgerTotalWords.allIn, this.total('in'), 'total'),
              stored_change_J < 0 ? this.row(ledgerTotalWords.unstored, -stored_change_J, 'store') : nothing,
            ])}
            ${this.side('out', [
              this.row(ledgerTotalWords.allOut, this.total('out'), 'total'),
              stored_change_J >= 0 ? this.row(ledgerTotalWords.stored, stored_change_J, 'store') : nothing,
              html`<tr class="residual">
                <th scope="row">${ledgerTotalWords.residual}</th>
                <td></td>
                <td>
                  ${
                    residual_percent < leastResidual_percent
                      ? pageWords.leastResidual
                      : `${residual_percent.toPrecision(2)} %`
                  }
                </td>
                <td class="bar"></td>
              </tr>`,
            ])}
            ${this.side('inside', [])}
          </table>
        </div>
      </section>
    `;
  }

  private side(side: LedgerPath['side'], totals: (TemplateResult | typeof nothing)[]): TemplateResult {
    const rows = this.ledger.paths
      .filter((path) => path.side === side && Math.abs(path.energy_J) >= leastShare * this.spent)
      .sort((a, b) => Math.abs(b.energy_J) - Math.abs(a.energy_J));
    return html`<tbody class=${side}>
      <tr class="side">
        <th scope="rowgroup" colspan="4">${ledgerSideWords[side]}</th>
      </tr>
      ${rows.map(({ key, energy_J }) => this.row(pathWords(key), energy_J))} ${totals}
    </tbody>`;
  }

  private row(words: string, energy_J: number, name = ''): TemplateResult {
    const share = this.spent > 0 ? energy_J / this.spent : 0;
    const long = Math.min(100, Math.abs(100 * share));
    return html`<tr class=${name}>
      <th scope="row">${words}</th>
      <td>${quantityText(energy_J, 'energy', this.units)}</td>
      <td>${(100 * share).toFixed(1)} %</td>
      <td class="bar" aria-hidden="true"><span style="width:${long.toFixed(1)}%"></span></td>
    </tr>`;
  }

  private total(side: LedgerPath['side']): number {
    return this.ledger.paths
      .filter((path) => path.side === side)
      .reduce((sum, { energy_J }) => sum + energy_J, 0);
  }

  /** What came in and what the store gave up: as much as went out and stayed. Shares are of this. */
  private get spent(): number {
    return this.total('in') + Math.max(0, -this.ledger.stored_change_J);
  }
}

function pathWords(key: string): string {
  return Object.hasOwn(ledgerWords, key) ? ledgerWords[key as keyof typeof ledgerWords] : key;
}
