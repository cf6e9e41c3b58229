import { describe, expect, it } from 'vitest';
import { clockText, freeName, partGesture, sectionWords } from '../../../ui/words/index.ts';

describe('freeName', () => {
  it('leaves a name that nobody has', () => {
    expect(freeName('Cellar', ['Attic'])).toBe('Cellar');
  });

  it('counts on where a name is taken, and does not count twice', () => {
    expect(freeName('Cellar', ['Cellar'])).toBe('Cellar (2)');
    expect(freeName('Cellar', ['Cellar', 'Cellar (2)'])).toBe('Cellar (3)');
    expect(freeName('Cellar (2)', ['Cellar', 'Cellar (2)'])).toBe('Cellar (3)');
  });
});

describe('clockText', () => {
  it('has 24 hours, with two digits each', () => {
    expect(clockText(new Date(2027, 0, 9, 0, 4).getTime())).toBe('00:04');
    expect(clockText(new Date(2027, 0, 9, 14, 30).getTime())).toBe('14:30');
  });
});

describe('a gesture', () => {
  it('says what was done, to be read after "Undo:"', () => {
    expect(sectionWords.gesture('Insulation, sides', 'sheet', true)).toBe('more insulation, sides');
    expect(sectionWords.gesture('Water line', 'water', false)).toBe('lower water line');
    expect(partGesture.add('engine')).toBe('add an engine');
    expect(partGesture.remove('Coil: north')).toBe('remove Coil: north');
  });
});
