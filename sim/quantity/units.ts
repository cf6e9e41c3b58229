/** The closed list of dimensions and units. */
import type { Dimension } from './unit.ts';
import { heatDimensions } from './units-heat.ts';
import { plainDimensions } from './units-plain.ts';

const all = { ...plainDimensions, ...heatDimensions };

export type DimensionKey = keyof typeof all;

export const dimensions: Readonly<Record<DimensionKey, Dimension>> = all;

export const dimensionKeys = Object.keys(all) as DimensionKey[];
