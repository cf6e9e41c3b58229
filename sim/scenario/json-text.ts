/**
 * Reads JSON text strictly, with the line and column of what is wrong. The engine's own reader says where in
 * words of its own, drops the first of two equal keys silently and knows no bound on depth.
 */
import { quote } from './calendar.ts';
import type { Problem } from './problem.ts';

export const LONGEST_TEXT = 1_000_000;
export const DEEPEST = 40;

type Found = { ok: true; json: unknown } | { ok: false; problems: Problem[] };

class Misread extends Error {
  readonly at: number;
  readonly expected: string;
  readonly fix: string;
  constructor(at: number, expected: string, fix: string) {
    super(expected);
    this.at = at;
    this.expected = expected;
    this.fix = fix;
  }
}

/** The value in the text, or one problem naming line and column. Text over 1 MB or nested over 40 deep is refused. */
export function parseJsonText(text: string): Found {
  if (text.length > LONGEST_TEXT) {
    const got = `${(text.length / 1e6).toFixed(1)} million`;
    return wrong({
      path: '',
      expected: 'at most 1 million characters',
      got,
      fix: 'choose a scenario file; weather goes in a file of its own',
    });
  }
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  try {
    return { ok: true, json: new Reader(body).whole() };
  } catch (error) {
    if (!(error instanceof Misread)) throw error;
    const before = body.slice(0, error.at).split('\n');
    const place = `line ${before.length}, column ${before[before.length - 1].length + 1}`;
    const rest = body.slice(error.at).split('\n', 1)[0].trim();
    const got = error.at >= body.length ? 'the end of the text' : quote(rest || 'a line break');
    return wrong({ path: place, expected: error.expected, got, fix: error.fix });
  }
}

function wrong(problem: Problem): Found {
  return { ok: false, problems: [problem] };
}

const SPACE = /[ \t\n\r]*/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const WORD = /[A-Za-z_$][\w$]*/y;

class Reader {
  readonly #text: string;
  #at = 0;

  constructor(text: string) {
    this.#text = text;
  }

  whole(): unknown {
    const value = this.#value(0);
    this.#match(SPACE);
    if (this.#at < this.#text.length) {
      throw new Misread(this.#at, 'the end of the text', 'a scenario is one { ... }; remove what follows it');
    }
    return value;
  }

  #match(pattern: RegExp): string | null {
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text);
    if (!found) return null;
    this.#at = pattern.lastIndex;
    return found[0];
  }

  #value(depth: number): unknown {
    this.#match(SPACE);
    if (depth > DEEPEST)
      throw new Misread(this.#at, `at most ${DEEPEST} levels of brackets`, 'a scenario needs about six');
    const first = this.#text[this.#at];
    if (first === '{') return this.#object(depth);
    if (first === '[') return this.#list(depth);
    if (first === '"') return this.#string('a closing quote', 'close the text with " on the same line');
    const number = this.#match(NUMBER);
    if (number !== null) return Number(number);
    const start = this.#at;
    const word = this.#match(WORD);
    if (word === 'true') return true;
    if (word === 'false') return false;
    if (word === 'null') return null;
    throw new Misread(
      start,
      'a value: "text", a number, true, false, { ... } or [ ... ]',
      this.#valueFix(first, word),
    );
  }

  #valueFix(first: string | undefined, word: string | null): string {
    if (word !== null) return `put the text in double quotes: "${word}"`;
    if (first === "'") return 'use double quotes " around text';
    if (first === '/') return 'JSON has no comments: put the words under "note"';
    if (first === '}' || first === ']')
      return 'remove the comma before the closing bracket, or write the value that is missing';
    return 'write the value that is missing here';
  }

  #string(expected: string, fix: string): string {
    const start = this.#at;
    let at = start + 1;
    for (; this.#text[at] !== '"'; at++) {
      if (at >= this.#text.length || this.#text[at] < ' ') throw new Misread(at, expected, fix);
      if (this.#text[at] !== '\\') continue;
      ESCAPE.lastIndex = at;
      if (!ESCAPE.test(this.#text))
        throw new Misread(at, 'an escape JSON knows, as \\\\, \\" or \\n', 'write a backslash as \\\\');
      at = ESCAPE.lastIndex - 1;
    }
    this.#at = at + 1;
    return JSON.parse(this.#text.slice(start, this.#at)) as string;
  }

  #object(depth: number): Record<string, unknown> {
    const object: Record<string, unknown> = {};
    this.#at++;
    for (let first = true; ; first = false) {
      this.#match(SPACE);
      const start = this.#at;
      if (first && this.#text[start] === '}') break;
      if (this.#text[start] !== '"') {
        throw new Misread(
          start,
          'a name in double quotes',
          this.#text[start] === '}' ? 'remove the comma before }' : 'write it as "name": value',
        );
      }
      const key = this.#string('a name in double quotes', 'close the name with "');
      if (Object.hasOwn(object, key))
        throw new Misread(start, 'each name once', `${quote(key)} stands here twice: keep one`);
      this.#match(SPACE);
      if (this.#text[this.#at] !== ':') throw new Misread(this.#at, 'a colon', `write ${quote(key)}: value`);
      this.#at++;
      // Defined, not assigned: the name "__proto__" must become a name like any other.
      Object.defineProperty(object, key, {
        value: this.#value(depth + 1),
        enumerable: true,
        writable: true,
        configurable: true,
      });
      if (this.#endsOrGoesOn('}')) return object;
    }
    this.#at++;
    return object;
  }

  #list(depth: number): unknown[] {
    const list: unknown[] = [];
    this.#at++;
    this.#match(SPACE);
    if (this.#text[this.#at] === ']') {
      this.#at++;
      return list;
    }
    do list.push(this.#value(depth + 1));
    while (!this.#endsOrGoesOn(']'));
    return list;
  }

  /** Past a comma (false) or the closing bracket (true). */
  #endsOrGoesOn(close: '}' | ']'): boolean {
    this.#match(SPACE);
    const next = this.#text[this.#at];
    if (next !== ',' && next !== close)
      throw new Misread(
        this.#at,
        `a comma or ${close}`,
        `put a comma between two values, or ${close} after the last`,
      );
    this.#at++;
    return next === close;
  }
}
