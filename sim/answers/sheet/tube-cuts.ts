/** Tube to buy in whole rolls, how it is cut, and what is left over. */
import type { Tube } from '../../parts/description.ts';
import { soldAs } from '../coil/rolls.ts';
import type { SectionFacts } from '../section/facts.ts';

export interface TubePiece {
  /** Name of the coil; null for the pipe to the taps. */
  coil: string | null;
  count: number;
  length_m: number;
}

export interface TubeCut {
  tube: Tube;
  pieces: TubePiece[];
  length_m: number;
  /** What is bought: `of_m` each; `sold` null where no usual length holds a piece, and it is bought to measure. */
  buy: { count: number; of_m: number; sold: 'roll' | 'straight' | null }[];
  /** Left over of each roll that is not used up, longest first [m]. */
  left_m: number[];
}

/** A piece as long as a roll to within this is the roll itself: nobody cuts an inch off. */
const SAME_LENGTH = 0.01;
/** Ends shorter than this are scrap [m]. */
const SCRAP_M = 0.05;

/** All tube of the coils and of the pipe to the taps, by its label. */
export function tubeCuts({ coils, taps }: Pick<SectionFacts, 'coils' | 'taps'>): TubeCut[] {
  const wanted: { tube: Tube; piece: TubePiece }[] = coils.map(({ name, tube, rolls, roll_length_m }) => ({
    tube,
    piece: { coil: name, count: rolls, length_m: roll_length_m },
  }));
  if (taps) {
    const { tube, length_m } = taps.pipe;
    wanted.push({ tube, piece: { coil: null, count: 1, length_m } });
  }
  const byLabel = new Map<string, { tube: Tube; pieces: TubePiece[] }>();
  for (const { tube, piece } of wanted) {
    const same = byLabel.get(tube.label) ?? { tube, pieces: [] };
    same.pieces.push(piece);
    byLabel.set(tube.label, same);
  }
  return Array.from(byLabel.values(), cutOf);
}

function cutOf({ tube, pieces }: { tube: Tube; pieces: TubePiece[] }): TubeCut {
  const lengths = pieces
    .flatMap(({ count, length_m }) => Array.from({ length: count }, () => length_m))
    .sort((a, b) => b - a);
  const { buy, left_m } = bought(lengths, tube);
  return { tube, pieces, length_m: lengths.reduce((sum, each) => sum + each, 0), buy, left_m };
}

function bought(lengths: readonly number[], tube: Tube): Pick<TubeCut, 'buy' | 'left_m'> {
  const sold = soldAs(tube);
  const stock_m = sold === null ? [] : sold.rolls_m.length > 0 ? sold.rolls_m : [sold.straight_m];
  const kind = sold && sold.rolls_m.length > 0 ? 'roll' : 'straight';
  const isWhole = (length: number) =>
    stock_m.find((each) => Math.abs(each - length) <= SAME_LENGTH * each) ?? null;
  const counts = new Map<string, TubeCut['buy'][number]>();
  const take = (count: number, of_m: number, sold: TubeCut['buy'][number]['sold']) => {
    const key = `${sold} ${of_m}`;
    const same = counts.get(key);
    if (same) same.count += count;
    else if (count > 0) counts.set(key, { count, of_m, sold });
  };
  const longest = stock_m.at(-1) ?? 0;
  const cut: number[] = [];
  for (const length of lengths) {
    const whole = isWhole(length);
    if (whole !== null) take(1, whole, kind);
    else if (length > longest) take(1, length, null);
    else cut.push(length);
  }
  const plans = stock_m
    .filter((each) => cut.length > 0 && each >= cut[0])
    .map((of_m) => ({ of_m, left_m: firstFit(cut, of_m) }));
  // The least tube that will do; of equals the shorter roll, which is easier to carry.
  const best = plans.reduce<(typeof plans)[number] | null>(
    (least, plan) =>
      least && least.of_m * least.left_m.length <= plan.of_m * plan.left_m.length + 1e-9 ? least : plan,
    null,
  );
  if (best) take(best.left_m.length, best.of_m, kind);
  const left_m = (best?.left_m ?? []).filter((left) => left > SCRAP_M).sort((a, b) => b - a);
  return { buy: [...counts.values()].sort((a, b) => b.of_m - a.of_m), left_m };
}

/** What is left of each roll when every length, longest first, is cut from the first roll that still holds it. */
function firstFit(lengths: readonly number[], of_m: number): number[] {
  const left: number[] = [];
  for (const length of lengths) {
    const i = left.findIndex((each) => each >= length - 1e-9);
    if (i < 0) left.push(of_m - length);
    else left[i] -= length;
  }
  return left;
}
