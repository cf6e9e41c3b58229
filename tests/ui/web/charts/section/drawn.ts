/** Drawings for tests, and how to measure in them. */
import type { SectionFacts } from '../../../../../sim/index.ts';
import { lightPalette } from '../../../../../ui/web/charts/palette.ts';
import { type SectionOptions, sectionDrawing } from '../../../../../ui/web/charts/section/section-drawing.ts';

export function drawn(facts: SectionFacts, options: Partial<SectionOptions> = {}) {
  const drawing = sectionDrawing(facts, {
    width: 700,
    height: 720,
    layer_C: [20, 40, 60],
    scale: { low: 20, pivot: 40, high: 60 },
    palette: lightPalette,
    units: 'US',
    ...options,
  });
  return { ...drawing, svg: drawing.sheets.join('') };
}

/** Attributes of every element with a class, in the order of the drawing. */
export function withClass(svg: string, name: string): Record<string, string>[] {
  const elements = [...svg.matchAll(/<([a-zA-Z]+)((?: [a-zA-Z0-9-]+="[^"]*")*)\/?>/g)];
  return elements
    .map(([, , text]) =>
      Object.fromEntries(
        [...text.matchAll(/ ([a-zA-Z0-9-]+)="([^"]*)"/g)].map(([, key, value]) => [key, value]),
      ),
    )
    .filter((attributes) => attributes.class === name);
}

export function texts(svg: string): string[] {
  return [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text);
}
