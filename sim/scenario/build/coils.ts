/** Coils: tube, turns and where they hang, checked against the store they must fit into. */
import type { CoilDescription, StoreDescription } from '../../parts/description.ts';
import { BUNDLING, CLEAR_M } from '../../physics/coil-outside.ts';
import { boreTolerance, type TubeStandard } from '../../physics/tubes.ts';
import type { Desk } from '../desk.ts';
import type { Band } from '../field.ts';
import { coil as coilField } from '../fields/coil.ts';
import type { ScenarioValues } from '../fields/index.ts';
import type { SketchedCoil } from '../sketch.ts';
import { tubeFrom } from './shared.ts';

type CoilRead = ScenarioValues['coils'][number];
type Steps = readonly PropertyKey[];

/** Smallest coil a tube is wound to without kinking, in tube diameters (annealed copper; trade practice). */
const TIGHTEST = 6;

/** Ends of the published formulas for coils (`coilFrictionSpread`) but for the last fifth before turbulence. */
const FRICTION_BAND: Band = ['0.9', '1.25'];

/** What a standard lets the bore be; a tube measured by hand is as it was measured. */
function boreBand(kind: CoilRead['tube']['kind'], tube: CoilDescription['tube']): Band | null {
  if (kind === 'own') return null;
  const [low, high] = boreTolerance(kind as TubeStandard, tube);
  return [low.toFixed(3), high.toFixed(3)];
}

/** Which coil serves whom: a source's coil is fed from the top, the household's from the bottom. */
export type Users = Record<string, 'engine' | 'collector' | 'taps'>;

/** The coils, or null where one of them is refused; and as they would be drawn, whether they fit or not. */
export function coilsFrom(
  desk: Desk,
  reads: readonly CoilRead[],
  store: StoreDescription | null,
  users: Users,
): { coils: CoilDescription[] | null; sketched: SketchedCoil[] | null } {
  const names = new Map<string, number>();
  const coils = reads.map((read, i) => {
    const earlier = names.get(read.name);
    if (earlier !== undefined) {
      desk.problem(
        ['coils', i, 'name'],
        'a name no other coil has',
        `"${read.name}", as coils[${earlier}]`,
        'give each coil its own name',
      );
    }
    names.set(read.name, i);
    return coilFrom(
      desk,
      ['coils', i],
      read,
      store,
      Object.hasOwn(users, read.name) ? users[read.name] : null,
    );
  });
  if (!coils.every((coil) => coil !== null)) return { coils: null, sketched: null };
  const fit = coils.every(({ sound }) => sound);
  return {
    coils: fit ? coils.map(({ description }) => description) : null,
    sketched: coils.map(({ description, sketch }) => ({ ...description, ...sketch })),
  };
}

interface CoilMade {
  description: CoilDescription;
  sketch: Omit<SketchedCoil, keyof CoilDescription>;
  /** All its turns fit. */
  sound: boolean;
}

function coilFrom(
  desk: Desk,
  steps: Steps,
  read: CoilRead,
  store: StoreDescription | null,
  user: Users[string] | null,
): CoilMade | null {
  const listed = tubeFrom(desk, [...steps, 'tube'], read.tube);
  if (read.rolls > 1 && read.join === null) {
    desk.problem(
      [...steps, 'join'],
      '"series" or "parallel"',
      'nothing',
      `say how the ${read.rolls} rolls are joined: it decides the pressure`,
    );
  }
  if (!listed || !store) return null;
  // What a source's pump drives through its coil is given: its pressure is told of, and moves nothing else.
  const pressed = user === 'taps' || user === 'engine';
  const bore = desk.complete(coilField, steps, 'bore', read.bore, () => ({
    value: 1,
    band: pressed ? boreBand(read.tube.kind, listed) : null,
  }));
  const tube = { ...listed, inside_diameter_m: bore * listed.inside_diameter_m };
  if (!(tube.inside_diameter_m < tube.outside_diameter_m)) {
    const most = Math.floor((1000 * tube.outside_diameter_m) / listed.inside_diameter_m) / 1000;
    desk.problem(
      [...steps, 'bore'],
      `less than ${most}, which leaves no wall`,
      `${bore}`,
      'measure the bore',
    );
    return null;
  }
  const outside = tube.outside_diameter_m;
  const width = narrowest(store);
  const coil_diameter_m = desk.complete(coilField, steps, 'coil_diameter', read.coil_diameter, () => ({
    value: 0.6 * width,
  }));
  const pitch_m = desk.complete(coilField, steps, 'pitch', read.pitch, () => ({
    value: outside + CLEAR_M[read.spacing],
  }));
  const bottom_m = desk.complete(coilField, steps, 'from', read.from, () => ({
    value: store.water_depth_m / 8,
  }));
  const turns = turnsOf(read.rolls * read.roll_length, coil_diameter_m, pitch_m) / read.side_by_side;
  const top_m = desk.complete(coilField, steps, 'to', read.to, () => ({
    value: bottom_m + turns * pitch_m + outside,
  }));
  const sound = fits(
    desk,
    steps,
    { read, outside, width, coil_diameter_m, pitch_m, bottom_m, top_m, turns },
    store,
  );
  // A coil shorter than its allotted height ends where its last turn does; spread turns are drawn out to fill it.
  const own_top_m = Math.min(top_m, bottom_m + turns * pitch_m + outside);
  const drawn = read.spacing === 'spread' && read.pitch === null;
  if (sound && !drawn && own_top_m < top_m - 0.1 * (top_m - bottom_m)) {
    desk.note(
      [...steps, 'to'],
      `the last turn ends at ${desk.length(own_top_m)}, well below "to", ${desk.length(top_m)}`,
    );
  }
  const description: CoilDescription = {
    name: read.name,
    tube,
    rolls: read.rolls,
    roll_length_m: read.roll_length,
    join: read.join ?? 'series',
    coil_diameter_m,
    spacing: read.spacing,
    pitch_m: drawn ? Math.max(pitch_m, (top_m - bottom_m - outside) / turns) : pitch_m,
    bottom_m,
    top_m: drawn ? top_m : own_top_m,
    fed_from: desk.complete(coilField, steps, 'fed_from', read.fed_from, () => ({
      value: user === 'engine' || user === 'collector' ? 'top' : 'bottom',
    })),
    fouling_m2K_W: read.fouling,
    bundling: desk.complete(coilField, steps, 'bundling', read.bundling, () => {
      const { low, value, high } = BUNDLING[read.spacing];
      return { value, band: [`${low}`, `${high}`] };
    }),
    outside_film: read.outside_film,
    inside_film: read.inside_film,
    friction: desk.complete(coilField, steps, 'friction', read.friction, () => ({
      value: 1,
      band: pressed ? FRICTION_BAND : null,
    })),
  };
  const sketch = {
    side_by_side: read.side_by_side,
    limit_m: read.to,
    stretched: drawn && read.to !== null,
  };
  return { description, sketch, sound };
}

/** Turns a length of tube makes at a mean diameter and pitch. */
function turnsOf(length_m: number, coil_diameter_m: number, pitch_m: number): number {
  return length_m / Math.hypot(Math.PI * coil_diameter_m, pitch_m);
}

/** The narrower inside width a coil must pass [m]. */
function narrowest({ shape }: StoreDescription): number {
  if (shape.kind === 'box') return Math.min(shape.length_m, shape.width_m);
  return shape.kind === 'upright cylinder' ? shape.diameter_m : Math.min(shape.diameter_m, shape.length_m);
}

interface Winding {
  read: CoilRead;
  outside: number;
  width: number;
  coil_diameter_m: number;
  pitch_m: number;
  bottom_m: number;
  top_m: number;
  turns: number;
}

/** Reports what does not fit; true where all does. */
function fits(desk: Desk, steps: Steps, winding: Winding, store: StoreDescription): boolean {
  const { read, outside, width, coil_diameter_m, pitch_m, bottom_m, top_m, turns } = winding;
  const before = desk.problems.length;
  const problem = (key: string, expected: string, got: string, fix: string) =>
    desk.problem([...steps, key], expected, got, fix);
  if (coil_diameter_m + outside > width) {
    problem(
      'coil_diameter',
      `at most ${desk.length(width - outside)}, the store’s inside width less the tube`,
      desk.length(coil_diameter_m),
      'wind it smaller',
    );
  }
  if (coil_diameter_m < TIGHTEST * outside) {
    problem(
      'coil_diameter',
      `at least ${desk.length(TIGHTEST * outside)}, six tube diameters`,
      desk.length(coil_diameter_m),
      'wind it wider: tighter turns kink',
    );
  }
  // A touching pitch that was written down is right to the four digits that a default is told in.
  if (pitch_m < outside * (1 - 5e-4)) {
    problem(
      'pitch',
      `at least the tube’s own ${desk.length(outside)}`,
      desk.length(pitch_m),
      'turns cannot lie closer than touching',
    );
  }
  if (top_m <= bottom_m) {
    problem('to', `above "from", ${desk.length(bottom_m)}`, desk.length(top_m), 'swap the two heights');
    return false;
  }
  if (top_m > store.water_depth_m + 1e-9) {
    const fix =
      read.to === null
        ? 'hang it lower, wind it wider or closer, or use less tube'
        : 'lower "to", or fill the store higher';
    problem(
      'to',
      `under the water, ${desk.length(store.water_depth_m)} deep`,
      `${desk.length(top_m)}${read.to === null ? ', where the last turn ends' : ''}`,
      fix,
    );
  } else if (read.to !== null && turns * pitch_m + outside > (top_m - bottom_m) * 1.005) {
    const fit = Math.max(0, Math.floor((top_m - bottom_m - outside) / pitch_m + 1e-6)) * read.side_by_side;
    problem(
      'to',
      `room for ${round(turns * read.side_by_side)} turns at ${desk.length(pitch_m)}: ${desk.length(turns * pitch_m + outside)}`,
      `${desk.length(top_m - bottom_m)} between "from" and "to", room for ${fit} turns`,
      'wind it wider or closer, side by side, or use less tube',
    );
  }
  return desk.problems.length === before;
}

function round(turns: number): string {
  return String(Math.round(turns * 10) / 10);
}
