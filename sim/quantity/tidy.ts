/** Brings typed and pasted text into plain letters and signs, without changing what it says. */

const vulgarFractions: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const raisedDigits: Readonly<Record<string, string>> = { '¹': '1', '²': '2', '³': '3', '⁴': '4', '⁻': '-' };

/** A fraction sign ends with a blank, so that a digit behind it stays apart and is refused. */
export function tidy(text: string): string {
  return (
    text
      .replace(/[−‐‑‒–﹣－]/g, '-')
      .replace(
        /(-?)([¼½¾⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])/g,
        (_, dash: string, sign: string) => `${dash || ' '}${vulgarFractions[sign]} `,
      )
      // Raised digits count only behind a letter: `5²` is not 52.
      .replace(
        /(?<=[A-Za-z])⁻?[¹²³⁴]/g,
        (raised) => `^${[...raised].map((sign) => raisedDigits[sign]).join('')}`,
      )
      .replace(/[º˚]/g, '°')
      .replace(/℉/g, '°F')
      .replace(/℃/g, '°C')
      .replace(/[′’‘ʹ]/g, "'")
      .replace(/[″”“ʺ]/g, '"')
      .replace(/[⋅∙•‧×]/g, '·')
      .replace(/[⁄∕]/g, '/')
      .replace(/\s+/g, ' ')
      .trim()
  );
}
