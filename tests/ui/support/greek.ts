/** A language made by machine: what sim says, letter by letter in Greek, so that what is left in Latin letters was not translated. */
const greek = 'αβψδεφγηιξκλμνοπθρστυβωχυζ';

function inGreek(text: string): string {
  return text.replace(/[a-z]/gi, (letter) => {
    const own = greek[letter.toLowerCase().charCodeAt(0) - 97];
    return letter === letter.toLowerCase() ? own : own.toUpperCase();
  });
}

/** The table of that language for texts as the tool lists them. */
export function greekTable(texts: readonly string[]): Record<string, string> {
  return Object.fromEntries(texts.map((text) => [text, inGreek(text)]));
}
