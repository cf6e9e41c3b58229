/** Where the heat goes, as numbers: the rows of its table, in both units. */
import { chartWords, heatWords, inColumn, ledgerSideWords, sayIn, type Units } from '../../../words/index.ts';
import type { HeatBalance, HeatFlow } from '../heat-flows.ts';
import { headOf, type Sheet } from './csv.ts';

/** `least`: flows of a smaller share are left out, as in the table. */
export function heatSheet(balance: HeatBalance, units: Units, least: number): Sheet {
  const { flows, in_J, out_J, stored_J, residual_J, spent_J } = balance;
  const { head, long } = heatWords;
  // The reader's own unit first.
  const systems = sayIn(units).unit('energy') === 'kWh' ? (['SI', 'US'] as const) : (['US', 'SI'] as const);
  const cells = (energy_J: number) => [
    ...systems.map((system) => inColumn(energy_J, 'energy', system)),
    (100 * energy_J) / spent_J,
  ];
  const rows = (side: HeatFlow['side'], group: string) =>
    flows
      .filter((flow) => flow.side === side && flow.energy_J >= least * spent_J)
      .map(({ from, to, energy_J }) => [group, heatWords.path(long[from], long[to]), ...cells(energy_J)]);
  const total = (group: string, words: string, energy_J: number) => [group, words, ...cells(energy_J)];
  return {
    head: [
      chartWords.group,
      head.path,
      ...systems.map((system) => headOf(head.energy, sayIn(system).unit('energy'))),
      headOf(head.share, '%'),
    ],
    rows: [
      ...rows('in', ledgerSideWords.in),
      total(ledgerSideWords.in, heatWords.allIn, in_J),
      ...rows('out', ledgerSideWords.out),
      total(ledgerSideWords.out, heatWords.allOut, out_J),
      ...rows('held', heatWords.held),
      total(heatWords.held, stored_J < 0 ? heatWords.lost : heatWords.gained, Math.abs(stored_J)),
      total(heatWords.held, heatWords.residual, residual_J),
      ...rows('inside', ledgerSideWords.inside),
    ],
  };
}
