/** Parts of a scenario file as things to add, double and take away: each as edits, or why it cannot be. */
import type { StoreDescription } from '../parts/description.ts';
import { CLEAR_M } from '../physics/coil-outside.ts';
import { findTube, type TubeStandard } from '../physics/tubes.ts';
import type { UnitSystem } from '../quantity/index.ts';
import { movedMarks, type Scenario } from '../scenario/index.ts';
import type { Edit } from './edit.ts';
import { narrowestWidth } from './section/facts.ts';

export const ADDABLE = ['coil', 'engine', 'collector', 'household', 'shower', 'draw', 'backup'] as const;
export type Addable = (typeof ADDABLE)[number];

/** Why a part cannot be added, doubled or taken away. */
export type Refusal =
  | { no: 'one of its kind' }
  | { no: 'always there' }
  | { no: 'in use'; by: 'engine' | 'collector' | 'taps' }
  | { no: 'heats for it' }
  | { no: 'nobody draws' }
  | { no: 'full'; most: number };

export interface PartChange {
  edits: Edit[];
  /** Path of the part to look at next. */
  opens: string;
}

type Coil = NonNullable<Scenario['coils']>[number];

const MOST = { coils: 8, showers: 50, draws: 200 };
const USERS = ['engine', 'collector', 'taps'] as const;

/** A new part of a kind, so made that the file stays sound; sources and household get a coil of their own. */
export function addition(
  scenario: Scenario,
  kind: Addable,
  store: StoreDescription,
  system: UnitSystem,
): PartChange | Refusal {
  switch (kind) {
    case 'coil': {
      const coils = scenario.coils ?? [];
      if (coils.length >= MOST.coils) return { no: 'full', most: MOST.coils };
      const value = [...coils, newCoil(scenario, 'coil', store, system)];
      return { edits: [{ path: 'coils', value }], opens: `coils[${coils.length}]` };
    }
    case 'engine':
      return scenario.engine ? { no: 'one of its kind' } : withCoil(scenario, kind, newEngine, store, system);
    case 'collector':
      return scenario.collector
        ? { no: 'one of its kind' }
        : withCoil(scenario, kind, newCollector, store, system);
    case 'household':
      return scenario.taps
        ? { no: 'one of its kind' }
        : withCoil(scenario, 'taps', (coil) => ({ coil }), store, system);
    case 'backup': {
      if (scenario.backup) return { no: 'one of its kind' };
      if (!scenario.taps) return { no: 'nobody draws' };
      const max_heat = system === 'SI' ? '10 kW' : '35 kBtu/h';
      return { edits: [{ path: 'backup', value: { max_heat } }], opens: 'backup' };
    }
    case 'shower':
      return added(scenario, 'showers', { at: '7:00 am' });
    case 'draw':
      return added(scenario, 'draws', newDraw(scenario, system));
  }
}

/** Another part like the one at a path. */
export function duplication(scenario: Scenario, path: string): PartChange | Refusal {
  const found = listItem(path);
  if (!found) return { no: path === 'store' || path === 'supply' ? 'always there' : 'one of its kind' };
  const { list, index } = found;
  if (list !== 'coils') return added(scenario, list, named(scenario, list, index), index + 1);
  const coils = scenario.coils ?? [];
  if (coils.length >= MOST.coils) return { no: 'full', most: MOST.coils };
  const copy = { ...coils[index], name: freeName(scenario, coils[index].name) };
  const value = coils.toSpliced(index + 1, 0, copy);
  const edits = [{ path: 'coils', value }, ...movedMarks(scenario, 'coils', index + 1, 1)];
  return { edits, opens: `coils[${index + 1}]` };
}

/** The file without the part at a path. */
export function removal(scenario: Scenario, path: string): PartChange | Refusal {
  const found = listItem(path);
  if (found?.list === 'coils') {
    const coils = scenario.coils ?? [];
    const by = USERS.find((user) => scenario[user]?.coil === coils[found.index]?.name);
    if (by) return { no: 'in use', by };
    const value = coils.toSpliced(found.index, 1);
    return {
      edits: [{ path: 'coils', value }, ...movedMarks(scenario, 'coils', found.index, -1)],
      opens: 'store',
    };
  }
  if (found) {
    const { list, index } = found;
    const value = (scenario.taps?.[list] ?? []).toSpliced(index, 1);
    const edits = [{ path: `taps.${list}`, value }, ...movedMarks(scenario, `taps.${list}`, index, -1)];
    return { edits, opens: 'taps' };
  }
  if (path === 'taps' && scenario.backup) return { no: 'heats for it' };
  if (path === 'engine' || path === 'collector' || path === 'backup' || path === 'taps') {
    return { edits: [{ path, value: undefined }], opens: 'store' };
  }
  return { no: 'always there' };
}

function listItem(path: string): { list: 'coils' | 'showers' | 'draws'; index: number } | null {
  const found = /^(?:taps\.)?(coils|showers|draws)\[(\d+)\]$/.exec(path);
  return found && { list: found[1] as 'coils' | 'showers' | 'draws', index: Number(found[2]) };
}

function added(
  scenario: Scenario,
  list: 'showers' | 'draws',
  item: object,
  at?: number,
): PartChange | Refusal {
  if (!scenario.taps) return { no: 'nobody draws' };
  const items: object[] = scenario.taps[list] ?? [];
  if (items.length >= MOST[list]) return { no: 'full', most: MOST[list] };
  const index = at ?? items.length;
  const value = items.toSpliced(index, 0, item);
  const edits = [{ path: `taps.${list}`, value }, ...movedMarks(scenario, `taps.${list}`, index, 1)];
  return { edits, opens: `taps.${list}[${index}]` };
}

/** A copy of a draw under a name of its own; showers may share theirs. */
function named(scenario: Scenario, list: 'showers' | 'draws', index: number): object {
  if (list === 'showers') return { ...scenario.taps?.showers?.[index] };
  const draws = scenario.taps?.draws ?? [];
  const name = freeAmong(
    draws.map((draw) => draw.name),
    draws[index].name,
  );
  return { ...draws[index], name };
}

/** A user of a coil, with the first coil that nobody uses, or else a new one. */
function withCoil(
  scenario: Scenario,
  path: (typeof USERS)[number],
  make: (coil: string) => object,
  store: StoreDescription,
  system: UnitSystem,
): PartChange | Refusal {
  const coils = scenario.coils ?? [];
  const used = USERS.map((user) => scenario[user]?.coil);
  const idle = coils.find((coil) => !used.includes(coil.name));
  if (idle) return { edits: [{ path, value: make(idle.name) }], opens: path };
  if (coils.length >= MOST.coils) return { no: 'full', most: MOST.coils };
  const coil = newCoil(scenario, path === 'taps' ? 'household' : path, store, system);
  const edits = [
    { path: 'coils', value: [...coils, coil] },
    { path, value: make(coil.name) },
  ];
  return { edits, opens: path };
}

function newEngine(coil: string): NonNullable<Scenario['engine']> {
  const spans = [{ from: '4:00 pm', to: '7:00 pm' }];
  return { coil, fuel: 'diesel', rated_output: '5 kW', runs: { kind: 'timetable', spans } };
}

function newCollector(coil: string): NonNullable<Scenario['collector']> {
  return { coil, kind: 'evacuated tubes', size: { by: 'tubes', tubes: 20 } };
}

function newDraw(scenario: Scenario, system: UnitSystem): object {
  const name = freeAmong(scenario.taps?.draws?.map((draw) => draw.name) ?? [], 'draw');
  return system === 'SI'
    ? { name, at: '18:00', lasts: '3 min', flow: '6 L/min', temperature: '40 C' }
    : { name, at: '6:00 pm', lasts: '3 min', flow: '1.5 gpm', temperature: '105 F' };
}

/** Tubes that are easy to wind, widest first; the first that the store has room for is taken. */
const TUBES: Record<'US' | 'SI', { kind: TubeStandard; size: string }[]> = {
  US: ['1/2 in', '3/8 in', '1/4 in'].map((size) => ({ kind: 'refrigeration', size })),
  SI: ['15x1 mm', '10x1 mm'].map((size) => ({ kind: 'metric copper', size })),
};
/** By default a coil is 0.6 of the narrower width across and begins an eighth of the depth up: `scenario/build/coils.ts`. */
const ACROSS = 0.6;
const BEGINS = 1 / 8;
const TIGHTEST = 6;

/** A coil of a usual roll, or of as much of it as the store has room for. */
function newCoil(scenario: Scenario, wanted: string, store: StoreDescription, system: UnitSystem): Coil {
  const { shape, water_depth_m } = store;
  const middle = shape.kind === 'lying cylinder' ? shape.diameter_m / 2 : 0;
  const across = ACROSS * narrowestWidth(shape, middle, middle);
  const sizes = TUBES[system === 'SI' ? 'SI' : 'US'];
  const outside = ({ kind, size }: (typeof sizes)[number]) => findTube(kind, size)?.outside_diameter_m ?? 1;
  const tube = sizes.find((each) => across >= TIGHTEST * outside(each)) ?? sizes[sizes.length - 1];
  const pitch = outside(tube) + CLEAR_M['finger gap'];
  const turns = Math.max(0, (1 - BEGINS) * water_depth_m - outside(tube)) / pitch;
  const room_m = turns * Math.hypot(Math.PI * across, pitch);
  const roll_length =
    system === 'SI'
      ? `${Math.max(0.3, Math.min(15, Math.floor(room_m * 10) / 10))} m`
      : `${Math.max(1, Math.min(50, Math.floor(room_m / 0.3048)))} ft`;
  return { name: freeName(scenario, wanted), tube: tube as Coil['tube'], roll_length };
}

function freeName(scenario: Scenario, wanted: string): string {
  return freeAmong(scenario.coils?.map((coil) => coil.name) ?? [], wanted);
}

/** The wanted name, or the first of "name 2", "name 3", ... that is free. */
function freeAmong(taken: readonly string[], wanted: string): string {
  if (!taken.includes(wanted)) return wanted;
  const stem = wanted.replace(/ \d+$/, '');
  let number = 2;
  while (taken.includes(`${stem} ${number}`)) number++;
  return `${stem} ${number}`;
}
