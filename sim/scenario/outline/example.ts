/** A value to begin with, where the file must say something and nothing can stand in. */
import type { Field, Fields, NumberField } from '../field.ts';

/** As it could stand in the file; what may be left out is left out. */
export function exampleOf(field: Field): unknown {
  switch (field.kind) {
    case 'quantity':
      return field.example;
    case 'number':
      return numberFor(field);
    case 'choice':
      return field.choices[0];
    case 'text':
      return field.examples?.[0] ?? field.label;
    case 'flag':
      return true;
    case 'days':
      return 'every day';
    case 'date':
      return '01-01';
    case 'list':
      return Array.from({ length: Math.max(1, field.count[0]) }, () => exampleOf(field.of));
    case 'group':
      return requiredOf(field.fields);
    case 'variants': {
      const [word] = Object.keys(field.cases);
      return { [field.by]: word, ...requiredOf(field.cases[word]) };
    }
  }
}

function requiredOf(fields: Fields): Record<string, unknown> {
  const needed = Object.entries(fields).filter(([, { presence }]) => presence.need === 'required');
  return Object.fromEntries(needed.map(([key, field]) => [key, exampleOf(field)]));
}

/** Ten of anything that is counted; halfway along a share or a factor. */
function numberFor({ range: [low, high], whole }: NumberField): number {
  return whole ? Math.min(high, Math.max(low, 10)) : (low + high) / 2;
}
