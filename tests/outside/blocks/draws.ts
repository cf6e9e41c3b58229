import { EU_PROFILES, type EuRow, US_PATTERNS, type UsRow } from '../../../sim/scenario/patterns.ts';
import type { Block, Check } from '../checks.ts';

/** Published days of draws: the rows as kept, and their sums. */
export const draws: Block = {
  name: 'draws',
  atLeast: 759,
  answers: {
    'draw.doe.': (check) => {
      const rows: readonly UsRow[] = US_PATTERNS[US_NAMES[lastWord(check)]];
      return { draws: rows, total_gal: rows.reduce((sum, [, gal]) => sum + gal, 0) };
    },
    'draw.eu.': (check) => {
      const rows = profile(lastWord(check));
      return { rows, Qref_kWh: total(rows) };
    },
    'draw.eu.Qref': () => Object.fromEntries(EU_SIZES.map((size) => [size, total(profile(size))])),
  },
};

const US_NAMES: Record<string, keyof typeof US_PATTERNS> = {
  very_small: 'US very small use',
  low: 'US low use',
  medium: 'US medium use',
  high: 'US high use',
};
const EU_SIZES = ['XS', 'S', 'M', 'L', 'XL', 'XXL'];

function lastWord(check: Check): string {
  return check.id.slice(check.id.lastIndexOf('.') + 1);
}

function profile(size: string): readonly EuRow[] {
  return EU_PROFILES[`EU profile ${size}` as keyof typeof EU_PROFILES];
}

/** Sum of a profile's energies [kWh], rounded to the Wh the rows are stated in. */
function total(rows: readonly EuRow[]): number {
  return Math.round(1000 * rows.reduce((sum, [, kWh]) => sum + kWh, 0)) / 1000;
}
