/** A moved grip as edits of the scenario file, in the units of the reader: 1/4 in of a tape or whole millimetres. */
import type { WallLayer } from '../../parts/description.ts';
import { CLEAR_M } from '../../physics/coil-outside.ts';
import { formatQuantity, formatTape, type UnitSystem } from '../../quantity/index.ts';
import type { Scenario } from '../../scenario/index.ts';
import type { Edit } from '../edit.ts';
import type { SectionFacts } from './facts.ts';
import { FIRST_SHEET, type Grip, moved } from './grips.ts';

type Sheets = NonNullable<NonNullable<Scenario['store']['insulation']>['sides']>;

/** Edits that put a grip of the given plant, whose file the scenario is, to a value [m]. */
export function gripEdits(
  scenario: Scenario,
  facts: SectionFacts,
  grip: Grip,
  value_m: number,
  system: UnitSystem,
): Edit[] {
  switch (grip.what) {
    case 'water':
      return [{ path: 'store.water_depth', value: lengthText(value_m, system) }];
    case 'sheet':
      return sheetEdits(scenario, facts, grip, value_m, system);
    case 'coil':
      return coilEdits(scenario, facts, grip, value_m, system);
  }
}

function coilEdits(
  scenario: Scenario,
  facts: SectionFacts,
  grip: Extract<Grip, { what: 'coil' }>,
  value_m: number,
  system: UnitSystem,
): Edit[] {
  const at = `coils[${grip.coil}]`;
  const raw = scenario.coils?.[grip.coil];
  const after = moved(facts, grip, value_m).coils[grip.coil];
  const limit = () => ({ path: `${at}.to`, value: lengthText(after.limit_m ?? value_m, system) });
  if (grip.end === 'bottom') {
    const from = { path: `${at}.from`, value: lengthText(value_m, system) };
    return raw?.to === undefined || after.stretched ? [from] : [from, limit()];
  }
  if (after.stretched) return [limit()];
  const gap_m = after.pitch_m - after.tube.outside_diameter_m;
  return [
    { path: `${at}.pitch`, value: fineText(after.pitch_m, system) },
    // The word decides how much neighbouring turns stand in each other's way: the nearest one holds.
    { path: `${at}.spacing`, value: spacingFor(gap_m) },
    ...(raw?.to === undefined ? [] : [limit()]),
  ];
}

/** The word whose usual gap between turns [m] is nearest. */
function spacingFor(gap_m: number): keyof typeof CLEAR_M {
  const words = Object.keys(CLEAR_M) as (keyof typeof CLEAR_M)[];
  const off = (word: keyof typeof CLEAR_M) => Math.abs(CLEAR_M[word] - gap_m);
  return words.reduce((best, word) => (off(word) < off(best) ? word : best));
}

function sheetEdits(
  scenario: Scenario,
  { store }: SectionFacts,
  { face, sheet: index }: Extract<Grip, { what: 'sheet' }>,
  value_m: number,
  system: UnitSystem,
): Edit[] {
  const sheets = store.insulation[face];
  const written = scenario.store.insulation?.[face];
  const path = `store.insulation.${face}`;
  const thickness = lengthText(value_m, system);
  // A face that the file leaves out, or leaves bare, gets its own list first.
  if (written === undefined || sheets.length === 0) {
    return [{ path, value: ownSheets(scenario, sheets, index, thickness, value_m, system) }];
  }
  const edits = [{ path: `${path}[${index}].thickness`, value: thickness }];
  if (written[index].resistance === undefined) return edits;
  const value = scaledLabel(sheets[index], value_m, system);
  return [...edits, { path: `${path}[${index}].resistance`, value }];
}

/** The sheets that hold by default, written out, with one of them of another thickness. */
function ownSheets(
  scenario: Scenario,
  sheets: readonly WallLayer[],
  index: number,
  thickness: string,
  value_m: number,
  system: UnitSystem,
): Sheets {
  if (sheets.length === 0) return [{ material: FIRST_SHEET, thickness }];
  // By default bottom and lid are as the sides, labels of resistance included.
  const like = scenario.store.insulation?.sides;
  return sheets.map((sheet, i) => {
    const raw = like?.[i] ?? { material: sheet.material, thickness: fineText(sheet.thickness_m, system) };
    if (i !== index) return raw;
    const label = raw.resistance === undefined ? {} : { resistance: scaledLabel(sheet, value_m, system) };
    return { ...raw, thickness, ...label };
  });
}

/** A sheet's labelled resistance at another thickness [m]. */
function scaledLabel(sheet: WallLayer, value_m: number, system: UnitSystem): string {
  const resistance = (sheet.resistance_m2K_W * value_m) / sheet.thickness_m;
  return formatQuantity(resistance, 'resistance', system, { plain: true });
}

/** A length [m] as a tape shows it, or in whole millimetres. */
function lengthText(value_m: number, system: UnitSystem): string {
  return system === 'SI' ? `${Math.round(value_m * 1000)} mm` : formatTape(value_m);
}

/** A length [m] that was computed, not read off a tape. */
function fineText(value_m: number, system: UnitSystem): string {
  return system === 'SI'
    ? `${Number((value_m * 1000).toPrecision(6))} mm`
    : `${Number((value_m / 0.0254).toPrecision(6))} in`;
}
