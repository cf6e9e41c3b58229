/** The span of time that is shown: zoomed, moved, kept inside the run. */
import type { TimeSpan } from '../charts/frame.ts';
import { sampleAt } from '../charts/thin.ts';

/** Closer than this there is nothing more to see. */
const shortest_s = 600;
/** From here down the water at the tap is drawn, from samples closer than the run's. */
const closeLook_s = 3 * 3600;

export function isClose({ from_s, to_s }: TimeSpan): boolean {
  return to_s - from_s <= closeLook_s;
}

/** A span of the same length inside the whole; no shorter than can be seen, no longer than the whole. */
export function within({ from_s, to_s }: TimeSpan, whole: TimeSpan): TimeSpan {
  const length_s = Math.min(whole.to_s - whole.from_s, Math.max(shortest_s, to_s - from_s));
  const start_s = Math.min(whole.to_s - length_s, Math.max(whole.from_s, from_s));
  return { from_s: start_s, to_s: start_s + length_s };
}

/** Longer by `factor` or, below 1, shorter; what stands at `at_s` stays where it is. */
export function zoomed({ from_s, to_s }: TimeSpan, whole: TimeSpan, at_s: number, factor: number): TimeSpan {
  const longest = (whole.to_s - whole.from_s) / (to_s - from_s);
  const by = Math.min(longest, Math.max(shortest_s / (to_s - from_s), factor));
  return within({ from_s: at_s - (at_s - from_s) * by, to_s: at_s + (to_s - at_s) * by }, whole);
}

export function moved({ from_s, to_s }: TimeSpan, whole: TimeSpan, by_s: number): TimeSpan {
  return within({ from_s: from_s + by_s, to_s: to_s + by_s }, whole);
}

/** Moved no further than needed to have a time in view. */
export function holding(span: TimeSpan, whole: TimeSpan, at_s: number): TimeSpan {
  const early_s = at_s - span.from_s;
  const late_s = at_s - span.to_s;
  return early_s < 0 || late_s > 0 ? moved(span, whole, early_s < 0 ? early_s : late_s) : span;
}

/** The sample in view that is nearest to a time; the time itself where it is in view, or where no sample is. */
export function inView({ from_s, to_s }: TimeSpan, time_s: ArrayLike<number>, at_s: number): number {
  if (at_s >= from_s && at_s <= to_s) return at_s;
  const first = sampleAt(time_s, from_s);
  const after = sampleAt(time_s, to_s);
  const nearest = at_s < from_s ? first : time_s[after] > to_s ? after - 1 : after;
  const found_s = time_s[nearest];
  return found_s >= from_s && found_s <= to_s ? found_s : at_s;
}

/** How closely to sample a stretch that short [s]: about a sample a pixel, of round length. */
export function closeInterval({ from_s, to_s }: TimeSpan): number {
  return [2, 5, 10].find((step_s) => (to_s - from_s) / step_s <= 1000) ?? 10;
}
