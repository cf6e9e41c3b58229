/** A tube as people write it on the command line: "3/8 refrigeration", "1/2 in plumbing L", "3/4 PEX". */

import { refusalWords } from '../words/index.ts';
import { refuse } from './refusal.ts';

/** Words for the standards, as said in a shop; the first that matches decides. */
const standards: [pattern: RegExp, kind: string][] = [
  [/\b(refrigeration|refrig|acr|od|b280)\b/i, 'refrigeration'],
  [/\b(plumbing|type|copper)?\s*-?\bK\b/i, 'plumbing K'],
  [/\b(plumbing|type|copper)?\s*-?\bM\b/i, 'plumbing M'],
  [/\b(plumbing|type|copper)?\s*-?\bL\b/i, 'plumbing L'],
  [/\bpex\b/i, 'PEX'],
  [/\bstainless\b/i, 'stainless'],
  [/\d+\s*(mm|x\s*\d)/i, 'metric copper'],
  [/\bplumbing\b/i, 'plumbing L'],
];

/** Size and standard. Throws a Refusal where the standard is not said: two tubes go by one size. */
export function tubeOf(text: string): { kind: string; size: string } {
  const size = /^\s*(\d+(?:[ -]\d+\/\d+|\/\d+)?(?:\s*x\s*[\d.]+)?)\s*(mm|in(?:ch(?:es)?)?\b|")?/i.exec(text);
  const rest = text.slice(size?.[0].length ?? 0);
  const metric = /mm/i.test(size?.[2] ?? '') || /x/i.test(size?.[1] ?? '');
  const kind = metric ? 'metric copper' : standards.find(([pattern]) => pattern.test(rest))?.[1];
  if (size && kind) return { kind, size: `${size[1].trim()} ${metric ? 'mm' : 'in'}` };
  throw refuse(
    '--tube',
    refusalWords.tube.expected,
    `"${text}"`,
    size ? refusalWords.tube.noKind : refusalWords.tube.noSize,
  );
}
