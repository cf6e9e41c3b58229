import fc, { assert, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  BOARD_M,
  KERF_M,
  type Laid,
  laidInBoards,
  outgrowsBoard,
  type Piece,
} from '../../../../sim/answers/sheet/boards.ts';

const inch = 0.0254;
const hair = 1e-6;
const inches = (...sizes: [number, number][]): Piece[] =>
  sizes.map(([length, width]) => ({ length_m: length * inch, width_m: width * inch }));

/** Parted by a saw cut in one direction or the other. */
function apart(a: Laid, b: Laid): boolean {
  const after = (from_m: number, size_m: number, next_m: number) => next_m >= from_m + size_m + KERF_M - hair;
  return (
    after(a.x_m, a.length_m, b.x_m) ||
    after(b.x_m, b.length_m, a.x_m) ||
    after(a.y_m, a.width_m, b.y_m) ||
    after(b.y_m, b.width_m, a.y_m)
  );
}

function expectCuttable(boards: readonly Laid[][]): void {
  for (const laid of boards) {
    expect(laid.length).toBeGreaterThan(0);
    for (const [i, piece] of laid.entries()) {
      expect(Math.min(piece.x_m, piece.y_m)).toBeGreaterThanOrEqual(0);
      expect(piece.x_m + piece.length_m).toBeLessThanOrEqual(BOARD_M.length_m + hair);
      expect(piece.y_m + piece.width_m).toBeLessThanOrEqual(BOARD_M.width_m + hair);
      for (const other of laid.slice(i + 1)) expect(apart(piece, other)).toBe(true);
    }
  }
}

const area = (pieces: readonly Piece[]) =>
  pieces.reduce((sum, { length_m, width_m }) => sum + length_m * width_m, 0);
const sizes = (pieces: readonly Piece[]) =>
  pieces
    .map(({ length_m, width_m }) => [length_m, width_m].sort((a, b) => a - b).map((each) => each.toFixed(6)))
    .map(String)
    .sort();

describe('boards to cut pieces from', () => {
  it.each<[string, [number, number][], number]>([
    ['one whole board', [[96, 48]], 1],
    ['a piece across the board, turned', [[48, 90]], 1],
    [
      'two halves, which a saw cut does not leave room for',
      [
        [48, 48],
        [48, 48],
      ],
      2,
    ],
    [
      'two halves less the saw cut',
      [
        [48, 47.9375],
        [48, 47.9375],
      ],
      1,
    ],
    [
      'a box of 48 x 36 x 36 in',
      [
        [49.5, 37.5],
        [49.5, 36],
        [49.5, 36],
        [36, 36],
        [36, 36],
      ],
      3,
    ],
    ['eight shelves of 23 x 23 in', Array.from({ length: 8 }, () => [23, 23]), 1],
    ['a lid of 100 x 50 in, joined', [[100, 50]], 2],
    ['nothing', [], 0],
  ])('asks for what it takes by hand: %s', (_, pieces, boards) => {
    expect(laidInBoards(inches(...pieces))).toHaveLength(boards);
  });

  it('lays every piece inside a board, a saw cut apart from the others', () => {
    const side = fc.double({ min: 0.02, max: 2.4, noNaN: true });
    const short = fc.double({ min: 0.02, max: 1.2, noNaN: true });
    const piece = fc.record({ length_m: side, width_m: short });
    assert(
      property(fc.array(piece, { maxLength: 20 }), (pieces) => {
        const boards = laidInBoards(pieces);
        expectCuttable(boards);
        expect(sizes(boards.flat())).toEqual(sizes(pieces));
      }),
      { seed: 1, numRuns: 150 },
    );
  });

  it('joins what is larger than a board from parts of the same area', () => {
    const side = fc.double({ min: 0.05, max: 11, noNaN: true });
    assert(
      property(fc.record({ length_m: side, width_m: side }), (piece) => {
        const boards = laidInBoards([piece, piece]);
        expectCuttable(boards);
        expect(area(boards.flat())).toBeCloseTo(2 * area([piece]), 6);
        expect(outgrowsBoard(piece)).toBe(
          Math.max(piece.length_m, piece.width_m) > BOARD_M.length_m + 1e-8 ||
            Math.min(piece.length_m, piece.width_m) > BOARD_M.width_m + 1e-8,
        );
      }),
      { seed: 2, numRuns: 100 },
    );
  });
});
