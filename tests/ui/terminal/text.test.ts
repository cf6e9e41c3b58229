import { describe, expect, it } from 'vitest';
import { ascii, columnsOf, harmless, padLeft, padRight, wrap } from '../../../ui/terminal/text.ts';

describe('harmless', () => {
  it('shows control and direction characters as question marks', () => {
    expect(harmless('a\u001b[31mred\u0007\tb\u202ec')).toBe('a?[31mred??b?c');
  });
  it('keeps newlines, accents and signs', () => {
    expect(harmless('Käthe’s 90 °F\n½ in')).toBe('Käthe’s 90 °F\n½ in');
  });
});

describe('ascii', () => {
  it('finds the nearest likeness', () => {
    expect(ascii('the fuel’s 2.5 m³ − ½ · “Käthe” …')).toBe('the fuel\'s 2.5 m3 - 1/2   "Kathe" ...');
  });
  it('keeps colour and newlines, and shows what has no likeness', () => {
    expect(ascii('\u001b[31mhot\u001b[0m\n水')).toBe('\u001b[31mhot\u001b[0m\n?');
  });
});

describe('columnsOf', () => {
  it.each([
    ['store', 5],
    ['°F', 2],
    ['e\u0301', 1],
    ['水', 2],
    ['█▒░', 3],
  ])('counts %s', (text, columns) => {
    expect(columnsOf(text)).toBe(columns);
  });
});

describe('padding', () => {
  it('counts columns, not code units', () => {
    expect(padLeft('水', 4)).toBe('  水');
    expect(padRight('e\u0301', 3)).toBe('e\u0301  ');
  });
  it('leaves longer text alone', () => {
    expect(padLeft('longer', 3)).toBe('longer');
  });
});

describe('wrap', () => {
  it('breaks at spaces and indents the later lines', () => {
    expect(wrap('one two three four', 9, '  ')).toEqual(['one two', '  three', '  four']);
  });
  it('lets a long word stand alone', () => {
    expect(wrap('a incomprehensible b', 6)).toEqual(['a', 'incomprehensible', 'b']);
  });
  it('gives nothing for nothing', () => {
    expect(wrap('', 10)).toEqual([]);
  });
});
