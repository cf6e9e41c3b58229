/** The scaled drawing in lines of text: what a builder reads beside it, and all there is for who cannot see it. */
import {
  filledWeight,
  type SectionFacts,
  type SketchedCoil,
  windingTurns,
  woundTop,
} from '../../sim/index.ts';
import { fromSim } from './from-sim.ts';
import { nameText } from './input-text.ts';
import { counted, formFor } from './locale.ts';
import { coilLetter, misfitFix, misfitText, tapeText } from './section.ts';
import { quantityText, type Units } from './units.ts';

export interface LegendLine {
  /** What the line stands beside in the drawing: a coil's letter or a probe's number; empty for the rest. */
  mark: string;
  title: string;
  text: string;
  /** Something does not fit. */
  wrong?: true;
}

type Store = SectionFacts['store'];

/** How much fits below the water line, and what it weighs with the coils in it. */
export function waterLine({ store, coils }: Pick<SectionFacts, 'store' | 'coils'>, units: Units): string {
  const { to_line_m3, filled_kg } = filledWeight(store, coils);
  return `${quantityText(to_line_m3, 'volume', units)}, filled ${quantityText(filled_kg, 'mass', units)}`;
}

export function storeLine({ shape, wall, liner }: Store, units: Units): string {
  const tape = (value_m: number) => tapeText(value_m, units);
  const inside =
    shape.kind === 'box'
      ? `${tape(shape.length_m)} long, ${tape(shape.width_m)} wide, ${tape(shape.height_m)} high inside`
      : shape.kind === 'upright cylinder'
        ? `${tape(shape.diameter_m)} across, ${tape(shape.height_m)} high inside`
        : `lying, ${tape(shape.diameter_m)} across, ${tape(shape.length_m)} long inside, drawn across its end`;
  const lined = liner ? `, ${fromSim(liner.material)} liner` : '';
  return `${inside}; ${tape(wall.thickness_m)} ${fromSim(wall.material)}${lined}`;
}

function sheetsLine(sheets: Store['insulation']['sides'], units: Units): string {
  if (sheets.length === 0) return 'bare';
  const all = sheets.map(
    ({ material, thickness_m }) => `${tapeText(thickness_m, units)} of ${fromSim(material)}`,
  );
  const resistance = sheets.reduce((sum, sheet) => sum + sheet.resistance_m2K_W, 0);
  return `${all.join(', ')}: ${quantityText(resistance, 'resistance', units, { digits: 2 })}`;
}

export function coilLine(coil: SketchedCoil, units: Units): string {
  const tape = (value_m: number) => tapeText(value_m, units);
  const roll = quantityText(coil.roll_length_m, 'length', units);
  const rolls = coil.rolls > 1 ? `${coil.rolls} × ${roll} in ${fromSim(coil.join)}` : roll;
  const turns = Math.round(windingTurns(coil) * coil.side_by_side * 10) / 10;
  const wound = coil.side_by_side > 1 ? `, in ${counted(coil.side_by_side, 'winding')}` : '';
  return [
    `${rolls} of ${fromSim(coil.tube.label)}`,
    `${counted(turns, 'turn')} ${tape(coil.pitch_m)} apart, ${tape(coil.coil_diameter_m)} across${wound}`,
    `from ${tape(coil.bottom_m)} to ${tape(woundTop(coil))} up, in at the ${fromSim(coil.fed_from)}`,
  ].join('; ');
}

/** What is felt at a probe. */
export function probeLine(
  what: 'engine' | 'collector' | 'limit',
  height_m: number,
  { engine, collector }: SectionFacts,
  units: Units,
): string {
  const at = `${tapeText(height_m, units)} up`;
  const temperature = (value_C: number) => quantityText(value_C, 'temperature', units);
  if (what === 'engine' && engine?.runs.kind === 'call for heat') {
    return `${at}; the engine starts below ${temperature(engine.runs.below_C)} and stops at ${temperature(engine.runs.until_C)}`;
  }
  if (!collector) return at;
  if (what === 'limit')
    return `at the top; the collector’s pump stays off above ${temperature(collector.high_limit_C)}`;
  const lead = (value_K: number) => quantityText(value_K, 'temperature_difference', units);
  return `${at}; the collector’s pump starts ${lead(collector.on_K)} above it and stops at ${lead(collector.off_K)}`;
}

/** Lines on the coils, each with what does not fit about it. */
export function coilLines({ store, coils }: SectionFacts, units: Units): LegendLine[] {
  return coils.flatMap((coil, i) => {
    const mark = coilLetter(i);
    const line: LegendLine = { mark, title: `Coil ${coil.name}`, text: coilLine(coil, units) };
    const misfit = misfitText(coil, store);
    if (misfit === null) return [line];
    return [line, { mark, title: 'Does not fit', text: `${misfit}. ${misfitFix(coil, store)}`, wrong: true }];
  });
}

const faces = [
  ['sides', 'Sides'],
  ['bottom', 'Bottom'],
  ['lid', 'Lid'],
] as const;

export function storeLines({ store, coils }: SectionFacts, units: Units): LegendLine[] {
  const lying = store.shape.kind === 'lying cylinder';
  const insulation = faces.flatMap(([face, title]) => {
    if (lying && face === 'bottom') return [];
    const lid = face === 'lid' && store.lid !== 'closed' ? `${fromSim(store.lid)}; ` : '';
    if (face === 'lid' && store.lid === 'open') return [{ mark: '', title, text: 'none: the store is open' }];
    return [{ mark: '', title, text: lid + sheetsLine(store.insulation[face], units) }];
  });
  return [
    { mark: '', title: 'Store', text: storeLine(store, units) },
    {
      mark: '',
      title: 'Water',
      text: `${tapeText(store.water_depth_m, units)} deep: ${waterLine({ store, coils }, units)}`,
    },
    ...insulation,
  ];
}

/** The drawing in a sentence, for those who do not see it. */
export function sectionSentence(
  { store, coils, engine, collector, taps }: SectionFacts,
  units: Units,
): string {
  const coil = (each: SketchedCoil) =>
    `${each.name} from ${tapeText(each.bottom_m, units)} to ${tapeText(woundTop(each), units)}`;
  const hung =
    coils.length === 0
      ? 'no coil'
      : `${formFor(coils.length, { one: 'coil', other: 'coils' })} ${coils.map(coil).join(', ')}`;
  const outside = [
    ...[engine, collector].flatMap((machine) => (machine ? [nameText(machine.name)] : [])),
    ...(taps ? ['the household'] : []),
  ];
  const piped = outside.length === 0 ? '' : `; piped to ${outside.join(', ')}`;
  return `Section of the store to scale: ${waterLine({ store, coils }, units)}, ${tapeText(store.water_depth_m, units)} deep; ${hung}${piped}.`;
}
