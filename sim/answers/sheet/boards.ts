/** Lays rectangular pieces in boards of 4 x 8 ft, so that as many boards are bought as the pieces can be cut from. */

/** A board as foam and plywood are sold. */
export const BOARD_M = { length_m: 2.4384, width_m: 1.2192 };
/** Lost at every cut [m]: a circular saw's blade with its set, 1/8 in; common practice. */
export const KERF_M = 0.003175;

export interface Piece {
  length_m: number;
  width_m: number;
}

/** Where a piece lies, from a corner of its board; `length_m` along the board, turned or not. */
export interface Laid extends Piece {
  x_m: number;
  y_m: number;
}

type Split = (piece: Piece, room: Laid) => boolean;

/** Rounding of sums of inches: what fits to within it fits. */
const HAIR_M = 1e-9;

/** Which piece is laid first, and along which side the rest of the room is cut: each wins for some box. */
const orders: readonly ((piece: Piece) => number)[] = [
  ({ length_m, width_m }) => length_m * width_m,
  ({ length_m, width_m }) => Math.max(length_m, width_m),
  ({ length_m, width_m }) => Math.min(length_m, width_m),
];
const splits: readonly Split[] = [
  () => true,
  () => false,
  (piece, room) => room.length_m - piece.length_m > room.width_m - piece.width_m,
];

/**
 * What lies in each board, cut from edge to edge with a kerf between neighbours. The fewest boards of several ways to
 * lay them (largest first, into the room it fills best; textbook guillotine packing): enough for certain, not proved to
 * be least. A piece larger than a board is laid as the parts it is joined from.
 */
export function laidInBoards(pieces: readonly Piece[]): Laid[][] {
  const [along, across] = [pieces, pieces.map(turned)].map((each) => each.flatMap(partsOf));
  let best: Laid[][] | null = null;
  for (const parts of pieces.some(outgrowsBoard) ? [along, across] : [along])
    for (const order of orders) {
      const sorted = [...parts].sort((a, b) => order(b) - order(a));
      for (const split of splits) {
        const laid = lay(sorted, split);
        if (best === null || laid.length < best.length) best = laid;
      }
    }
  return best ?? [];
}

/** Whether a piece has to be joined from several. */
export function outgrowsBoard(piece: Piece): boolean {
  return !fits(piece, BOARD_M) && !fits(turned(piece), BOARD_M);
}

/** Whole boards side by side, the board's length along the piece's, and what is left of the piece beside them. */
function partsOf(piece: Piece): Piece[] {
  if (!outgrowsBoard(piece)) return [piece];
  return stretches(piece.length_m, BOARD_M.length_m).flatMap((length_m) =>
    stretches(piece.width_m, BOARD_M.width_m).map((width_m) => ({ length_m, width_m })),
  );
}

function stretches(whole_m: number, most_m: number): number[] {
  const many = Math.max(1, Math.ceil(whole_m / most_m - HAIR_M));
  return Array.from({ length: many }, (_, i) => Math.min(most_m, whole_m - i * most_m));
}

function lay(pieces: readonly Piece[], split: Split): Laid[][] {
  const boards: Laid[][] = [];
  /** Room that is left, with the board it is in. */
  const rooms: { board: number; room: Laid }[] = [];
  for (const piece of pieces) {
    let best = -1;
    let way = piece;
    let least_m = Number.POSITIVE_INFINITY;
    const consider = (i: number, room: Piece) => {
      for (const each of [piece, turned(piece)]) {
        const spare_m = Math.min(room.length_m - each.length_m, room.width_m - each.width_m);
        if (fits(each, room) && spare_m < least_m) [best, way, least_m] = [i, each, spare_m];
      }
    };
    for (const [i, { room }] of rooms.entries()) consider(i, room);
    if (best < 0) {
      rooms.push({ board: boards.length, room: { x_m: 0, y_m: 0, ...BOARD_M } });
      boards.push([]);
      consider(rooms.length - 1, BOARD_M);
    }
    const [{ board, room }] = rooms.splice(best, 1);
    boards[board].push({ x_m: room.x_m, y_m: room.y_m, length_m: way.length_m, width_m: way.width_m });
    rooms.push(...around(way, room, split).map((room) => ({ board, room })));
  }
  return boards;
}

/** The two rooms left of one when a piece is cut out of its corner. */
function around(piece: Piece, room: Laid, split: Split): Laid[] {
  const { length_m, width_m } = piece;
  const [on_m, up_m] = [length_m + KERF_M, width_m + KERF_M];
  const acrossFirst = split(piece, room);
  const beside = {
    x_m: room.x_m + on_m,
    y_m: room.y_m,
    length_m: room.length_m - on_m,
    width_m: acrossFirst ? room.width_m : width_m,
  };
  const above = {
    x_m: room.x_m,
    y_m: room.y_m + up_m,
    length_m: acrossFirst ? length_m : room.length_m,
    width_m: room.width_m - up_m,
  };
  return [beside, above].filter((left) => left.length_m > 0 && left.width_m > 0);
}

function turned({ length_m, width_m }: Piece): Piece {
  return { length_m: width_m, width_m: length_m };
}

function fits(piece: Piece, room: Piece): boolean {
  return piece.length_m <= room.length_m + HAIR_M && piece.width_m <= room.width_m + HAIR_M;
}
