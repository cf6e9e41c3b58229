import { describe, expect, it } from 'vitest';
import { findTube, type TubeStandard } from '../../../sim/physics/tubes.ts';
import { tubeOf } from '../../../ui/terminal/tube-words.ts';

describe('tubeOf', () => {
  it.each([
    ['3/8 in refrigeration', 'refrigeration', '3/8'],
    ['3/8 ACR', 'refrigeration', '3/8'],
    ['1/2" OD', 'refrigeration', '1/2'],
    ['3/8 in refrigeration tube', 'refrigeration', '3/8'],
    ['1/2 in plumbing L', 'plumbing L', '1/2'],
    ['3/4 in plumbing tube, type L', 'plumbing L', '3/4'],
    ['1/2 type M', 'plumbing M', '1/2'],
    ['1/2 in K', 'plumbing K', '1/2'],
    ['1/2 in plumbing', 'plumbing L', '1/2'],
    ['3/4 PEX', 'PEX', '3/4'],
    ['1 in pex', 'PEX', '1'],
    ['1-1/4 in plumbing L', 'plumbing L', '1-1/4'],
    ['1 1/4 in plumbing L', 'plumbing L', '1-1/4'],
    ['5/8 inch stainless', 'stainless', '5/8'],
    ['15 x 1 mm copper', 'metric copper', '15x1'],
    ['15x1 copper', 'metric copper', '15x1'],
  ])('reads %s as it is sold', (text, standard, size) => {
    const { kind, size: read } = tubeOf(text);
    expect(kind).toBe(standard);
    expect(findTube(kind as TubeStandard, read)).toEqual(findTube(standard as TubeStandard, size));
    expect(findTube(kind as TubeStandard, read)).not.toBeNull();
  });

  it.each(['3/8', '1/2 in', '1/2 in copper'])('does not guess which tube %s is', (text) => {
    expect(() => tubeOf(text)).toThrow();
    try {
      tubeOf(text);
    } catch (error) {
      expect(error).toMatchObject({ troubles: [{ where: '--tube', got: `"${text}"` }] });
    }
  });

  it.each(['refrigeration 3/8', '', 'tube'])('wants the size first: "%s"', (text) => {
    expect(() => tubeOf(text)).toThrow();
  });
});
