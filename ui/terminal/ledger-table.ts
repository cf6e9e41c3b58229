/** The ledger as a table: kWh, kBtu and the share of all that was there to spend. */
import type { Ledger } from '../../sim/index.ts';
import {
  fixed,
  ledgerSideWords,
  ledgerTotalWords,
  ledgerWords,
  numberText,
  reportWords,
} from '../words/index.ts';
import { paint, type Screen } from './screen.ts';
import { tableLines } from './table.ts';
import { columnUnit } from './units.ts';

const kWh = columnUnit('energy', 'SI');
const kBtu = columnUnit('energy', 'US');

/** Paths below this share print as zeros only; they are left to the JSON. */
const leastShare = 0.0005;

type Side = keyof typeof ledgerSideWords;

/** What came in and what the store gave up; what went out and what the store took up comes to as much. */
export function ledgerLines(ledger: Ledger, screen: Screen): string[] {
  const { stored_change_J } = ledger;
  const allIn_J = totalOf(ledger, 'in');
  const allOut_J = totalOf(ledger, 'out');
  const spent_J = allIn_J + Math.max(0, -stored_change_J);
  const row = (label: string, energy_J: number): string[] => [
    label,
    decimals(kWh.of(energy_J)),
    decimals(kBtu.of(energy_J)),
    spent_J > 0 ? `${fixed((100 * energy_J) / spent_J, 1)} %` : '',
  ];
  const rowsOf = (side: Side) =>
    ledger.paths
      .filter((path) => path.side === side && Math.abs(path.energy_J) >= leastShare * spent_J)
      .sort((a, b) => Math.abs(b.energy_J) - Math.abs(a.energy_J))
      .map(({ key, energy_J }) => row(`  ${wordsOf(key)}`, energy_J));
  const stored = stored_change_J >= 0 ? [row(ledgerTotalWords.stored, stored_change_J)] : [];
  const unstored = stored_change_J < 0 ? [row(ledgerTotalWords.unstored, -stored_change_J)] : [];
  const inside = rowsOf('inside');
  const rows = [
    ['', kWh.symbol, kBtu.symbol, reportWords.share],
    [ledgerSideWords.in],
    ...rowsOf('in'),
    row(ledgerTotalWords.allIn, allIn_J),
    ...unstored,
    [ledgerSideWords.out],
    ...rowsOf('out'),
    row(ledgerTotalWords.allOut, allOut_J),
    ...stored,
    ...(inside.length > 0 ? [[ledgerSideWords.inside], ...inside] : []),
  ];
  return [
    paint(screen, 'bold', ledgerTotalWords.title),
    ...tableLines(rows, ['left', 'right', 'right', 'right']),
    residualLine(ledger),
  ];
}

function totalOf({ paths }: Ledger, side: Side): number {
  return paths.filter((path) => path.side === side).reduce((sum, path) => sum + path.energy_J, 0);
}

/** How well the balance closes; a residual too small for decimals is said as a bound. */
function residualLine({ residual_percent, throughput_J }: Ledger): string {
  const percent =
    residual_percent < 0.0001
      ? reportWords.leastResidual
      : `${numberText(Number(residual_percent.toPrecision(2)))} %`;
  const through = `${decimals(kWh.of(throughput_J))} ${kWh.symbol}`;
  return reportWords.residual(ledgerTotalWords.residual, percent, through);
}

function wordsOf(key: string): string {
  return Object.hasOwn(ledgerWords, key) ? ledgerWords[key as keyof typeof ledgerWords] : key;
}

function decimals(value: number): string {
  return fixed(value, Math.abs(value) >= 1000 ? 0 : 1);
}
