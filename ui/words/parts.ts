/** Words of the part cards: what a value is called, where an assumption comes from, what to do about it. */
import {
  type Assumed,
  type Band,
  type DimensionKey,
  type EntryField,
  formatQuantity,
  type Grade,
  isBareNumber,
  type NamedTube,
  readEntry,
  readPrice,
} from '../../sim/index.ts';
import { dateWords, monthNames, weekdayNames } from './dates.ts';
import { fromSim } from './from-sim.ts';
import { counted, numberText, withDecimalSign, withPoint } from './locale.ts';
import { inchesText, priceText, quantityText, systemOf, type Units } from './units.ts';

export const cardWords = {
  assumed: 'assumed',
  example: 'example',
  dontKnow: 'Don’t know',
  orForget: (button: string) => `, or press “${button}” beside it`,
  leaveOut: 'Leave out',
  describe: 'Describe it',
  add: 'Add one',
  remove: 'Remove',
  measure: 'Measure it this way',
  close: 'Close',
  yes: 'yes',
  no: 'no',
  notGiven: 'not given',
  none: 'None yet.',
  use: 'Did you mean',
  exampleNote: 'This is only an example, put in so that the rest can run: put your own value in its place.',
  guessNote: 'Nothing can stand in for this value, so an example does for now.',
  elsewhere: 'In this part',
  more: (values: number, assumed: number) =>
    `More about this part: ${counted(values, 'value')}, ${assumed} assumed`,
  count: (given: number, assumed: number) =>
    assumed === 0
      ? `${counted(given, 'value')}, all yours.`
      : `${counted(given, 'value is yours', 'values are yours')}, ${assumed} assumed.`,
  within: (given: number, assumed: number) =>
    [given > 0 ? `${given} yours` : '', assumed > 0 ? `${assumed} assumed` : ''].filter(Boolean).join(', '),
  understood: (label: string, text: string) => `${label}: ${text}`,
  doubt: {
    title: 'How sure',
    legend: (label: string) => `How sure of ${label}`,
    sure: 'sure',
    ownBand: 'as the band it comes with',
    'a little': 'a little unsure',
    'a lot': 'a lot',
    between: 'between',
    help: 'What is unsure is varied in Doubts, and widens the bands of the other answers.',
    reach: (low: string, high: string) => `Believed from ${low} to ${high}.`,
    nothing: 'A share of nothing is nothing: choose “between” and name both ends.',
    from: 'Lowest',
    to: 'Highest',
    order: { expected: 'more than the lowest', fix: 'swap the two, or move one of them' },
  },
  range: {
    title: 'Try a range',
    help: 'Runs the design once for each value between these two and shows what changes.',
    from: 'From',
    to: 'To',
    steps: 'Values',
    run: 'Run them',
    same: { expected: 'another value than the first', fix: 'move one of the two' },
    count: { expected: 'a whole number of values, 2 to 200', fix: 'write it as in "7"' },
  },
} as const;

/** How far a source can be trusted. */
const gradeWords: Record<Grade, string> = {
  A: 'from a handbook, a standard or logged data',
  B: 'measured, or known from long practice',
  C: 'asserted, without a measurement seen',
  D: 'common practice, no measurement behind it',
  invented: 'invented, to be replaced',
};

/** Names of the words that decide what else a thing has. */
export const decidingWords: Readonly<Record<string, string>> = {
  shape: 'Shape',
  where: 'Where',
  kind: 'Kind',
  by: 'Given by',
};

const partTitles: Readonly<Record<string, string>> = {
  store: 'Store',
  coils: 'Coil',
  engine: 'Engine generator',
  collector: 'Solar collector',
  supply: 'Cold water supply',
  taps: 'Household',
  'taps.showers': 'Showers',
  'taps.draws': 'Draw',
  backup: 'Backup heater',
  weather: 'Weather',
  site: 'Site',
  run: 'Run',
  prices: 'Prices',
};

/** "Coil: household" for a part with a name, "Store" for one without. */
export function partTitle(path: string, name: string | null): string {
  const kind = path.replace(/\[\d+\]$/, '');
  // A file may have names that every object knows.
  const title = Object.hasOwn(partTitles, kind) ? partTitles[kind] : sentenceCase(path);
  return name === null ? title : `${title}: ${name}`;
}

export function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** What an item of a list is called: a month where there are twelve, else its number. */
export function itemLabel(label: string, index: number, count: readonly [number, number]): string {
  return count[0] === 12 && count[1] === 12
    ? monthNames[index]
    : `${sentenceCase(fromSim(label))} ${index + 1}`;
}

/** An entry's text as it stands in its box: as the file has it, but with the language's decimal sign. */
export function boxText({ kind }: EntryField, text: string): string {
  return isNumeric(kind) ? withDecimalSign(text) : text;
}

/** What a box holds, as a file has it. */
export function typedText({ kind }: EntryField, text: string): string {
  return isNumeric(kind) ? withPoint(text) : text;
}

/** Whether a person says that they do not know, as the button beside the box does. */
export function saysUnknown(text: string): boolean {
  return /^(?:i )?(?:don[’'`]?t|do not) know[.!]?$|^(?:unknown|not sure|no idea|\?+)$/i.test(text.trim());
}

function isNumeric(kind: EntryField['kind']): boolean {
  return kind === 'quantity' || kind === 'number';
}

/** Reads what a box holds; what is wrong with it names it as it was typed. A price has to say what it is for. */
export function readTyped(field: EntryField, text: string): ReturnType<typeof readEntry> {
  const plain = typedText(field, text);
  if (field.kind === 'number' && field.per && isBareNumber(plain)) {
    const read = readPrice(plain, field.per);
    if (!read.ok) return { ...read, got: `"${text.trim()}"` };
  }
  const read = readEntry(field, plain);
  return read.ok || plain === text ? read : { ...read, got: read.got.replace(plain.trim(), text.trim()) };
}

/** What a typed text was understood as, in both systems; null where it says no more than was typed. */
export function understoodText(field: EntryField, text: string, units: Units): string | null {
  const words = meaningText(field, text, units);
  return words === text.trim() ? null : words;
}

function meaningText(field: EntryField, text: string, units: Units): string | null {
  const read = readTyped(field, text);
  if (!read.ok) return null;
  const { means } = read.value;
  if (field.kind === 'number' && field.per && typeof means === 'number') {
    const [first, second] = units === 'SI' ? (['SI', 'US'] as const) : (['US', 'SI'] as const);
    return `${priceText(means, field.per, first)} (${priceText(means, field.per, second)})`;
  }
  if (field.kind === 'quantity' && typeof means === 'number')
    return inBoth(means, field.dimension, units, field.example);
  if (field.kind === 'days' && Array.isArray(means)) {
    return means.length === 7 ? 'every day' : means.map((day) => weekdayNames[day]).join(', ');
  }
  if (field.kind === 'date' && typeof means === 'object' && means !== null && 'day' in means) {
    const { day, weekday } = means;
    return weekday === null ? dateWords(day) : `${weekdayNames[weekday]} ${dateWords(day)}`;
  }
  return null;
}

/** A value in the reader's system, the other in brackets: `32 in (813 mm)`. */
export function inBoth(value_SI: number, dimension: DimensionKey, units: Units, like?: string): string {
  const own = systemOf(units, dimension);
  const [first, second] = own === 'US' ? (['US', 'SI'] as const) : (['SI', 'US'] as const);
  const [a, b] = [first, second].map((system) => asRead(value_SI, dimension, system, like));
  return a === b ? a : `${a} (${b})`;
}

const tape_m = 0.0254 / 16;
const yard_m = 0.9144;

/** A short length that falls on a mark of the tape is read off the tape. */
function asRead(value_SI: number, dimension: DimensionKey, system: 'US' | 'SI', like?: string): string {
  const marks = value_SI / tape_m;
  const onMark = Math.abs(marks - Math.round(marks)) < 1e-6 && value_SI > 0 && value_SI < yard_m;
  return dimension === 'length' && system === 'US' && onMark
    ? inchesText(value_SI)
    : fromSim(formatQuantity(value_SI, dimension, system, like === undefined ? {} : { like }));
}

/** `3/8 in refrigeration tube = 3/8 in (9.5 mm) outside, 0.311 in (7.9 mm) inside`. */
export function tubeText({ label, outside_m, inside_m }: NamedTube, units: Units): string {
  const [outside, inside] = [outside_m, inside_m].map((each) => {
    const [inches, millimetres] = [
      asRead(each, 'length', 'US'),
      `${numberText(Math.round(each * 1e4) / 10)} mm`,
    ];
    return systemOf(units, 'length') === 'US' ? `${inches} (${millimetres})` : `${millimetres} (${inches})`;
  });
  return `${fromSim(label)} = ${outside} outside, ${inside} inside`;
}

/** Where an assumption comes from and how far it can be trusted. */
export function sourceText({ how, source, grade }: Assumed): string {
  const rule = how === null || how === source ? '' : `${sentenceCase(fromSim(how))}. `;
  const mark = grade === 'invented' ? gradeWords.invented : `grade ${grade}, ${gradeWords[grade]}`;
  return `${rule}Source: ${fromSim(source)} (${mark}).`;
}

/** The ends between which one would still believe the value. */
export function bandText(field: EntryField, band: Band, units: Units): string {
  const [low, high] = band.map((end) => endText(field, end, units));
  return `Believable from ${low} to ${high}.`;
}

function endText(field: EntryField, end: string, units: Units): string {
  const read = readEntry(field, end);
  if (!read.ok || typeof read.value.means !== 'number') return fromSim(end);
  if (field.kind === 'number' && field.per) return priceText(read.value.means, field.per, units);
  return field.kind === 'quantity' ? quantityText(read.value.means, field.dimension, units) : fromSim(end);
}
