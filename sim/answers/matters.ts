/** Which doubts can move heat and temperatures; the others would only cost runs. */
import type { PlantDescription } from '../parts/description.ts';

/** Paths, or ends of them, that set off a caution, cost money or move the heat by less than is computed. */
const IDLE = [
  /^prices\b/,
  /^run\b/,
  /^backup\b/,
  /^site\b/,
  /\.coldest_return$/,
  /\.limit$/,
  /\.bore$/,
  /\.humidity$/,
  /\.swing$/,
  /\.warmest$/,
  /\bpump_power$/,
  /\bpump\.power$/,
];

export function movesHeat(path: string): boolean {
  return !IDLE.some((idle) => idle.test(path));
}

/** As `movesHeat`, for one plant: through a source's coil the flow is given, so what it loses in pressure moves nothing. */
export function movesHeatOf(plant: PlantDescription): (path: string) => boolean {
  return (path) => movesHeat(path) && !losesPressureUnheard(plant, path);
}

/** What may move a run's figures, pressures and speeds among them; prices do not. */
export function movesFiguresOf(plant: PlantDescription): (path: string) => boolean {
  return (path) => !movesMoney(path) && !losesPressureUnheard(plant, path);
}

/** Whether a path is friction or bore of a coil that the household does not draw through. */
function losesPressureUnheard({ coils, taps }: PlantDescription, path: string): boolean {
  const coil = /^coils\[(\d+)\]\.(friction|bore)$/.exec(path);
  return coil !== null && coils[Number(coil[1])]?.name !== taps?.coil;
}

export function movesMoney(path: string): boolean {
  return /^prices\b/.test(path);
}
