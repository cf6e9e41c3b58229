/** Our own plain symbols for what sits in a pipe: a ring with a sign in it, pointing the way the liquid flows. */
import { px, tag } from '../svg.ts';

export type SymbolKind = 'pump' | 'check' | 'relief' | 'mixer' | 'heater' | 'vessel' | 'drain';

export const SYMBOL_RADIUS = 8;

/** Signs in a ring about 0,0 with the flow upwards. */
const SIGNS: Record<SymbolKind, string> = {
  // A wedge thrown forward.
  pump: 'M-5,4L0,-6L5,4Z',
  // A wedge against a stop.
  check: 'M-4,5L0,-2L4,5ZM-5,-3.5H5',
  // An arrow that lifts off its seat, sideways out of the pipe.
  relief: 'M-5,5H5M0,5V-4M-3,-1L0,-5L3,-1',
  // Two streams that become one.
  mixer: 'M-5,4L0,0L5,4M0,0V-6',
  heater: 'M-4,4c4,-3 -1,-5 4,-9c0,5 6,5 3,9Z',
  vessel: 'M-7,0c3,-3 4,3 7,0c3,-3 4,3 7,0',
  drain: 'M-6,-2H6M0,0V6M-3,3L0,6L3,3',
};

const FILLED: ReadonlySet<SymbolKind> = new Set(['pump', 'check', 'heater']);

export function symbol(kind: SymbolKind, x: number, y: number, flow: 'up' | 'down'): string {
  const turned = flow === 'down' && (kind === 'pump' || kind === 'check' || kind === 'mixer');
  const place = `translate(${px(x)} ${px(y)})${turned ? ' rotate(180)' : ''}`;
  return tag(
    'g',
    { class: `symbol ${kind}`, transform: place },
    tag('circle', { r: SYMBOL_RADIUS }),
    tag('path', { class: FILLED.has(kind) ? 'filled' : 'drawn', d: SIGNS[kind] }),
  );
}
