/** How far "a little" and "a lot" reach from a value: judgement (grade D), told back wherever it is used. */
import type { DimensionKey } from '../quantity/index.ts';
import type { Field, NumberField, QuantityField } from './field.ts';

/** What a mark may not be put on: what is computed with rather than simulated, and chance, which varies anyway. */
const NEVER = /^(run\.(?!start\b)|weather\.seed$)/;

/** Whether a value of a part stands at a path, of which its author may be unsure. */
export function mayBeMarked(path: string): boolean {
  return !NEVER.test(path);
}

export function isMeasured(field: Field): field is QuantityField | NumberField {
  return field.kind === 'quantity' || field.kind === 'number';
}

export type Unsure = 'a little' | 'a lot';

/** As a share of the value, either way. */
const SHARES: Record<Unsure, number> = { 'a little': 0.1, 'a lot': 0.3 };
/** What has no nought to count shares from, either way: K, s, rad. */
const STEPS: Partial<Record<DimensionKey, Record<Unsure, number>>> = {
  temperature: { 'a little': 2, 'a lot': 6 },
  clock: { 'a little': 900, 'a lot': 3600 },
  angle: { 'a little': Math.PI / 48, 'a lot': Math.PI / 16 },
  latitude: { 'a little': Math.PI / 360, 'a lot': Math.PI / 90 },
  longitude: { 'a little': Math.PI / 360, 'a lot': Math.PI / 90 },
};
/** What is counted is off by whole ones, at least so many. */
const COUNTS: Record<Unsure, number> = { 'a little': 1, 'a lot': 2 };

/**
 * Ends between which a value is believed, SI, inside the field's range.
 *
 * @returns null for a nought, of which a share is nothing: its author has to name both ends
 */
export function reachOf(
  field: QuantityField | NumberField,
  value: number,
  unsure: Unsure,
): readonly [low: number, high: number] | null {
  const share = SHARES[unsure] * Math.abs(value);
  const step = field.kind === 'quantity' ? STEPS[field.dimension]?.[unsure] : undefined;
  const whole = field.kind === 'number' && field.whole;
  const reach = step ?? (whole ? Math.max(COUNTS[unsure], Math.round(share)) : share);
  const [least, greatest] = field.range;
  const [low, high] = [Math.max(least, value - reach), Math.min(greatest, value + reach)];
  return low < high ? [low, high] : null;
}
