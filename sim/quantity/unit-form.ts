/** Brings a unit, however it is written, into one form that can be looked up: `W/m²·°C` and `W/(m2 K)` are the same. */
import { splitWords, unitWords } from './unit-words.ts';

/** Phrases that are one word to the reader below. */
const phrases: readonly [RegExp, string][] = [
  [/per\s?cent\b/gi, '%'],
  [/\b(?:US|U\.S\.?)\s*(?:liquid\s+)?(?=gal|qt|quart|pt|pint|fl)/gi, ''],
  [/\b(?:imp(?:erial)?\.?|UK)\s*gal(?:lon)?s?\b/gi, 'impgal'],
  [/\bfl(?:uid)?\.?\s*(?:oz|ounces?)\b/gi, 'floz'],
  [/\b(?:ft|foot|feet)\s*(?:of\s*)?(?:water|head|H2O)\b/gi, 'ftwater'],
  [/\b(?:in|inch|inches)\s*(?:of\s*)?(?:water|H2O)\b/gi, 'inwater'],
  [/\bcm\s*(?:of\s*)?(?:water|H2O)\b/g, 'cmwater'],
  [/\b(?:m|met(?:er|re)s?)\s*(?:of\s*)?(?:water|head|H2O)\b/g, 'mwater'],
  [
    /(?:°|\bdeg(?:ree)?s?\b\.?|\bdeg(?=[FCK]))\s*(F|C|K|fahrenheit|celsius|centigrade|kelvin)(?![A-Za-z])/gi,
    ' $1',
  ],
  [/\b(?:square|sq\.?)\s*([A-Za-z]+)/gi, '$1^2'],
  [/\b(?:cubic|cu\.?)\s*([A-Za-z]+)/gi, '$1^3'],
  [/\bwatt[\s-]?hours?\b/gi, 'Wh'],
  [/\bkilowatt[\s-]?hours?\b/gi, 'kWh'],
  [/\bper\b/gi, '/'],
];

/** Word, exponent and what joins it to the one before. */
const factor = /\s*([/·*.-]?)\s*([A-Za-z%]+°?|°|''|['"])(?:\^?(-?[1-4])(?![0-9]))?\.?/y;

/** The form of a unit's text, or null if it is made of words that are no units'. */
export function unitForm(text: string): string | null {
  let rest = text;
  for (const [pattern, word] of phrases) rest = rest.replace(pattern, word);
  // A bracket may enclose all that stands before the stroke or all behind it; then it changes nothing.
  if (/[()]/.test(rest)) {
    if (!/^(?:[^()]+|\([^()]+\))\s*\/\s*(?:[^()]+|\([^()/]+\))$/.test(rest)) return null;
    rest = rest.replace(/[()]/g, ' ');
  }
  rest = rest.trim();
  const powers = new Map<string, number>();
  let side = 1;
  let at = 0;
  while (at < rest.length) {
    factor.lastIndex = at;
    const found = factor.exec(rest);
    if (!found || (at === 0 && found[1] !== '')) return null;
    if (found[1] === '/') side = -1;
    const words =
      unitWords(found[2]) ?? (powers.size > 0 || /[/·*. -]/.test(rest) ? splitWords(found[2]) : null);
    if (!words) return null;
    for (const [i, word] of words.entries()) {
      const power = side * (i === words.length - 1 ? Number(found[3] ?? 1) : 1);
      const before = powers.get(word) ?? 0;
      // What stands above and below the stroke, as in `W W/W`, was hardly meant.
      if (before * power < 0) return null;
      powers.set(word, before + power);
    }
    at = factor.lastIndex;
  }
  return written(powers);
}

function written(powers: ReadonlyMap<string, number>): string | null {
  // In a compound a degree is a difference, and a Celsius degree is a kelvin.
  const alone = powers.size === 1 && [...powers.values()][0] === 1;
  const named = [...powers].map(([word, power]): [string, number] => [
    alone ? word : word.replace(/^C°?$/, 'K').replace('F°', 'F'),
    power,
  ]);
  if (named.length === 0) return null;
  return named
    .map(([word, power]) => `${word}^${power}`)
    .sort()
    .join(' ');
}
