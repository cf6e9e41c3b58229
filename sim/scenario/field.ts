/**
 * The language of the field catalogue: what a scenario file may hold, as data. The checker (`schema.ts`), the
 * defaults (`fill.ts`), the JSON Schema and the page's part cards all read the same fields.
 *
 * The types follow the data: `Raw<F>` is what stands in the file, `Value<F>` what stands after reading (SI).
 */
import type { DimensionKey, SoldBy } from '../quantity/index.ts';

/** How far a number may be trusted: trade.md's grades, or `invented` for demonstration data. */
export type Grade = 'A' | 'B' | 'C' | 'D' | 'invented';

/** Low and high value one would still believe, as text in the field's own unit. */
export type Band = readonly [low: string, high: string];

export interface Required {
  need: 'required';
}
/** Left out, the value stands. */
export interface Defaulted<V> {
  need: 'default';
  value: V;
  source: string;
  grade: Grade;
}
/** Left out, the value follows from the rest of the file, as `how` says. */
export interface Derived {
  need: 'derived';
  how: string;
  source: string;
  grade: Grade;
}
/** Left out, the thing is not there, as `absent` says. */
export interface Optional {
  need: 'optional';
  absent: string;
}
export type Presence<V = unknown> = Required | Defaulted<V> | Derived | Optional;

interface Common<P extends Presence> {
  label: string;
  presence: P;
  /** How to measure it, in one sentence. */
  measure?: string;
  band?: Band;
}

export interface QuantityField<P extends Presence<string> = Presence<string>> extends Common<P> {
  kind: 'quantity';
  dimension: DimensionKey;
  /** Smallest and largest value accepted, SI. */
  range: readonly [number, number];
  /** How it is written, for error texts. */
  example: string;
}
export interface NumberField<P extends Presence<number> = Presence<number>> extends Common<P> {
  kind: 'number';
  range: readonly [number, number];
  whole: boolean;
  /** Of a price: what it is for. A file may then have a text as well, as in "4.50/gal". */
  per?: SoldBy;
}
/** A price of what is sold by measure. */
export interface PriceField<P extends Presence<number> = Presence<number>> extends NumberField<P> {
  per: SoldBy;
}
export interface ChoiceField<C extends string = string, P extends Presence<C> = Presence<C>>
  extends Common<P> {
  kind: 'choice';
  choices: readonly C[];
}
export interface TextField<P extends Presence<string> = Presence<string>> extends Common<P> {
  kind: 'text';
  longest: number;
  /** Texts that are meant, where others are refused later on. */
  examples?: readonly string[];
}
export interface FlagField<P extends Presence<boolean> = Presence<boolean>> extends Common<P> {
  kind: 'flag';
}
/** Days of the week: "every day", "weekdays", "Mon Wed Fri", "Mon-Fri". */
export interface DaysField<P extends Presence<string> = Presence<string>> extends Common<P> {
  kind: 'days';
}
/** A day of the year, with or without its year: "2027-01-09" or "01-09". */
export interface DateField<P extends Presence<string> = Presence<string>> extends Common<P> {
  kind: 'date';
}
export interface ListField<I extends Field = Field, P extends Presence = Presence> extends Common<P> {
  kind: 'list';
  of: I;
  count: readonly [number, number];
}
export interface GroupField<G extends Fields = Fields, P extends Presence = Presence> extends Common<P> {
  kind: 'group';
  fields: G;
}
/** A group whose other fields depend on the word under the key `by`. */
export interface VariantsField<
  B extends string = string,
  C extends Record<string, Fields> = Record<string, Fields>,
  P extends Presence = Presence,
> extends Common<P> {
  kind: 'variants';
  by: B;
  cases: C;
}

export type Field =
  | QuantityField
  | NumberField
  | ChoiceField
  | TextField
  | FlagField
  | DaysField
  | DateField
  | ListField
  | GroupField
  | VariantsField;
export interface Fields {
  readonly [key: string]: Field;
}

/** Monday 0 to Sunday 6; `weekday` is null where the date names no year. */
export interface DayOfYear {
  day: number;
  weekday: number | null;
}

type NeedOf<F> = F extends { presence: { need: infer N } } ? N : never;
type KeysNeeding<G, N> = { [K in keyof G]: NeedOf<G[K]> extends N ? K : never }[keyof G];
type Flat<T> = { [K in keyof T]: T[K] };

/** What stands in the file. */
export type Raw<F> = F extends { kind: 'quantity' | 'text' | 'days' | 'date' }
  ? string
  : F extends { kind: 'number' }
    ? F extends { per: SoldBy }
      ? number | string
      : number
    : F extends { kind: 'flag' }
      ? boolean
      : F extends { kind: 'choice'; choices: readonly (infer C)[] }
        ? C
        : F extends { kind: 'list'; of: infer I }
          ? Raw<I>[]
          : F extends { kind: 'group'; fields: infer G }
            ? RawGroup<G>
            : F extends { kind: 'variants'; by: infer B extends string; cases: infer C }
              ? { [K in keyof C]: Flat<{ [b in B]: K } & RawGroup<C[K]>> }[keyof C]
              : never;
type RawGroup<G> = Flat<
  { [K in KeysNeeding<G, 'required'>]: Raw<G[K]> } & {
    [K in Exclude<keyof G, KeysNeeding<G, 'required'>>]?: Raw<G[K]>;
  }
>;

/** What stands after reading: SI, defaults filled, null where a field is derived or optional and absent. */
export type Value<F> = F extends { kind: 'quantity' | 'number' }
  ? number
  : F extends { kind: 'text' }
    ? string
    : F extends { kind: 'flag' }
      ? boolean
      : F extends { kind: 'days' }
        ? number[]
        : F extends { kind: 'date' }
          ? DayOfYear
          : F extends { kind: 'choice'; choices: readonly (infer C)[] }
            ? C
            : F extends { kind: 'list'; of: infer I }
              ? Value<I>[]
              : F extends { kind: 'group'; fields: infer G }
                ? ValueGroup<G>
                : F extends { kind: 'variants'; by: infer B extends string; cases: infer C }
                  ? { [K in keyof C]: Flat<{ [b in B]: K } & ValueGroup<C[K]>> }[keyof C]
                  : never;
type ValueGroup<G> = {
  [K in keyof G]: NeedOf<G[K]> extends 'required' | 'default' ? Value<G[K]> : Value<G[K]> | null;
};

export const required: Required = { need: 'required' };

export function byDefault<const V>(value: V, grade: Grade, source: string): Defaulted<V> {
  return { need: 'default', value, source, grade };
}

export function derived(how: string, grade: Grade, source: string): Derived {
  return { need: 'derived', how, source, grade };
}

export function optional(absent: string): Optional {
  return { need: 'optional', absent };
}

interface More {
  measure?: string;
  band?: Band;
}

export function quantity<P extends Presence<string>>(
  label: string,
  dimension: DimensionKey,
  range: readonly [number, number],
  example: string,
  presence: P,
  more: More = {},
): QuantityField<P> {
  return { kind: 'quantity', label, dimension, range, example, presence, ...more };
}

export function count<P extends Presence<number>>(
  label: string,
  range: readonly [number, number],
  presence: P,
  more: More = {},
): NumberField<P> {
  return { kind: 'number', label, range, whole: true, presence, ...more };
}

/** A plain number that has no unit, as a multiplier or an efficiency curve's factor. */
export function plain<P extends Presence<number>>(
  label: string,
  range: readonly [number, number],
  presence: P,
  more: More = {},
): NumberField<P> {
  return { kind: 'number', label, range, whole: false, presence, ...more };
}

/** What one of a unit costs; a number alone is for the unit of `per`. */
export function price<P extends Presence<number>>(
  label: string,
  range: readonly [number, number],
  per: SoldBy,
  presence: P,
  more: More = {},
): PriceField<P> {
  return { kind: 'number', label, range, whole: false, per, presence, ...more };
}

export function choice<const C extends string, P extends Presence<NoInfer<C>>>(
  label: string,
  choices: readonly C[],
  presence: P,
  more: More = {},
): ChoiceField<C, P> {
  return { kind: 'choice', label, choices, presence, ...more };
}

export function text<P extends Presence<string>>(
  label: string,
  presence: P,
  more: More & { longest?: number; examples?: readonly string[] } = {},
): TextField<P> {
  return { kind: 'text', label, longest: 80, presence, ...more };
}

export function flag<P extends Presence<boolean>>(label: string, presence: P, more: More = {}): FlagField<P> {
  return { kind: 'flag', label, presence, ...more };
}

export function days<P extends Presence<string>>(label: string, presence: P): DaysField<P> {
  return { kind: 'days', label, presence };
}

export function date<P extends Presence<string>>(label: string, presence: P): DateField<P> {
  return { kind: 'date', label, presence };
}

export function list<I extends Field, P extends Presence>(
  label: string,
  of: I,
  countRange: readonly [number, number],
  presence: P,
  more: More = {},
): ListField<I, P> {
  return { kind: 'list', label, of, count: countRange, presence, ...more };
}

export function group<G extends Fields, P extends Presence>(
  label: string,
  fields: G,
  presence: P,
): GroupField<G, P> {
  return { kind: 'group', label, fields, presence };
}

export function variants<const B extends string, C extends Record<string, Fields>, P extends Presence>(
  label: string,
  by: B,
  cases: C,
  presence: P,
  more: More = {},
): VariantsField<B, C, P> {
  return { kind: 'variants', label, by, cases, presence, ...more };
}
