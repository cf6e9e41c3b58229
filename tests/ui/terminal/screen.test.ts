import { describe, expect, it } from 'vitest';
import { paint, type Surrounding, screenOf } from '../../../ui/terminal/screen.ts';

const terminal: Surrounding = {
  columns: 100,
  isTerminal: true,
  env: { LANG: 'en_GB.UTF-8', TERM: 'xterm' },
  platform: 'linux',
};

const within = (change: Partial<Surrounding>, plain = false) => screenOf({ ...terminal, ...change }, plain);

describe('screenOf', () => {
  it('uses what a UTF-8 terminal can show', () => {
    expect(screenOf(terminal, false)).toEqual({ width: 100, unicode: true, colour: true });
  });
  it('keeps to ASCII without colour when asked', () => {
    expect(screenOf(terminal, true)).toEqual({ width: 100, unicode: false, colour: false });
  });
  it('falls back to ASCII where the locale is not UTF-8 or not set', () => {
    expect(within({ env: { LANG: 'C' } }).unicode).toBe(false);
    expect(within({ env: {} }).unicode).toBe(false);
  });
  it('lets the first locale variable decide', () => {
    expect(within({ env: { LC_ALL: 'C', LANG: 'en_GB.UTF-8' } }).unicode).toBe(false);
    expect(within({ env: { LC_ALL: '', LC_CTYPE: 'C.utf8', LANG: 'C' } }).unicode).toBe(true);
  });
  it('takes no colour from a pipe, NO_COLOR or a dumb terminal', () => {
    expect(within({ isTerminal: false }).colour).toBe(false);
    expect(within({ env: { ...terminal.env, NO_COLOR: '1' } }).colour).toBe(false);
    expect(within({ env: { ...terminal.env, NO_COLOR: '' } }).colour).toBe(true);
    expect(within({ env: { ...terminal.env, TERM: 'dumb' } })).toEqual({
      width: 100,
      unicode: false,
      colour: false,
    });
  });
  it('bounds the width', () => {
    expect(within({ columns: 20 }).width).toBe(50);
    expect(within({ columns: 400 }).width).toBe(140);
    expect(within({ columns: undefined }).width).toBe(80);
    expect(within({ columns: undefined, env: { COLUMNS: '66' } }).width).toBe(66);
    expect(within({ columns: undefined, env: { COLUMNS: 'wide' } }).width).toBe(80);
  });
});

it('paints only where there is colour', () => {
  expect(paint(within({}), 'red', 'hot')).toBe('\u001b[31mhot\u001b[0m');
  expect(paint(within({}, true), 'red', 'hot')).toBe('hot');
});
