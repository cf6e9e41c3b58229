/** Fields of the doubts: inputs that the file's author is unsure of, and how far. */
import { list, optional, required, text, variants } from '../field.ts';

const input = text('path of the input', required, { examples: ['store.bridges', 'coils[0].outside_film'] });
const end = (label: string) => text(label, required);

const doubt = variants(
  'how unsure',
  'unsure',
  {
    'a little': { input },
    'a lot': { input },
    between: { input, from: end('lowest one would believe'), to: end('highest one would believe') },
  },
  required,
);

export const doubts = list(
  'inputs one is unsure of',
  doubt,
  [0, 200],
  optional('everything typed in counts as sure'),
);
