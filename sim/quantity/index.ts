/** Quantities as text with their unit, and the names of all that a run gives back. */
export { editDistance } from './edit-distance.ts';
export { formatBoth, formatQuantity, formatTape } from './format.ts';
export { type GlossaryEntry, glossary } from './glossary.ts';
export { parseQuantity } from './parse.ts';
export { formatPrice, isBareNumber, readPrice, type SoldBy, soldIn } from './price.ts';
export { fromSI, printedSymbol, type UnitSystem } from './unit.ts';
export { type DimensionKey, dimensions } from './units.ts';
