/** The scaled drawing's share of the simulation: pure geometry, and edits of the file. */

export { insideHeight } from '../../parts/store/geometry.ts';
export {
  drawnWidth,
  type SectionFacts,
  sectionFacts,
  waterVolume,
} from './facts.ts';
export { gripEdits } from './grip-edits.ts';
export { type Face, type Grip, type GripRange, gripRange, gripsOf, moved } from './grips.ts';
export { probesOf } from './probes.ts';
export { crossingsOf, type Misfit, misfitOf, windingTurns, woundTop } from './turns.ts';
