/** What a chart gives to be saved: numbers, and a picture of itself. */
import { html, render, type TemplateResult } from 'lit';
import type { Sheet } from '../../app/files/csv.ts';
import type { Picture } from './standalone.ts';
import { inDaylight, styledCopy } from './styled-copy.ts';

export interface Savable {
  /** Name of its files, without what they end in. */
  stem: string;
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

/** Drawn for files as wide as this, however narrow the window is [px]. */
export const saved_px = 900;

/** A drawing that has its colours from style sheets alone, below an element of these classes; with keys to its signs. */
export function pictureFrom(
  view: TemplateResult,
  className: string,
  keys: { swatch: TemplateResult; words: string }[] = [],
): Promise<Picture> {
  return inDaylight((room) => {
    const place = document.createElement('div');
    place.className = className;
    room.append(place);
    render(html`${view}${keys.map(({ swatch }) => swatch)}`, place);
    const [drawing, ...swatches] = place.querySelectorAll<SVGElement>(':scope > svg');
    return {
      drawing: styledCopy(drawing),
      ...sizeOf(drawing),
      keys: swatches.map((swatch, i) => ({ swatch: styledCopy(swatch), words: keys[i].words })),
      notes: [],
    };
  });
}

export function sizeOf(svg: SVGElement): { width: number; height: number } {
  return { width: Number(svg.getAttribute('width')), height: Number(svg.getAttribute('height')) };
}
