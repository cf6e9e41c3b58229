/** Numbers in US and SI units side by side, for paper: whoever reads it in the shed cannot switch. */
import type { DimensionKey } from '../../sim/index.ts';
import { type Say, sayIn } from './say.ts';
import { type Speak, speakIn } from './speak.ts';
import { bothText, inchesText } from './units.ts';

export interface Both {
  /** `120 °F (48.9 °C)`. */
  quantity: (value_SI: number, dimension: DimensionKey, digits?: number) => string;
  /** A measure off a tape: `27 3/4 in (705 mm)`. */
  tape: (value_m: number) => string;
  /** Several off a tape, the unit once: `48 x 36 in (1219 x 914 mm)`. */
  tapes: (values_m: readonly number[], by?: string) => string;
  /** For the sentences of answers. */
  say: Say;
  /** For cautions. */
  speak: Speak;
  plain: boolean;
}

/** `plain` keeps units and signs to ASCII. */
export function inBothUnits({ plain = false, currency = '$' } = {}): Both {
  return {
    quantity: (value, dimension, digits) =>
      bothText(value, dimension, digits === undefined ? { plain } : { plain, digits }),
    tape: (value_m) => `${inchesText(value_m)} (${millimetres(value_m)} mm)`,
    tapes: (values_m, by = ' x ') =>
      `${values_m.map((each) => inchesText(each).replace(' in', '')).join(by)} in (${values_m.map(millimetres).join(by)} mm)`,
    say: sayBoth(plain, currency),
    speak: speakBoth(plain),
    plain,
  };
}

function millimetres(value_m: number): string {
  return String(Math.round(value_m * 1000));
}

/** One text after the other, once where both are the same. */
function paired<Args extends unknown[]>(
  us: (...args: Args) => string,
  si: (...args: Args) => string,
): (...args: Args) => string {
  return (...args) => {
    const [a, b] = [us(...args), si(...args)];
    return a === b ? a : `${a} / ${b}`;
  };
}

/** A table's column has one unit: it and its numbers stay in US units. */
function sayBoth(plain: boolean, currency: string): Say {
  const [us, si] = [sayIn('US', { plain, currency }), sayIn('SI', { plain, currency })];
  return {
    ...us,
    quantity: paired(us.quantity, si.quantity),
    banded: paired(us.banded, si.banded),
    value: paired(us.value, si.value),
  };
}

function speakBoth(plain: boolean): Speak {
  const [us, si] = [speakIn('US', { plain }), speakIn('SI', { plain })];
  const keys = Object.keys(us) as (keyof Speak)[];
  return Object.fromEntries(keys.map((key) => [key, paired(us[key], si[key])])) as unknown as Speak;
}
