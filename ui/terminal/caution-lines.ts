/** Cautions as a terminal shows them, of a run and of an answer alike. */
import type { Severity } from '../../sim/index.ts';
import { licensedWords, severityWords } from '../words/index.ts';
import { type Paint, paint, type Screen } from './screen.ts';
import { harmless, wrap } from './text.ts';

export interface CautionShown {
  severity: Severity;
  title: string | null;
  text: string;
  /** The sentence on codes and licensed trades, null where they have no say. */
  licensed: string | null;
}

/** Stands for the sentence on codes and licensed trades, which is said once, at the end. */
const mark = '*';

const paints: Record<Severity, Paint> = { danger: 'red', warning: 'yellow', note: 'cyan' };

/** `! Danger: Carbon monoxide. * It kills.` */
export function cautionLines({ severity, title, text, licensed }: CautionShown, screen: Screen): string[] {
  const marked = licensed === null ? '' : ` ${mark}`;
  const told = title === null ? `${text}${marked}` : `${title}.${marked} ${text}`;
  return wrap(`  ! ${harmless(`${severityWords[severity]}: ${told}`.trimEnd())}`, screen.width, '    ').map(
    (line) => paint(screen, paints[severity], line),
  );
}

/** The sentence that the marks stand for, where one stands. */
export function licensedLines(shown: readonly Pick<CautionShown, 'licensed'>[], screen: Screen): string[] {
  const due = shown.some(({ licensed }) => licensed !== null);
  return due ? wrap(`${mark} ${licensedWords}`, screen.width, '  ') : [];
}
