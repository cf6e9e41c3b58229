/** The door for texts that `sim` writes: each passes here on its way to a person, and comes out in their language. */
import { withDecimalSign } from './locale.ts';
import { simTexts } from './sim-texts.ts';

/** Texts with holes as patterns, those with most text of their own first. */
interface Template {
  pattern: RegExp;
  /** The longest stretch between holes: what lacks it cannot fit. */
  landmark: string;
  /** Holes in quotes hold words of the file, which are the same in every language. */
  quoted: boolean[];
  said: string;
}

const templates: readonly Template[] = Object.keys(simTexts)
  .filter((text) => text.includes('{}'))
  .sort((a, b) => ownLength(b) - ownLength(a))
  .map((text) => compiled(text, simTexts[text]));

const isEnglish = Object.keys(simTexts).length === 0;
const known = new Map<string, string>();
const MOST_KNOWN = 4000;

/** A text of `sim` in the language of these words; as it is, with the language's decimal sign, where none is known. */
export function fromSim(text: string): string {
  if (isEnglish) return withDecimalSign(text);
  let said = known.get(text);
  if (said === undefined) {
    said = translated(text);
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(text, said);
  }
  return said;
}

function translated(text: string): string {
  if (Object.hasOwn(simTexts, text)) return simTexts[text];
  for (const { pattern, landmark, quoted, said } of templates) {
    const held = text.includes(landmark) ? pattern.exec(text) : null;
    if (held)
      return filled(
        said,
        held.slice(1).map((part, i) => (quoted[i] ? part : fromSim(part))),
      );
  }
  return withDecimalSign(text);
}

/** `{}` takes what stands there in the order of the English text, `{1}` what stood in its second hole. */
function filled(said: string, parts: readonly string[]): string {
  let next = 0;
  return said.replace(
    /\{(\d*)\}/g,
    (_, number: string) => parts[number === '' ? next++ : Number(number)] ?? '',
  );
}

function compiled(text: string, said: string): Template {
  const stretches = text.split('{}');
  const source = stretches.map((each) => each.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&')).join('(.*?)');
  return {
    pattern: new RegExp(`^${source}$`, 's'),
    landmark: stretches.reduce((longest, each) => (each.length > longest.length ? each : longest)),
    quoted: stretches.slice(1).map((after, i) => stretches[i].endsWith('"') && after.startsWith('"')),
    said,
  };
}

function ownLength(text: string): number {
  return text.replaceAll('{}', '').length;
}
