/**
 * Drawings as they look, written into their own elements: a file has no style sheet. Their looks are read off a copy in
 * a room of its own, where it is always day: paper is white.
 */

const svgNS = 'http://www.w3.org/2000/svg';

/** What style sheets say of drawings, with what holds where nothing is said; the first ones are handed down to children. */
const inherited: Record<string, string> = {
  fill: 'rgb(0, 0, 0)',
  'fill-opacity': '1',
  'fill-rule': 'nonzero',
  stroke: 'none',
  'stroke-width': '1px',
  'stroke-opacity': '1',
  'stroke-dasharray': 'none',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'font-family': '',
  'font-size': '',
  'font-style': 'normal',
  'font-weight': '400',
  'text-anchor': 'start',
  'dominant-baseline': 'auto',
  'paint-order': 'normal',
  visibility: 'visible',
};
const own: Record<string, string> = {
  opacity: '1',
  'vector-effect': 'none',
  'stop-color': 'rgb(0, 0, 0)',
  'stop-opacity': '1',
  'clip-path': 'none',
  mask: 'none',
};
/** For the page alone: in a file they say nothing, or the wrong thing. */
const dropped = /^(class|style|tabindex|role|aria-.*|data-.*)$/;

/** The same drawing with its looks as attributes; what it refers to elsewhere in the document comes with it. */
export function styledCopy(source: SVGElement): SVGElement {
  const found = copyOf(source, inherited);
  if (!found) throw new Error('picture - expected a drawing that is shown - got none - report this');
  const wanted = new Set<string>();
  for (const element of [found, ...found.querySelectorAll('*')]) {
    for (const { value } of element.attributes) {
      for (const [, id] of value.matchAll(/url\(#([^)]+)\)/g)) wanted.add(id);
    }
  }
  const elsewhere = [...wanted]
    .filter((id) => !found.querySelector(`#${CSS.escape(id)}`))
    .flatMap((id) => document.getElementById(id) ?? [])
    .flatMap((element) => copyOf(element, inherited) ?? []);
  if (elsewhere.length > 0) {
    const defs = document.createElementNS(svgNS, 'defs');
    defs.append(...elsewhere);
    found.prepend(defs);
  }
  return found;
}

/** Null where it is not shown. */
function copyOf(source: Element, above: Record<string, string>): SVGElement | null {
  const style = getComputedStyle(source);
  if (style.display === 'none') return null;
  const copy = document.createElementNS(svgNS, source.localName);
  for (const { name, value } of source.attributes) if (!dropped.test(name)) copy.setAttribute(name, value);
  const here: Record<string, string> = {};
  for (const [key, otherwise] of Object.entries(inherited)) {
    here[key] = saidOf(style, key);
    if (here[key] !== (above[key] ?? otherwise)) copy.setAttribute(key, here[key]);
    else copy.removeAttribute(key);
  }
  for (const [key, otherwise] of Object.entries(own)) {
    const value = saidOf(style, key);
    if (value === otherwise) copy.removeAttribute(key);
    else copy.setAttribute(key, value);
  }
  for (const node of source.childNodes) {
    const child =
      node instanceof Element ? copyOf(node, here) : document.createTextNode(node.textContent ?? '');
    // lit leaves comments where its templates begin and end.
    if (child && node.nodeType !== Node.COMMENT_NODE) copy.append(child);
  }
  return copy;
}

/** References are told with the page's address or without; in a file only the name is right. */
function saidOf(style: CSSStyleDeclaration, key: string): string {
  return style.getPropertyValue(key).replace(/url\(["']?[^"')]*#([^"')]+)["']?\)/g, 'url(#$1)');
}

/** A place out of sight with the page's light colours, in which to draw; what stood in it is gone after `act`. */
export async function inDaylight<T>(act: (room: HTMLElement) => T | Promise<T>): Promise<T> {
  const room = document.createElement('div');
  room.className = 'unseen';
  room.inert = true;
  room.style.setProperty('forced-color-adjust', 'none');
  for (const [name, value] of lightColours()) room.style.setProperty(name, value);
  document.body.append(room);
  try {
    return await act(room);
  } finally {
    room.remove();
  }
}

/** Those that hold unless the reader asked for dark or for colours of their own. */
function lightColours(): [name: string, value: string][] {
  return [...document.styleSheets].flatMap(({ cssRules }) =>
    [...cssRules].flatMap((rule) => {
      if (!(rule instanceof CSSStyleRule) || rule.selectorText !== ':root') return [];
      return [...rule.style]
        .filter((name) => name.startsWith('--'))
        .map((name): [string, string] => [name, rule.style.getPropertyValue(name)]);
    }),
  );
}
