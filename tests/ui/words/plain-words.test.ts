import { describe, expect, it } from 'vitest';
import { dateWords, momentWords, speakIn, troubleLine } from '../../../ui/words/index.ts';

describe('dateWords', () => {
  it.each([
    [0, 'Jan 1'],
    [30, 'Jan 31'],
    [31, 'Feb 1'],
    [58, 'Feb 28'],
    [59, 'Mar 1'],
    [364, 'Dec 31'],
    [365, 'Jan 1'],
    [-1, 'Dec 31'],
  ])('names day %d', (day, words) => {
    expect(dateWords(day)).toBe(words);
  });
});

describe('momentWords', () => {
  it('counts from the first midnight', () => {
    expect(momentWords(8, 0)).toBe('Jan 9, 00:00');
    expect(momentWords(8, 86_400 + 18.5 * 3600)).toBe('Jan 10, 18:30');
  });
  it('never says minute 60', () => {
    expect(momentWords(8, 3599.9)).toBe('Jan 9, 01:00');
    expect(momentWords(8, 86_399.9)).toBe('Jan 10, 00:00');
  });
});

describe('speakIn', () => {
  it('says each kind of number in the reader’s units', () => {
    const us = speakIn('US');
    const si = speakIn('SI');
    expect([us.temperature(100), si.temperature(100)]).toEqual(['212 °F', '100 °C']);
    expect([us.speed(1.524), si.speed(1.5)]).toEqual(['5 ft/s', '1.5 m/s']);
    expect([us.mass(1000), si.mass(1000)]).toEqual(['2200 lb', '1000 kg']);
    expect([us.pressure(137_895), si.pressure(138_000)]).toEqual(['20 psi', '138 kPa']);
    expect([us.length(6.096), si.length(6.1)]).toEqual(['20 ft', '6.1 m']);
    expect([us.electricity(95), si.electricity(4000)]).toEqual(['95 W', '4 kW']);
    expect([us.time(5400), us.share(0.5), us.count(7)]).toEqual(['90 min', '50 %', '7']);
  });
});

describe('troubleLine', () => {
  const trouble = {
    where: 'store.water_depth',
    expected: 'a length',
    got: '"50 psi"',
    fix: 'write it as "3 ft"',
  };

  it('says where, what was expected, what was got, what to do', () => {
    expect(troubleLine(trouble)).toBe(
      'store.water_depth - expected a length - got "50 psi" - write it as "3 ft".',
    );
  });
  it('ends with one stop only', () => {
    expect(troubleLine({ ...trouble, fix: 'did you mean "3 ft"?' })).toMatch(/"3 ft"\?$/);
    expect(troubleLine({ ...trouble, fix: 'Write it out.' })).toMatch(/out\.$/);
  });
  it('names the file where no place is given', () => {
    expect(troubleLine({ ...trouble, where: '' })).toMatch(/^the file - /);
  });
});
