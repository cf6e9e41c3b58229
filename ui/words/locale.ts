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
  return `${numberText(many)} ${formFor(many, { one, other: more })}`;
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

const decimalSign = new Intl.NumberFormat(locale)
  .formatToParts(1.5)
  .find(({ type }) => type === 'decimal')?.value;
const hasPoint = decimalSign === undefined || decimalSign === '.';

/** A text with numbers as files have them, as this language writes them; what is in quotes stays the file's. */
export function withDecimalSign(text: string): string {
  if (hasPoint) return text;
  return text.replace(
    /"[^"]*"|(?<![\w.])(\d+)\.(\d+)(?![\w.]*\.\d)/g,
    (all, whole?: string, part?: string) => (whole === undefined ? all : `${whole}${decimalSign}${part}`),
  );
}

/** A number with the digits it has. */
export function numberText(value: number): string {
  return withDecimalSign(String(value));
}

/** A text that was typed in this language, with its numbers as files have them. */
export function withPoint(text: string): string {
  return hasPoint
    ? text
    : text.replaceAll(decimalSign, (sign, at: number) => (/\d/.test(text[at + 1] ?? '') ? '.' : sign));
}
