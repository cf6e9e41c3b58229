/** One list of every figure, series channel and ledger path: it feeds tables, charts, CSV heads and documents. */
import { channels, paths } from './glossary-channels.ts';
import type { GlossaryEntry } from './glossary-entry.ts';
import { figures } from './glossary-figures.ts';

export type { GlossaryEntry } from './glossary-entry.ts';

export const glossary: readonly GlossaryEntry[] = [...channels, ...paths, ...figures];
