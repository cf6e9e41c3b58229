import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEEPEST, LONGEST_TEXT, parseJsonText } from '../../../sim/scenario/json-text.ts';

function problem(text: string) {
  const parsed = parseJsonText(text);
  if (parsed.ok) throw new Error(`${text} was read`);
  expect(parsed.problems).toHaveLength(1);
  return parsed.problems[0];
}

describe('JSON text', () => {
  it.each([
    ['{"a": 1,}', 'line 1, column 9', 'remove the comma'],
    ['{\n  "a": 1\n  "b": 2\n}', 'line 3, column 3', 'put a comma'],
    ['{"a": inches}', 'line 1, column 7', 'double quotes: "inches"'],
    ["{'a': 1}", 'line 1, column 2', '"name": value'],
    ['{"a": \'x\'}', 'line 1, column 7', 'double quotes'],
    ['// note\n{}', 'line 1, column 1', 'no comments'],
    ['{"a": "3/8 in', 'line 1, column 14', 'close the text'],
    ['{"a": "3/8 in\n"}', 'line 1, column 14', 'close the text'],
    ['{"a": "\\q"}', 'line 1, column 8', 'backslash'],
    ['{"a" 1}', 'line 1, column 6', 'write "a": value'],
    ['{"a": 1, "a": 2}', 'line 1, column 10', '"a" stands here twice'],
    ['[1, 2', 'line 1, column 6', 'comma'],
    ['{} {}', 'line 1, column 4', 'remove what follows'],
    ['', 'line 1, column 1', 'missing'],
    ['[01]', 'line 1, column 3', 'comma'],
    ['[NaN]', 'line 1, column 2', 'double quotes'],
  ])('%j is refused where it breaks', (text, path, fix) => {
    const found = problem(text);
    expect(found.path).toBe(path);
    expect(found.fix).toContain(fix);
  });

  it('is read after a byte order mark', () => {
    expect(parseJsonText('\uFEFF{"a": "½"}')).toEqual({ ok: true, json: { a: '½' } });
  });

  it('keeps the name __proto__ as a name like any other', () => {
    const parsed = parseJsonText('{"__proto__": {"polluted": 1}}');
    expect(parsed.ok && Object.keys(parsed.json as object)).toEqual(['__proto__']);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it('is refused when nested too deep, without exhausting the stack', () => {
    expect(parseJsonText('['.repeat(DEEPEST) + ']'.repeat(DEEPEST)).ok).toBe(true);
    expect(problem('['.repeat(500_000)).expected).toContain(`${DEEPEST} levels`);
    expect(problem('{"a":'.repeat(100_000)).expected).toContain(`${DEEPEST} levels`);
  });

  it('is refused when too long, and read when nearly so', () => {
    expect(problem(' '.repeat(LONGEST_TEXT + 1)).expected).toContain('1 million');
    expect(parseJsonText(`"${'x'.repeat(LONGEST_TEXT - 2)}"`).ok).toBe(true);
  });

  it('is read as the platform reads it', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 6 }), (text) => {
        const parsed = parseJsonText(text);
        // Equal names in one object are the one thing refused here and not there.
        if (!parsed.ok) return parsed.problems[0].fix.includes('twice');
        expect(parsed.json).toEqual(JSON.parse(text));
        return true;
      }),
    );
  });

  it('is refused whenever the platform refuses it', () => {
    const edit = fc.tuple(
      fc.json({ maxDepth: 3 }),
      fc.nat(),
      fc.constantFrom('', ',', '"', '}', ']', ':', '\\', '0', 'x', '-'),
    );
    fc.assert(
      fc.property(edit, ([text, at, insert]) => {
        const place = at % (text.length + 1);
        const edited = text.slice(0, place) + insert + text.slice(place + (insert === '' ? 1 : 0));
        let sound = true;
        try {
          JSON.parse(edited);
        } catch {
          sound = false;
        }
        const parsed = parseJsonText(edited);
        expect(parsed.ok || (sound && parsed.problems[0].fix.includes('twice'))).toBe(sound);
      }),
      { numRuns: 2000 },
    );
  });
});
