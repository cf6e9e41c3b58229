/** How far a key or a pull moves a handle: always onto a mark of the tape, never past what the handle bears. */
import { systemOf, type Units } from '../../../words/index.ts';
import type { SectionHandle } from './handles.ts';

/** Fine and coarse step [m]. */
const STEPS = { US: { fine: 0.0254 / 4, coarse: 0.0508 }, SI: { fine: 0.005, coarse: 0.05 } };

function stepsIn(units: Units): { fine: number; coarse: number } {
  return STEPS[systemOf(units, 'length')];
}

/** Onto the nearest mark within the handle's range; at an end of it that lies between marks, the mark inside. */
function onMark({ least_m, most_m }: SectionHandle, value_m: number, step_m: number): number {
  const marks = Math.round(value_m / step_m);
  const least = Math.ceil(least_m / step_m - 1e-6);
  const most = Math.floor(most_m / step_m + 1e-6);
  return Math.max(least, Math.min(most, marks)) * step_m;
}

/** Value [m] after a key; null for keys that are not a handle's. */
export function valueAfterKey(handle: SectionHandle, key: string, units: Units): number | null {
  const { value_m, least_m, most_m } = handle;
  const { fine, coarse } = stepsIn(units);
  // From between two marks the first step goes to the next mark, not past it.
  const up = (step: number) => onMark(handle, (Math.floor(value_m / fine + 1e-6) + step / fine) * fine, fine);
  const down = (step: number) =>
    onMark(handle, (Math.ceil(value_m / fine - 1e-6) - step / fine) * fine, fine);
  switch (key) {
    case 'ArrowUp':
    case 'ArrowRight':
      return up(fine);
    case 'ArrowDown':
    case 'ArrowLeft':
      return down(fine);
    case 'PageUp':
      return up(coarse);
    case 'PageDown':
      return down(coarse);
    case 'Home':
      return onMark(handle, least_m, fine);
    case 'End':
      return onMark(handle, most_m, fine);
    default:
      return null;
  }
}

/** Value [m] after a pull of the handle by some pixels. */
export function valueAfterPull(
  handle: SectionHandle,
  pull: { x: number; y: number },
  px_per_m: number,
  units: Units,
): number {
  const along = { up: -pull.y, down: pull.y, left: -pull.x }[handle.grows];
  return onMark(handle, handle.value_m + along / px_per_m, stepsIn(units).fine);
}

/** A length [m] as the number that stands beside a handle: inches or millimetres. */
export function handleNumber(value_m: number, units: Units): number {
  return systemOf(units, 'length') === 'US'
    ? Number((value_m / 0.0254).toFixed(3))
    : Number((value_m * 1000).toFixed(1));
}
