/** Cautions that say the same of several parts, told once. */
import type { Caution } from '../../sim/index.ts';
import { nameText } from './input-text.ts';

/** Wholes of the file, which have no name of their own. */
const wholes: Readonly<Record<string, string>> = { supply: 'water supply', taps: 'taps', store: 'store' };

export interface CautionGroup {
  /** The first of them. */
  caution: Caution;
  /** Parts it is about, where there are several; none for one, which its sentence is about anyway. */
  parts: string[];
}

/** In the order of the first of each; alike in words, number and severity. */
export function together(cautions: readonly Caution[]): CautionGroup[] {
  const groups = new Map<string, Caution[]>();
  for (const caution of cautions) {
    const { part: _, ...said } = caution;
    const key = JSON.stringify(said);
    groups.set(key, [...(groups.get(key) ?? []), caution]);
  }
  return Array.from(groups.values(), (own) => ({
    caution: own[0],
    parts: own.length > 1 ? own.map(({ part }) => part) : [],
  }));
}

/** `Water trapped in a coil (household, engine)`. */
export function titleOf(title: string, parts: readonly string[]): string {
  return parts.length === 0
    ? title
    : `${title} (${parts.map((part) => wholes[part] ?? nameText(part)).join(', ')})`;
}
