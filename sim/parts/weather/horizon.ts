/** What stands between a collector and the sky: hills and trees as a line of elevations by azimuth. */
import { cosine } from '../../numerics/alike.ts';
import { incidenceCosine, type Plane } from '../../physics/sun.ts';
import type { CollectorDescription } from '../description.ts';

type Horizon = CollectorDescription['horizon'];

const TURN = 2 * Math.PI;

/**
 * Elevation of the obstacle in a direction, linear between the line's points and around from last to first.
 *
 * @param horizon azimuth ascending in [0, 2 pi); empty: open, 0 everywhere
 * @param azimuth_rad from north, clockwise; any number of turns
 * @returns [rad]
 */
export function horizonElevation_rad(horizon: Horizon, azimuth_rad: number): number {
  if (horizon.length === 0) return 0;
  const azimuth = azimuth_rad - TURN * Math.floor(azimuth_rad / TURN);
  const next = horizon.findIndex((point) => point.azimuth_rad > azimuth);
  const after = horizon[next === -1 ? 0 : next];
  const before = horizon.at((next === -1 ? 0 : next) - 1) ?? after;
  const span = (after.azimuth_rad - before.azimuth_rad + TURN) % TURN || TURN;
  const into = (azimuth - before.azimuth_rad + TURN) % TURN;
  return before.elevation_rad + (into / span) * (after.elevation_rad - before.elevation_rad);
}

/** Slices of azimuth and of elevation of the sum below: 0.1 % of the whole. */
const AROUND = 120;
const UPWARDS = 12;

/**
 * Share of an evenly bright sky's light on the plane that the horizon line leaves. What is cut off counts as
 * dark, which errs on the dim side.
 *
 * @returns 0..1; 1 for an open horizon
 */
export function skyShare(horizon: Horizon, plane: Plane): number {
  if (horizon.every((point) => point.elevation_rad <= 0)) return 1;
  let blocked = 0;
  for (let i = 0; i < AROUND; i++) {
    const azimuth_rad = ((i + 0.5) * TURN) / AROUND;
    const top = Math.max(0, horizonElevation_rad(horizon, azimuth_rad));
    for (let j = 0; j < UPWARDS; j++) {
      const elevation = ((j + 0.5) * top) / UPWARDS;
      const facing = incidenceCosine({ zenith_rad: Math.PI / 2 - elevation, azimuth_rad }, plane);
      blocked += Math.max(0, facing) * cosine(elevation) * (top / UPWARDS) * (TURN / AROUND);
    }
  }
  const open = (Math.PI * (1 + cosine(plane.tilt_rad))) / 2;
  return Math.max(0, 1 - blocked / open);
}
