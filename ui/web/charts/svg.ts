/** Drawings as text: pure, cheap to test without a browser, and put into the page by one element. */

export type Attributes = Record<string, string | number | undefined>;

/** One element as text; numbers are rounded to a tenth of a pixel, which no eye can tell and tests can read. */
export function tag(name: string, attributes: Attributes, ...children: string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? px(value) : escapeText(String(value))}"`)
    .join('');
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join('')}</${name}>`;
}

/** Text inside a drawing; the caller's words are never read as markup. */
export function label(words: string, x: number, y: number, attributes: Attributes = {}): string {
  return tag('text', { x, y, ...attributes }, escapeText(words));
}

export function px(value: number): string {
  const rounded = Math.round(value * 10) / 10;
  return String(Object.is(rounded, -0) ? 0 : rounded);
}

export function escapeText(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
