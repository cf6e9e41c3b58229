/** What the terminal at hand can show. */
import { ascii } from './text.ts';

export interface Screen {
  /** Columns to fill. */
  width: number;
  /** Block and line characters, or ASCII only. */
  unicode: boolean;
  colour: boolean;
}

/** The facts a screen is judged by; `columns` is undefined where output is no terminal. */
export interface Surrounding {
  columns: number | undefined;
  isTerminal: boolean;
  env: Record<string, string | undefined>;
  platform: string;
}

const narrowest = 50;
const widest = 140;
const usual = 80;

/** `plain` asks for ASCII without colour. NO_COLOR counts when present and not empty, by its own convention. */
export function screenOf({ columns, isTerminal, env, platform }: Surrounding, plain: boolean): Screen {
  const width = Math.min(widest, Math.max(narrowest, columns || Number(env.COLUMNS) || usual));
  if (plain) return { width, unicode: false, colour: false };
  return {
    width,
    unicode: showsUnicode(env, platform),
    colour: isTerminal && !env.NO_COLOR && env.TERM !== 'dumb',
  };
}

/** The first locale variable that is set decides, as in POSIX; Windows' newer terminals all show Unicode. */
function showsUnicode(env: Record<string, string | undefined>, platform: string): boolean {
  if (env.TERM === 'dumb' || env.TERM === 'linux') return false;
  const locale = env.LC_ALL || env.LC_CTYPE || env.LANG;
  if (locale) return /utf-?8/i.test(locale);
  return platform === 'darwin' || (platform === 'win32' && Boolean(env.WT_SESSION));
}

const codes = { bold: '1', dim: '2', red: '31', yellow: '33', blue: '34', cyan: '36' } as const;

export type Paint = keyof typeof codes;

/** A finished page as the screen can show it. */
export function forScreen(text: string, screen: Screen): string {
  return screen.unicode ? text : ascii(text);
}

/** `text` in colour where the screen has any. */
export function paint(screen: Screen, how: Paint, text: string): string {
  return screen.colour && text !== '' ? `\u001b[${codes[how]}m${text}\u001b[0m` : text;
}
