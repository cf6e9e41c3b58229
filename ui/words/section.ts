/** Words of the scaled drawing and of the list of parts. */
import type { Face, Grip, Misfit, SectionFacts, SketchedCoil } from '../../sim/index.ts';
import { misfitOf, waterVolume, woundTop } from '../../sim/index.ts';
import { fromSim } from './from-sim.ts';
import { nameText } from './input-text.ts';
import { counted } from './locale.ts';
import { inchesText, quantityText, systemOf, type Units } from './units.ts';

export const sectionWords = {
  title: 'Section',
  hint: 'Drag a handle, or move to it with the Tab key and use the arrow keys. Escape puts it back.',
  handles: 'Handles of the drawing',
  legend: 'The drawing in words',
  asAt: 'Water as at',
  /** "more insulation, sides", "lower water line". */
  gesture: (label: string, what: Grip['what'], more: boolean) => {
    const verb = what === 'sheet' ? (more ? 'more' : 'less') : more ? 'raise' : 'lower';
    return `${verb} ${label.charAt(0).toLowerCase()}${label.slice(1)}`;
  },
  in: 'in',
  out: 'out',
  top: 'top',
  middle: 'middle',
  bottom: 'bottom',
  pump: 'pump',
  check: 'check',
  relief: 'relief',
  mixer: 'mixer',
  heater: 'heater',
  vessel: 'vessel',
  drain: 'drain',
  probe: 'Probe',
  dashed: 'Dashed',
  drawing: 'Drawing',
  pinned: 'the pinned design',
  plan: 'Store, coils, walls and probes are to scale; pipes and machines outside are a plan. Each coil is drawn with the relief it needs, fitted or not.',
} as const;

/** A length off a tape, or in whole millimetres. */
export function tapeText(value_m: number, units: Units): string {
  return systemOf(units, 'length') === 'US' ? inchesText(value_m) : `${Math.round(value_m * 1000)} mm`;
}

/** Letters that tell coils apart in drawing and words. */
export function coilLetter(index: number): string {
  return String.fromCharCode(65 + index);
}

/** Turns to the nearest tenth. */
function turnsText(turns: number): string {
  return counted(Math.round(turns * 10) / 10, 'turn');
}

const faceWords: Record<Face, string> = { sides: 'Sides', bottom: 'Bottom', lid: 'Lid' };

/** What a handle moves. */
export function gripLabel(grip: Grip, { coils }: SectionFacts): string {
  switch (grip.what) {
    case 'water':
      return 'Water line';
    case 'sheet':
      return `Insulation, ${faceWords[grip.face].toLowerCase()}`;
    case 'coil':
      return `Coil ${coils[grip.coil].name}, ${grip.end}`;
  }
}

/** Where a handle stands: `32 in of water, 239 gal`. */
export function gripText(grip: Grip, facts: SectionFacts, units: Units): string {
  const { store, coils } = facts;
  switch (grip.what) {
    case 'water': {
      const volume = quantityText(waterVolume(store.shape, store.water_depth_m), 'volume', units);
      return `${tapeText(store.water_depth_m, units)} of water, ${volume}`;
    }
    case 'sheet':
      return sheetText(facts, grip, units);
    case 'coil': {
      const coil = coils[grip.coil];
      return grip.end === 'bottom' ? `starts ${tapeText(coil.bottom_m, units)} up` : endText(coil, units);
    }
  }
}

/** What does not fit while a handle stands where it does; empty where all fits. */
export function gripMisfit(grip: Grip, { store, coils }: SectionFacts): string {
  switch (grip.what) {
    case 'water': {
      const dry = coils.filter((coil) => misfitOf(coil, store)?.why === 'above the water');
      return dry.map(({ name }) => `coil ${name} stands out of it`).join('; ');
    }
    case 'sheet':
      return '';
    case 'coil':
      return misfitText(coils[grip.coil], store) ?? '';
  }
}

function endText(coil: SketchedCoil, units: Units): string {
  return `ends ${tapeText(woundTop(coil), units)} up, turns ${tapeText(coil.pitch_m, units)} apart`;
}

function sheetText(
  { store }: SectionFacts,
  { face, sheet }: Extract<Grip, { what: 'sheet' }>,
  units: Units,
): string {
  const found = store.insulation[face][sheet];
  if (!found) return 'bare';
  const resistance = quantityText(found.resistance_m2K_W, 'resistance', units, { digits: 2 });
  return `${tapeText(found.thickness_m, units)} of ${fromSim(found.material)}, ${resistance}`;
}

const misfitWhy: Record<Misfit, string> = {
  'above the water': 'stand out of the water',
  'above its limit': 'go past the height they are given',
  'wider than the store': 'are wider than the store is there',
};

const misfitShort: Record<Misfit, string> = {
  'above the water': 'out of the water',
  'above its limit': 'past their height',
  'wider than the store': 'too wide there',
};

/** `4 turns out of the water`, for inside the drawing; null where all fit. */
export function misfitBrief(coil: SketchedCoil, store: SectionFacts['store']): string | null {
  const misfit = misfitOf(coil, store);
  return misfit && `${turnsText(misfit.turns)} ${misfitShort[misfit.why]}`;
}

/** `4 of 10 turns stand out of the water`; null where all fit. */
export function misfitText(coil: SketchedCoil, store: SectionFacts['store']): string | null {
  const misfit = misfitOf(coil, store);
  if (!misfit) return null;
  const all = misfit.turns >= misfit.of - 0.5;
  const count = all ? `all ${turnsText(misfit.of)}` : `${misfit.turns} of ${turnsText(misfit.of)}`;
  return `${count} ${misfitWhy[misfit.why]}`;
}

/** What to do about turns that do not fit. */
export function misfitFix(coil: SketchedCoil, store: SectionFacts['store']): string {
  return misfitOf(coil, store)?.why === 'wider than the store'
    ? 'Wind it smaller, or hang it where the store is wider.'
    : 'Hang it lower, wind it wider or closer, put windings side by side, or use less tube.';
}

function wholeDegrees(value_C: number, units: Units): string {
  const inUS = systemOf(units, 'temperature') === 'US';
  return inUS ? `${Math.round(value_C * 1.8 + 32)} °F` : `${Math.round(value_C)} °C`;
}

/** Whose machine it is, as the file names it. */
export function machineName(user: 'engine' | 'collector' | 'household', facts: SectionFacts): string {
  if (user === 'household') return 'household';
  return nameText(facts[user]?.name ?? user);
}

/** What a builder wants to see of a machine at a glance; `brief` where there is little room. */
export function machineFacts(
  user: 'engine' | 'collector' | 'household',
  facts: SectionFacts,
  units: Units,
  brief: boolean,
): string {
  const { engine, collector, taps, supply } = facts;
  const parts: string[] = [];
  if (user === 'engine' && engine) {
    parts.push(
      `${quantityText(engine.rated_output_W, 'electric_power', units)} ${fromSim(engine.fuel.name)}`,
    );
    if (!brief) parts.push(`${quantityText(engine.thermostat_open_C, 'temperature', units)} thermostat`);
  }
  if (user === 'collector' && collector) {
    parts.push(
      collector.tubes === null
        ? `${quantityText(collector.area_m2, 'area', units)} flat`
        : `${collector.tubes} tubes`,
    );
    const tilt = quantityText(collector.tilt_rad, 'angle', units, { digits: 2 });
    parts.push(brief ? tilt : `tilt ${tilt}`);
  }
  if (user === 'household' && taps) {
    parts.push(quantityText(supply.pump.open_flow_m3_s, 'flow', units, brief ? { digits: 2 } : {}));
    if (!brief) parts.push(`cut-out ${quantityText(supply.pump.cut_out_Pa, 'pressure', units)}`);
    if (taps.mixing_valve_C !== null) parts.push(wholeDegrees(taps.mixing_valve_C, units));
  }
  return parts.join(', ');
}
