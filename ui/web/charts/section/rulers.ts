/** Rulers along the inside of the store: depth on its left, length under it, in whole steps of a tape. */
import { drawnWidth, insideHeight, type SectionFacts } from '../../../../sim/index.ts';
import { systemOf, type Units } from '../../../words/index.ts';
import { label, px, tag } from '../svg.ts';
import { outerOf, type SectionFrame, xAt, yAt } from './frame.ts';

interface Tape {
  /** One unit of the numbers [m]. */
  unit_m: number;
  symbol: string;
  /** Steps that ticks may have, and that numbers may have, in units. */
  ticks: readonly number[];
  numbers: readonly number[];
}

const TAPES: Record<'US' | 'SI', Tape> = {
  US: {
    unit_m: 0.0254,
    symbol: 'in',
    ticks: [1 / 8, 1 / 4, 1 / 2, 1, 3, 6, 12],
    numbers: [1, 2, 6, 12, 24, 48],
  },
  SI: { unit_m: 0.01, symbol: 'cm', ticks: [0.1, 0.5, 1, 5, 10], numbers: [1, 2, 5, 10, 20, 50, 100] },
};

const TICKS_APART = 3.5;
const NUMBERS_APART = 26;

/** Ticks from 0 to a length: each with its place [m], and its number where it has one. */
export function rulerTicks(
  length_m: number,
  px_per_m: number,
  units: Units,
): { at_m: number; number: string | null }[] {
  const { unit_m, ticks, numbers } = TAPES[systemOf(units, 'length')];
  const unit_px = unit_m * px_per_m;
  const step = ticks.find((each) => each * unit_px >= TICKS_APART) ?? ticks[ticks.length - 1];
  const numbered = numbers.find((each) => each >= step && each * unit_px >= NUMBERS_APART) ?? numbers.at(-1);
  const count = Math.floor((length_m / unit_m + 1e-6) / step);
  return Array.from({ length: count + 1 }, (_, i) => {
    const value = i * step;
    const whole = Math.abs(value / (numbered ?? 1) - Math.round(value / (numbered ?? 1))) < 1e-6;
    return { at_m: value * unit_m, number: whole ? String(Math.round(value)) : null };
  });
}

/** The depth ruler, with a pointer at the water line, and the length ruler. */
export function rulers(frame: SectionFrame, store: SectionFacts['store'], units: Units): string {
  const { shape } = store;
  const { below_m } = outerOf(store);
  const width = drawnWidth(shape);
  const height = insideHeight(shape);
  const { symbol } = TAPES[systemOf(units, 'length')];
  const x = xAt(frame, -frame.half_m) - 7;
  const depth = rulerTicks(height, frame.px_per_m, units).map(({ at_m, number }) => {
    const y = yAt(frame, at_m);
    const tick = tag('path', { class: 'tick', d: `M${px(x)},${px(y)}h${number === null ? -4 : -7}` });
    return number === null ? tick : tick + label(number, x - 10, y, { class: 'end' });
  });
  const y = yAt(frame, -below_m) + 13;
  const left = xAt(frame, -width / 2);
  const along = rulerTicks(width, frame.px_per_m, units).map(({ at_m, number }) => {
    const at = left + at_m * frame.px_per_m;
    const tick = tag('path', { class: 'tick', d: `M${px(at)},${px(y)}v${number === null ? 4 : 7}` });
    return number === null ? tick : tick + label(number, at, y + 17, { class: 'middle-x' });
  });
  return tag(
    'g',
    { class: 'ruler' },
    tag('path', { class: 'spine', d: `M${px(x)},${px(yAt(frame, 0))}V${px(yAt(frame, height))}` }),
    ...depth,
    label(symbol, x - 10, yAt(frame, height) - 14, { class: 'end' }),
    tag('path', { class: 'spine', d: `M${px(left)},${px(y)}h${px(width * frame.px_per_m)}` }),
    ...along,
    label(symbol, xAt(frame, width / 2) + 14, y + 17, { class: 'unit' }),
  );
}
