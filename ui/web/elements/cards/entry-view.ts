/** One entry of a card in words: what stands in its box, how it was understood, where it comes from, what is wrong. */
import {
  type Assumed,
  dimensions,
  exampleOf,
  isBareNumber,
  type Note,
  type OutlineEntry,
  type OutlineNode,
  type Problem,
  readEntry,
  soldIn,
  tubeNamed,
} from '../../../../sim/index.ts';
import {
  bandText,
  boxText,
  cardWords,
  fromSim,
  priceText,
  quantityText,
  readTyped,
  shelfWords,
  sourceText,
  type Trouble,
  tubeText,
  typedText,
  type Units,
  understoodText,
} from '../../../words/index.ts';

/** What stands around an entry while it is shown. */
export interface Surroundings {
  problems: readonly Problem[];
  notes: readonly Note[];
  /** By path: text that could not be read. */
  typed: Readonly<Record<string, string>>;
  units: Units;
  /** What is being typed now, and not yet entered. */
  draft: { path: string; text: string } | null;
  /** The whole around it has said where this comes from. */
  sourced: Assumed | null;
  /** Paths at which an example stands until somebody knows better. */
  examples: ReadonlySet<string>;
}

export interface EntryView {
  id: string;
  text: string;
  /** What stood in it before something unreadable was typed. */
  own: string;
  mark: 'assumed' | 'example' | null;
  understood: string | null;
  /** Where the value comes from, and what else there is to say of it. */
  lines: string[];
  trouble: Trouble | null;
  /** Ways in which what was typed could be meant. */
  meant: string[];
  /** What "Don't know" or "Leave out" puts into the file; null where neither can be said. */
  forget: { label: string; value: unknown } | null;
}

export function entryView(
  entry: OutlineEntry,
  label: string,
  siblings: readonly OutlineNode[],
  around: Surroundings,
): EntryView {
  const { path, field } = entry;
  const { units, typed, draft } = around;
  const unread = typed[path];
  const own = boxText(field, standingText(entry, units));
  const text = unread ?? own;
  const shown = draft?.path === path ? draft.text : text;
  const isExample = entry.given && isUnder(path, around.examples);
  const trouble = troubleAt(entry, label, around);
  return {
    id: idOf(path),
    text,
    own,
    mark: isExample ? 'example' : entry.given ? null : entry.assumed ? 'assumed' : null,
    understood: tubeUnderstood(entry, siblings, shown, units) ?? understoodText(field, shown, units),
    lines: unread === undefined ? linesOf(entry, isExample, around) : [shelfWords.unreadEntry],
    trouble,
    meant: unread === undefined ? [] : meantBy(entry, unread),
    forget: forgetting(entry),
  };
}

/** An id for the page from a path of the file. */
export function idOf(path: string): string {
  return `card-${path.replace(/\W/g, '-')}`;
}

/** What is wrong at a path, called by its label. */
export function problemAt(path: string, label: string, { problems }: Surroundings): Trouble | null {
  const found = problems.find((problem) => problem.path === path);
  return found ? { where: label, expected: found.expected, got: found.got, fix: found.fix } : null;
}

function troubleAt(entry: OutlineEntry, label: string, around: Surroundings): Trouble | null {
  const unread = around.typed[entry.path];
  if (unread === undefined) return problemAt(entry.path, label, around);
  const read = readTyped(entry.field, unread);
  return read.ok ? null : refusedTyping(entry, label, read);
}

/** What is wrong with a typed text, and the button that answers it as well. */
export function refusedTyping(
  entry: OutlineEntry,
  label: string,
  { expected, got, fix }: Omit<Trouble, 'where'>,
): Trouble {
  const button = forgetting(entry)?.label;
  return {
    where: label,
    expected,
    got,
    fix: button === undefined ? fix : `${fromSim(fix)}${cardWords.orForget(button)}`,
  };
}

/** As it stands in the file; what is assumed, and a price that is a mere number, in the reader's units. */
function standingText({ field, value, given }: OutlineEntry, units: Units): string {
  if (value === undefined || value === null) return '';
  const text = typeof value === 'object' ? JSON.stringify(value) : String(value);
  if (field.kind === 'number' && field.per && typeof value === 'number')
    return priceText(value, field.per, units, { plain: true });
  if (given || field.kind !== 'quantity') return text;
  const read = readEntry(field, text);
  return read.ok && typeof read.value.means === 'number'
    ? quantityText(read.value.means, field.dimension, units, { digits: 4, plain: true })
    : text;
}

function linesOf(entry: OutlineEntry, isExample: boolean, { notes, units, sourced }: Surroundings): string[] {
  const { path, assumed, absent, field, given } = entry;
  const own = notes.filter((note) => note.path === path).map(({ text }) => `${fromSim(text)}.`);
  if (isExample) return [cardWords.exampleNote, ...own];
  if (given) return own;
  if (!assumed) return absent === null ? own : [`${cardWords.notGiven}: ${fromSim(absent)}.`, ...own];
  // A name needs no source.
  const said = field.kind === 'text' || (sourced !== null && sourceText(sourced) === sourceText(assumed));
  const source = said ? [] : [sourceText(assumed)];
  const band = assumed.band ? [bandText(field, assumed.band, units)] : [];
  return [...source, ...band, ...own];
}

/** A size is understood as the tube that it names in the standard beside it. */
function tubeUnderstood(
  { path, field }: OutlineEntry,
  siblings: readonly OutlineNode[],
  text: string,
  units: Units,
): string | null {
  if (field.kind !== 'text' || !path.endsWith('.size')) return null;
  const kind = siblings.find((node) => node.kind === 'entry' && node.decides === 'kind');
  const tube = kind?.kind === 'entry' ? tubeNamed(kind.value, text) : null;
  return tube && tubeText(tube, units);
}

/** A bare number with each unit it could have been meant in, the usual ones of both systems. */
function meantBy({ field }: OutlineEntry, text: string): string[] {
  if (field.kind === 'number' && field.per) {
    const { per } = field;
    if (!isBareNumber(typedText(field, text))) return [];
    return (['US', 'SI'] as const).map((units) => `${text.trim()}/${soldIn(per, units)}`);
  }
  if (field.kind !== 'quantity' || !/^[\d./ -]+$/.test(typedText(field, text.trim()))) return [];
  const { units } = dimensions[field.dimension];
  const usual = field.example.replace(/^[\d./ -]*/, '');
  const [us, si] = (['US', 'SI'] as const).map((own) =>
    units.filter(({ system }) => system === own || system === 'both').map(({ symbol }) => symbol),
  );
  const symbols = new Set([usual, ...us.slice(0, 2), ...si.slice(0, 2)]);
  return [...symbols].map((symbol) => `${text.trim()} ${symbol}`).filter((each) => readTyped(field, each).ok);
}

function forgetting({ given, need, field, decides }: OutlineEntry): EntryView['forget'] {
  if (!given) return null;
  if (need === 'optional') return { label: cardWords.leaveOut, value: undefined };
  if (need !== 'required') return { label: cardWords.dontKnow, value: undefined };
  if (decides !== null || (field.kind !== 'quantity' && field.kind !== 'number')) return null;
  return { label: cardWords.dontKnow, value: exampleOf(field) };
}

/** Whether a path, or a whole that it is part of, is among those. */
export function isUnder(path: string, paths: ReadonlySet<string>): boolean {
  if (paths.size === 0) return false;
  return [...paths].some(
    (each) => path === each || path.startsWith(`${each}.`) || path.startsWith(`${each}[`),
  );
}

/** Problems of a part at places that its card does not show, so that none is lost. */
export function strayTroubles(
  part: string,
  shown: ReadonlySet<string>,
  problems: readonly Problem[],
): Trouble[] {
  return problems
    .filter(({ path }) => isUnder(path, new Set([part])) && !shown.has(path))
    .map(({ path, expected, got, fix }) => ({ where: path, expected, got, fix }));
}
