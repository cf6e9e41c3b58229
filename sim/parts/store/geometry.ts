/** The store's water as a stack of layers of equal height: volumes, wall areas and cross-sections. */
import type { StoreShape } from '../description.ts';

export interface StoreGeometry {
  layers: number;
  /** Height of one layer [m]. */
  layer_height_m: number;
  /** Height of each layer's middle above the inside bottom [m]. */
  middle_m: Float64Array;
  /** Water in each layer [m3]. */
  volume_m3: Float64Array;
  /** Wetted wall of each layer [m2]. */
  side_m2: Float64Array;
  /** Cross-section at the boundaries, bottom first, layers + 1 of them [m2]. */
  section_m2: Float64Array;
  /** Wall's perimeter at the boundaries [m]. */
  perimeter_m: Float64Array;
  bottom_m2: number;
  surface_m2: number;
}

/** Inside height of a shape [m]. */
export function insideHeight(shape: StoreShape): number {
  return shape.kind === 'lying cylinder' ? shape.diameter_m : shape.height_m;
}

/** Volume below height z [m3]. */
export function volumeBelow(shape: StoreShape, z: number): number {
  if (shape.kind === 'box') return shape.length_m * shape.width_m * z;
  if (shape.kind === 'upright cylinder') return (Math.PI / 4) * shape.diameter_m ** 2 * z;
  return segmentArea(shape.diameter_m, z) * shape.length_m;
}

/** Depth [m], at most `most_m`, at which a shape holds a volume [m3]; of a lying cylinder by halving, to rounding. */
export function depthOf(shape: StoreShape, volume_m3: number, most_m: number): number {
  if (shape.kind !== 'lying cylinder') return Math.min(most_m, volume_m3 / section(shape, 0));
  let low = 0;
  let high = most_m;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (volumeBelow(shape, middle) < volume_m3) low = middle;
    else high = middle;
  }
  return high;
}

/** Cuts the water of depth `depth_m` in `shape` into `layers` layers. All lengths [m]. */
export function storeGeometry(shape: StoreShape, depth_m: number, layers: number): StoreGeometry {
  const dz = depth_m / layers;
  const geometry: StoreGeometry = {
    layers,
    layer_height_m: dz,
    middle_m: new Float64Array(layers),
    volume_m3: new Float64Array(layers),
    side_m2: new Float64Array(layers),
    section_m2: new Float64Array(layers + 1),
    perimeter_m: new Float64Array(layers + 1),
    bottom_m2: 0,
    surface_m2: 0,
  };
  for (let i = 0; i <= layers; i++) {
    const z = Math.min(depth_m, i * dz);
    geometry.section_m2[i] = section(shape, z);
    geometry.perimeter_m[i] = perimeter(shape, z);
    if (i === layers) break;
    geometry.middle_m[i] = z + dz / 2;
    geometry.volume_m3[i] = volumeBelow(shape, z + dz) - volumeBelow(shape, z);
    geometry.side_m2[i] = wallBelow(shape, z + dz) - wallBelow(shape, z);
  }
  geometry.bottom_m2 = shape.kind === 'lying cylinder' ? 0 : geometry.section_m2[0];
  geometry.surface_m2 = geometry.section_m2[layers];
  return geometry;
}

function section(shape: StoreShape, z: number): number {
  if (shape.kind === 'box') return shape.length_m * shape.width_m;
  if (shape.kind === 'upright cylinder') return (Math.PI / 4) * shape.diameter_m ** 2;
  return chord(shape.diameter_m, z) * shape.length_m;
}

function perimeter(shape: StoreShape, z: number): number {
  if (shape.kind === 'box') return 2 * (shape.length_m + shape.width_m);
  if (shape.kind === 'upright cylinder') return Math.PI * shape.diameter_m;
  return 2 * (chord(shape.diameter_m, z) + shape.length_m);
}

/** Side wall wetted up to z; a lying cylinder's is its shell and both ends. */
function wallBelow(shape: StoreShape, z: number): number {
  if (shape.kind !== 'lying cylinder') return perimeter(shape, z) * z;
  const { diameter_m: d, length_m } = shape;
  const arc = d * Math.acos(clampUnit(1 - (2 * z) / d));
  return arc * length_m + 2 * segmentArea(d, z);
}

/** Width of a circle of diameter d at height z above its lowest point. */
function chord(d: number, z: number): number {
  return 2 * Math.sqrt(Math.max(0, z * (d - z)));
}

/** Area of a circle of diameter d below height z. */
function segmentArea(d: number, z: number): number {
  const r = d / 2;
  return r * r * Math.acos(clampUnit(1 - z / r)) - (r - z) * Math.sqrt(Math.max(0, z * (d - z)));
}

function clampUnit(x: number): number {
  return Math.min(1, Math.max(-1, x));
}
