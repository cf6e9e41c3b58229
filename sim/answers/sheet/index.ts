/** The build sheet's facts, for page and terminal. */
export { byInfluence } from './assumptions.ts';
export { BOARD_M, KERF_M } from './boards.ts';
export type { CoilSheet } from './coils.ts';
export type { Fitting, FittingKind } from './fittings.ts';
export { givenInputs } from './given.ts';
export { type Panel, WASTE } from './panels.ts';
export { type BuildSheet, buildSheet } from './sheet.ts';
export type { TubeCut } from './tube-cuts.ts';
