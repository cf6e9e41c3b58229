/** The language that the words are in: its numbers, dates and plurals, by the platform's Intl. Named nowhere else. */
const locale = 'en-US';

const plurals = new Intl.PluralRules(locale);

/** The form of a word for each kind of count that the language tells apart; `other` is for all that are not named. */
export type Forms = Partial<Record<Intl.LDMLPluralRule, string>> & { other: string };

export function formFor(count: number, forms: Forms): string {
  return forms[plurals.select(count)] ?? forms.other;
}

/** `1 shower`, `3 showers`. */
export function counted(many: number, one: string, more = `${one}s`): string {
  return `${many} ${formFor(many, { one, other: more })}`;
}

/** Numbers as they stand in running text, `1,234.5`. */
export function numberFormat(options: Intl.NumberFormatOptions = {}): Intl.NumberFormat {
  return new Intl.NumberFormat(locale, options);
}

export function dateFormat(options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat(locale, options);
}

const fixedFormats = new Map<number, Intl.NumberFormat>();

/** A number with so many decimals, as in a column; no sign before nought. */
export function fixed(value: number, decimals: number): string {
  let format = fixedFormats.get(decimals);
  if (!format) {
    const both = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
    format = numberFormat({ ...both, useGrouping: false, signDisplay: 'negative' });
    fixedFormats.set(decimals, format);
  }
  return format.format(value);
}
