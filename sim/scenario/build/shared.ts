/** Surroundings, fluids, pipes and tubes as the plant's description wants them. */
import type { Fluid, Surroundings, Tube } from '../../parts/description.ts';
import { fluidFreezingPoint } from '../../physics/fluid.ts';
import { massShareFromVolumeShare } from '../../physics/glycol.ts';
import { pipeConductance } from '../../physics/insulation.ts';
import { MATERIALS } from '../../physics/materials.ts';
import { findTube, ownTube, type TubeStandard, tubeSizes } from '../../physics/tubes.ts';
import { quote } from '../calendar.ts';
import type { Desk } from '../desk.ts';
import type { Value } from '../field.ts';
import type { fluid, pipeFields, surroundings } from '../fields/shared.ts';
import type { tube } from '../fields/tube.ts';
import { nearestWord } from '../nearest.ts';

type Steps = readonly PropertyKey[];

export function surroundingsFrom(read: Value<ReturnType<typeof surroundings>>): Surroundings {
  if (read.where === 'outdoors') return { kind: 'outdoors' };
  return {
    kind: 'room',
    mean_C: read.temperature,
    swing_K: read.swing,
    warmest_s: read.warmest,
    relative_humidity: read.humidity,
  };
}

/** Most glycol the property fits cover, by mass; more carries less heat and freezes at a higher temperature. */
const MOST_GLYCOL = 0.6;

/** The fluid, its share by mass, or null where the share is refused. */
export function fluidFrom(
  desk: Desk,
  steps: Steps,
  field: ReturnType<typeof fluid>,
  read: Value<ReturnType<typeof fluid>>,
  usualShare: number,
): Fluid | null {
  if (read.kind === 'water') {
    if (read.share === null || read.share === 0) return { kind: 'water', mass_share: 0 };
    desk.problem(
      [...steps, 'share'],
      'no glycol in water',
      `a share of ${percent(read.share)}`,
      'name the glycol under "kind", or leave the share out',
    );
    return null;
  }
  const share = desk.complete(field, steps, 'share', read.share, () => ({ value: usualShare }));
  const mass_share = read.share_by === 'mass' ? share : massShareFromVolumeShare(read.kind, share);
  if (mass_share <= MOST_GLYCOL) return { kind: read.kind, mass_share };
  desk.problem(
    [...steps, 'share'],
    `at most ${percent(MOST_GLYCOL)} glycol by mass`,
    `${percent(share)} by ${read.share_by}, ${percent(mass_share)} by mass`,
    'thin it: beyond this a mix freezes sooner and carries less heat',
  );
  return null;
}

/** Notes a loop whose liquid would freeze at the coldest it meets. */
export function noteFreezing(
  desk: Desk,
  steps: Steps,
  liquid: Fluid,
  coldest_C: number,
  what: string,
  where: string,
): void {
  const freezes_C = fluidFreezingPoint(liquid);
  if (freezes_C <= coldest_C) return;
  desk.note(
    steps,
    `${what} begins to freeze at ${desk.temperature(freezes_C)}; ${where} is at ${desk.temperature(coldest_C)}`,
  );
}

export function percent(share: number): string {
  return `${Math.round(share * 1000) / 10} %`;
}

/** The tube, or null where its standard has no such size or its own diameters leave no wall. */
export function tubeFrom(desk: Desk, steps: Steps, read: Value<ReturnType<typeof tube>>): Tube | null {
  if (read.kind === 'own') {
    if (read.inside < read.outside) {
      const label = `own ${read.material} tube, ${desk.length(read.outside)} outside, ${desk.length(read.inside)} inside`;
      return ownTube(label, read.material, read.outside, read.inside);
    }
    desk.problem(
      [...steps, 'inside'],
      `less than the outside, ${desk.length(read.outside)}`,
      desk.length(read.inside),
      'measure both across a clean cut',
    );
    return null;
  }
  const found = findTube(read.kind as TubeStandard, read.size);
  if (found) return found;
  const sizes = tubeSizes(read.kind as TubeStandard);
  const near = nearestWord(read.size, sizes);
  desk.problem(
    [...steps, 'size'],
    `a size of ${read.kind} tube: ${sizes.join(', ')}`,
    quote(read.size),
    near ? `did you mean "${near}"?` : 'choose a size of the list, or give kind "own" with both diameters',
  );
  return null;
}

/** Convection and radiation from a pipe's surface to a room [W/(m2 K)]: common practice. */
const STILL_AIR_W_M2K = 9;

type PipeRead = Pick<Value<{ kind: 'group'; fields: ReturnType<typeof pipeFields> }>, 'foam' | 'conductance'>;

/** Heat lost per metre of pipe and kelvin [W/(m K)]: through the foam and a still-air film, unless given. */
export function pipeConductanceFrom(
  desk: Desk,
  steps: Steps,
  fields: Pick<ReturnType<typeof pipeFields>, 'conductance'>,
  read: PipeRead,
  outside_m: number,
): number {
  return desk.complete({ fields }, steps, 'conductance', read.conductance, () => ({
    value: pipeConductance(outside_m, read.foam, MATERIALS['pipe foam'].conductivity_W_mK, STILL_AIR_W_M2K),
  }));
}
