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
import { wrap } from './text.ts';
import { columnUnit } from './units.ts';

const kWh = columnUnit('energy', 'SI');
const kBtu = columnUnit('energy', 'US');

/** Paths below this share print as zeros only; they are left to the JSON. */
const leastShare = 0.0005;

type Side = keyof typeof ledgerSideWords;
type Path = Ledger['paths'][number];

/** What came in and what the store gave up; what went out and what the store took up comes to as much. */
export function ledgerLines(ledger: Ledger, screen: Screen): string[] {
  const { stored_change_J, residual_J } = ledger;
  const paths = ledger.paths.flatMap((path) => fromColdUp(path, ledger)).map(forwards);
  const totalOf = (side: Side) =>
    paths.filter((path) => path.side === side).reduce((sum, path) => sum + path.energy_J, 0);
  const allIn_J = totalOf('in');
  const allOut_J = totalOf('out');
  const spent_J = allIn_J + Math.max(0, -stored_change_J);
  const row = (label: string, energy_J: number): string[] => [
    label,
    decimals(kWh.of(energy_J)),
    decimals(kBtu.of(energy_J)),
    spent_J > 0 ? `${fixed((100 * energy_J) / spent_J, 1)} %` : '',
  ];
  const rowsOf = (side: Side) =>
    paths
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
    residualLine(residual_J, spent_J),
    ...wrap(ledgerTotalWords.base, screen.width),
  ];
}

/** Water is counted from the cold it comes with, not from freezing: what came in cold is no heat to spend. */
function fromColdUp(path: Path, { paths }: Ledger): Path[] {
  if (path.key === 'household_cold_in') return [];
  const cold_J = paths.find(({ key }) => key === 'household_cold_in')?.energy_J ?? 0;
  return [path.key === 'household_to_taps' ? { ...path, energy_J: path.energy_J - cold_J } : path];
}

/** What ran backwards on the whole came in instead of going out, or went out. */
function forwards(path: Path): Path {
  if (path.energy_J >= 0 || path.side === 'inside') return path;
  return { ...path, energy_J: -path.energy_J, side: path.side === 'in' ? 'out' : 'in' };
}

/** How well the balance closes; a residual too small for decimals is said as a bound. */
function residualLine(residual_J: number, spent_J: number): string {
  const part = spent_J > 0 ? (100 * Math.abs(residual_J)) / spent_J : 0;
  const percent = part < 0.0001 ? reportWords.leastResidual : `${numberText(Number(part.toPrecision(2)))} %`;
  return reportWords.residual(
    ledgerTotalWords.residual,
    percent,
    `${decimals(kWh.of(spent_J))} ${kWh.symbol}`,
  );
}

function wordsOf(key: string): string {
  return Object.hasOwn(ledgerWords, key) ? ledgerWords[key as keyof typeof ledgerWords] : key;
}

function decimals(value: number): string {
  return fixed(value, Math.abs(value) >= 1000 ? 0 : 1);
}
