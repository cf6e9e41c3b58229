/** A part of a file as a tree to fill in, and the edits that filling in makes. */
export { valueAt } from '../value-at.ts';
export { adding, type Changes, deciding, describing, entering, removing } from './changes.ts';
export { exampleOf } from './example.ts';
export {
  type EntryField,
  type OutlineEntry,
  type OutlineGroup,
  type OutlineList,
  type OutlineNode,
  outlineOf,
} from './outline.ts';
export type { Assumed } from './place.ts';
export { readEntry } from './read-entry.ts';
export { type NamedTube, tubeNamed } from './tube.ts';
