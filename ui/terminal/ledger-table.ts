/** The ledger as a table: kWh, kBtu and the share of what passed through. */
import type { Ledger } from '../../sim/index.ts';
import { ledgerSideWords, ledgerTotalWords, ledgerWords } from '../words/index.ts';
import { paint, type Screen } from './screen.ts';
import { tableLines } from './table.ts';

const J_per_kWh = 3.6e6;
// NIST SP 811, table 8: the International Table Btu, 1055.056 J.
const J_per_kBtu = 1.055056e6;

/** Paths below this share of the throughput print as zeros only; they are left to the JSON. */
const leastShare = 0.0005;

export function ledgerLines(ledger: Ledger, screen: Screen): string[] {
  const { throughput_J, stored_change_J } = ledger;
  const row = (label: string, energy_J: number, indent = '  ') => [
    indent + label,
    decimals(energy_J / J_per_kWh),
    decimals(energy_J / J_per_kBtu),
    throughput_J > 0 ? `${((100 * energy_J) / throughput_J).toFixed(1)} %` : '',
  ];
  const side = (which: keyof typeof ledgerSideWords) =>
    ledger.paths
      .filter((path) => path.side === which && Math.abs(path.energy_J) >= leastShare * throughput_J)
      .sort((a, b) => Math.abs(b.energy_J) - Math.abs(a.energy_J));
  const total = (which: keyof typeof ledgerSideWords) =>
    ledger.paths.filter((path) => path.side === which).reduce((sum, path) => sum + path.energy_J, 0);
  const rowsOf = (which: keyof typeof ledgerSideWords) =>
    side(which).map(({ key, energy_J }) => row(wordsOf(key), energy_J));

  const rows = [
    ['', 'kWh', 'kBtu', 'share'],
    [ledgerSideWords.in],
    ...rowsOf('in'),
    row(ledgerTotalWords.allIn, total('in'), ''),
    [ledgerSideWords.out],
    ...rowsOf('out'),
    row(ledgerTotalWords.allOut, total('out'), ''),
    row(
      stored_change_J >= 0 ? ledgerTotalWords.stored : ledgerTotalWords.unstored,
      Math.abs(stored_change_J),
      '',
    ),
  ];
  const inside = rowsOf('inside');
  if (inside.length > 0) rows.push([ledgerSideWords.inside], ...inside);
  return [
    paint(screen, 'bold', ledgerTotalWords.title),
    ...tableLines(rows, ['left', 'right', 'right', 'right']),
    residualLine(ledger),
  ];
}

/** How well the balance closes; a residual too small for decimals is said as a bound. */
function residualLine({ residual_percent, throughput_J }: Ledger): string {
  const percent =
    residual_percent < 0.0001 ? 'less than 0.0001 %' : `${Number(residual_percent.toPrecision(2))} %`;
  return `${ledgerTotalWords.residual}: ${percent} of ${decimals(throughput_J / J_per_kWh)} kWh that passed through.`;
}

function wordsOf(key: string): string {
  return Object.hasOwn(ledgerWords, key) ? ledgerWords[key as keyof typeof ledgerWords] : key;
}

function decimals(value: number): string {
  return value.toFixed(Math.abs(value) >= 1000 ? 0 : 1);
}
