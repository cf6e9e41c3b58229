import { describe, expect, it } from 'vitest';
import { undoAsked } from '../../../../../ui/web/app/shelf/undo-keys.ts';

const keys = (key: string, held: ('ctrl' | 'meta' | 'shift' | 'alt')[]) => ({
  key,
  ctrlKey: held.includes('ctrl'),
  metaKey: held.includes('meta'),
  shiftKey: held.includes('shift'),
  altKey: held.includes('alt'),
});

describe('the keys', () => {
  it.each([
    ['z', ['ctrl'], 'undo'],
    ['z', ['meta'], 'undo'],
    ['Z', ['ctrl', 'shift'], 'redo'],
    ['Z', ['meta', 'shift'], 'redo'],
    ['y', ['ctrl'], 'redo'],
  ] as const)('%s with %j asks for %s', (key, held, verb) => {
    expect(undoAsked(keys(key, [...held]), false)).toEqual({ verb });
    expect(undoAsked(keys(key, [...held]), true)).toBeNull();
  });

  it.each([
    ['z', []],
    ['y', ['meta']],
    ['y', ['ctrl', 'shift']],
    ['z', ['ctrl', 'alt']],
    ['x', ['ctrl']],
  ] as const)('%s with %j asks for nothing', (key, held) => {
    expect(undoAsked(keys(key, [...held]), false)).toBeNull();
  });
});
