/** Numbers that are said rather than written, where they can mean one thing only: `half a gallon`, `a quarter inch`. */

const counts = [
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];
const count = counts.join('|');
const number = (word: string) => counts.indexOf(word.toLowerCase()) + 1;

/** What stands at the beginning of a text, and the number it is. Longest first. */
const starts: readonly [RegExp, (said: RegExpExecArray) => string][] = [
  [new RegExp(`^(${count}|an?) and a (half|quarter)(?: an?)? (?=[a-z])`, 'i'), mixed],
  [/^(?:a |one )?half (?:of )?(?:an? )?(?=[a-z])/i, () => '1/2 '],
  [/^(?:a |one )?quarter (?:of )?(?:an? )?(?=[a-z])/i, () => '1/4 '],
  [/^three[ -]quarters (?:of )?(?:an? )?(?=[a-z])/i, () => '3/4 '],
  [new RegExp(`^(${count}) (?=[a-z])`, 'i'), ([, word]) => `${number(word)} `],
  [/^an? (?=[a-z])/i, () => '1 '],
];

function mixed([, whole, part]: RegExpExecArray): string {
  return `${Math.max(1, number(whole))} ${part.toLowerCase() === 'half' ? '1/2' : '1/4'} `;
}

/** With a number said at the beginning written in digits, and `a gallon an hour` as a gallon per hour; else as it is. */
export function inDigits(text: string): string {
  const paced = text.replace(/(?<=[a-z]) an? (?=(?:second|minute|hour|day|week)$)/i, ' per ');
  for (const [start, written] of starts) {
    const said = start.exec(paced);
    if (said) return written(said) + paced.slice(said[0].length);
  }
  return paced;
}
