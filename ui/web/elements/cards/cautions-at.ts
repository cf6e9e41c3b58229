/** The cautions that stand at a place of a card. */
import type { TemplateResult } from 'lit';
import { cautionNote } from '../caution-note.ts';
import type { Hands } from './hands.ts';

export function cautionsAt(path: string, { cautions, units }: Hands): TemplateResult[] {
  return cautions
    .filter((each) => each.path === path)
    .map(({ caution }) => cautionNote(caution, units, { place: 'card-' }));
}
