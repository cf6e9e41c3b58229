/**
 * A year of samples does not fit a screen. Lines keep the lowest and highest sample of every pixel column, so
 * that no peak or trough is lost; powers and fields are averaged, so that their area is kept.
 */

/** Samples to draw, ascending: all, or for each column its first, lowest, highest and last finite one. */
export function samplesToDraw(values: ArrayLike<number>, columns: number): number[] {
  const count = values.length;
  const kept: number[] = [];
  const perColumn = count / Math.max(1, columns);
  if (perColumn <= 4) {
    for (let i = 0; i < count; i++) kept.push(i);
    return kept;
  }
  for (let column = 0; column < columns; column++) {
    const from = Math.floor(column * perColumn);
    const to = Math.floor((column + 1) * perColumn);
    let first = -1;
    let last = -1;
    let lowest = -1;
    let highest = -1;
    for (let i = from; i < to; i++) {
      if (!Number.isFinite(values[i])) continue;
      if (first < 0) first = lowest = highest = i;
      if (values[i] < values[lowest]) lowest = i;
      if (values[i] > values[highest]) highest = i;
      last = i;
    }
    if (first < 0) continue;
    for (const i of [first, Math.min(lowest, highest), Math.max(lowest, highest), last]) {
      if (kept[kept.length - 1] !== i) kept.push(i);
    }
  }
  return kept;
}

/** Bounds of `columns` groups of samples at most: group g is samples bounds[g] to bounds[g + 1], less one. */
export function groupBounds(count: number, columns: number): number[] {
  const groups = Math.max(1, Math.min(count, Math.floor(columns)));
  return Array.from({ length: groups + 1 }, (_, group) => Math.floor((group * count) / groups));
}

/** Mean of each group; a sample that is not a number counts as `missing`. */
export function groupMeans(values: ArrayLike<number>, bounds: number[], missing = 0): Float64Array {
  const means = new Float64Array(bounds.length - 1);
  for (let group = 0; group < means.length; group++) {
    let sum = 0;
    for (let i = bounds[group]; i < bounds[group + 1]; i++) {
      sum += Number.isFinite(values[i]) ? values[i] : missing;
    }
    means[group] = sum / (bounds[group + 1] - bounds[group]);
  }
  return means;
}

/** Lowest and highest finite sample of each group; not a number where it has none. */
export function groupExtremes(
  values: ArrayLike<number>,
  bounds: number[],
): { low: Float64Array; high: Float64Array } {
  const low = new Float64Array(bounds.length - 1).fill(Number.NaN);
  const high = low.slice();
  for (let group = 0; group < low.length; group++) {
    for (let i = bounds[group]; i < bounds[group + 1]; i++) {
      if (!(values[i] >= low[group])) low[group] = Number.isFinite(values[i]) ? values[i] : low[group];
      if (!(values[i] <= high[group])) high[group] = Number.isFinite(values[i]) ? values[i] : high[group];
    }
  }
  return { low, high };
}
