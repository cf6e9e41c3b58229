/** How materials are hatched where the plane cuts them. */
import { tag } from '../svg.ts';

const WEAVES: Record<string, string> = {
  'mineral wool': 'batt',
  fibreglass: 'batt',
  cellulose: 'batt',
  'sheep wool': 'batt',
  'straw bale': 'batt',
  plywood: 'wood',
  steel: 'metal',
  'stainless steel': 'metal',
  copper: 'metal',
  aluminium: 'metal',
  concrete: 'stone',
  polyethylene: 'plastic',
  polypropylene: 'plastic',
};

/** How a material is hatched: foams of any kind are dotted. */
export function weaveOf({ material }: { material: string }): string {
  return WEAVES[material] ?? 'foam';
}

/** The hatchings, to stand once in the drawing. */
export function weaves(): string {
  const pattern = (id: string, size: number, inner: string, turn?: number) =>
    tag(
      'pattern',
      {
        id: `section-${id}`,
        width: size,
        height: size,
        patternUnits: 'userSpaceOnUse',
        patternTransform: turn && `rotate(${turn})`,
      },
      tag('rect', { class: `weave-${id}`, width: size, height: size }),
      inner,
    );
  const line = (id: string, d: string) => tag('path', { class: `weave-${id}-mark`, d });
  const dot = (id: string, x: number, y: number) =>
    tag('circle', { class: `weave-${id}-mark`, cx: x, cy: y, r: 0.8 });
  return tag(
    'defs',
    {},
    pattern('foam', 7, dot('foam', 1.8, 1.8) + dot('foam', 5.3, 5.3)),
    pattern('batt', 8, line('batt', 'M0,6c2,-6 6,-6 8,0')),
    pattern('wood', 4, line('wood', 'M0,2H4'), 55),
    pattern('metal', 3, line('metal', 'M0,1.5H3'), -45),
    pattern('plastic', 6, line('plastic', 'M0,3H6'), -45),
    pattern('stone', 9, dot('stone', 2, 3) + line('stone', 'M5,7l2,-3l1,3z')),
    pattern('hatch', 4, line('hatch', 'M0,2H4'), 45),
  );
}
