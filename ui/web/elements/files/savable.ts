/** What a chart gives to be saved: numbers, and a picture of itself. */
import type { Sheet } from '../../app/files/csv.ts';
import type { Picture } from './standalone.ts';
import { inDaylight, styledCopy } from './styled-copy.ts';

export interface Savable {
  title: string;
  /** Of which design and when. */
  about: string;
  sheets: { words: string; sheet: () => Sheet }[];
  /** Null where there is only a table. */
  picture: (() => Promise<Picture>) | null;
}

/** An element whose charts can be saved: a button below it carries the chart's key as `data-save`. */
export interface Saves extends Element {
  savable(key: string): Savable;
}

/** A drawing that stands in the page and has its colours from style sheets alone. */
export function pictureOf(svg: SVGElement, notes: string[] = []): Promise<Picture> {
  return inDaylight((room) => {
    let place: Element = room;
    for (const className of classesAbove(svg)) {
      const around = document.createElement('div');
      around.className = className;
      place.append(around);
      place = around;
    }
    const copy = svg.cloneNode(true) as SVGElement;
    place.append(copy);
    return { drawing: styledCopy(copy), ...sizeOf(svg), keys: [], notes };
  });
}

/** Of all elements around it, the outermost first: style sheets look at them. */
function classesAbove(element: Element): string[] {
  const around = element.parentElement;
  if (!around || around === document.body) return [];
  return [...classesAbove(around), around.className];
}

export function sizeOf(svg: SVGElement): { width: number; height: number } {
  return { width: Number(svg.getAttribute('width')), height: Number(svg.getAttribute('height')) };
}
