/** Prints quantities as text with their unit, so that reading the text gives the value back within its digits. */
import { clockText } from './clock.ts';
import { findUnit } from './lookup.ts';
import { printUnits } from './print-units.ts';
import { fromSI, printedSymbol, type Unit, type UnitSystem, withUnit } from './unit.ts';
import type { DimensionKey } from './units.ts';

export interface FormatOptions {
  /** Significant digits. */
  digits?: number;
  /** ASCII only, as in `ft2` for `ft²`. */
  plain?: boolean;
  /** A text whose unit tells fuel from water: 50 gal/h of fuel is not 0.833 gpm. */
  like?: string;
}

/** Past it a smaller unit or rounding could overflow; NaN is not below it either. */
const beyondAll = 1e290;

/** `unknown` for what is no number. A value in SI, or degrees Celsius, as `120 °F`. */
export function formatQuantity(
  value_SI: number,
  key: DimensionKey,
  system: UnitSystem,
  { digits, plain = false, like }: FormatOptions = {},
): string {
  if (!(Math.abs(value_SI) < beyondAll)) return 'unknown';
  const many = digits ?? printUnits[key].digits ?? 3;
  switch (key) {
    case 'clock':
      return system === 'US' ? twelveHours(value_SI) : clockText(dayTime(value_SI));
    case 'count':
      return rounded(value_SI, many);
    case 'latitude':
      return placeText(value_SI, many, 'NS', plain);
    case 'longitude':
      return placeText(value_SI, many, 'EW', plain);
    default: {
      const unit = unitFor(value_SI, key, system, like);
      const inUnit = fromSI(value_SI, unit);
      const number = rounded(inUnit, many, digits === undefined ? printUnits[key].decimals : undefined);
      if (key === 'resistance' && unit.system === 'US' && value_SI >= 0) return `R-${number}`;
      return withUnit(number, inNumber(plain ? unit.symbol : printedSymbol(unit.symbol), number));
    }
  }
}

/** In US units with SI in brackets, as in `120 °F (48.9 °C)`; once where both are the same. */
export function formatBoth(value_SI: number, key: DimensionKey, options: FormatOptions = {}): string {
  const [inUS, inSI] = [
    formatQuantity(value_SI, key, 'US', options),
    formatQuantity(value_SI, key, 'SI', options),
  ];
  return inUS === inSI ? inUS : `${inUS} (${inSI})`;
}

const m_per_sixteenth = 0.0254 / 16;

/** A length as a tape shows it, to the nearest sixteenth of an inch: `24 3/8 in`. */
export function formatTape(value_m: number): string {
  if (!Number.isFinite(value_m)) return 'unknown';
  const all = Math.round(Math.abs(value_m) / m_per_sixteenth);
  const inches = Math.floor(all / 16);
  let [above, below] = [all % 16, 16];
  while (above > 0 && above % 2 === 0) [above, below] = [above / 2, below / 2];
  const fraction = above === 0 ? '' : `${above}/${below}`;
  const number = inches === 0 && fraction ? fraction : `${inches}${fraction && ` ${fraction}`}`;
  return `${value_m < 0 && all > 0 ? '-' : ''}${number} in`;
}

function unitFor(value_SI: number, key: DimensionKey, system: UnitSystem, like?: string): Unit {
  const size = Math.abs(value_SI);
  const steps = printUnits[key][system];
  const step = stepLike(key, like) ?? steps.findIndex(([, below]) => below === undefined || size < below);
  const [symbol] = steps[step] ?? [''];
  const unit = findUnit(symbol, key);
  if (!unit)
    throw new Error(`quantity.format - expected a unit to print ${key} in - got "${symbol}" - report this`);
  return unit;
}

/** The step whose unit an example is written in, for flows alone: the large and the small are of different things. */
function stepLike(key: DimensionKey, like: string | undefined): number | null {
  if (key !== 'flow' || like === undefined) return null;
  const written = findUnit(like.replace(/^[\d./ -]+/, ''), key)?.symbol;
  const at = [printUnits[key].US, printUnits[key].SI].map((steps) =>
    steps.findIndex(([symbol]) => symbol === written),
  );
  return Math.max(...at) < 0 ? null : Math.max(...at);
}

/** Without noughts at its end. `most`: decimals at most. */
function rounded(value: number, digits: number, most = Number.POSITIVE_INFINITY): string {
  const many = Math.min(100, Math.max(1, digits));
  // Rounded once, by whichever is coarser: 0.108945 to five digits and then to four places would be 0.1090.
  const places = many - 1 - Math.floor(Math.log10(Math.abs(value)));
  const kept = Number(places > most ? value.toFixed(most) : value.toPrecision(many));
  return String(kept === 0 ? 0 : kept);
}

/** A day is the one unit that is printed as a word: `1 day`, `2.5 days`. */
function inNumber(symbol: string, number: string): string {
  return symbol === 'day' && number !== '1' ? 'days' : symbol;
}

/** A clock starts anew at midnight; only the end of the first day keeps its `24:00`. */
function dayTime(value_s: number): number {
  const whole = Math.round(value_s);
  return whole === 86_400 ? whole : ((whole % 86_400) + 86_400) % 86_400;
}

function twelveHours(value_s: number): string {
  const text = clockText(dayTime(value_s));
  const [hours, ...others] = text.split(':');
  // Noon and both midnights are misread with am and pm.
  if (text === '0:00' || text === '24:00') return text;
  if (text === '12:00') return 'noon';
  return `${[Number(hours) % 12 || 12, ...others].join(':')} ${Number(hours) < 12 ? 'am' : 'pm'}`;
}

function placeText(value_rad: number, digits: number, letters: string, plain: boolean): string {
  const degrees = (Math.abs(value_rad) * 180) / Math.PI;
  return `${rounded(degrees, digits, Math.min(6, digits - 1))}${plain ? '' : '°'} ${letters[value_rad < 0 ? 1 : 0]}`;
}
