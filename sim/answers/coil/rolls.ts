/** How tube is sold: in rolls that are whole when bought, or straight. */
import { TUBE_TABLES, type TubeStandard } from '../../physics/tube-tables.ts';

const FOOT_M = 0.3048;

interface Sold {
  /** Lengths of soft rolls [m], shortest first; none where it is not sold soft. */
  rolls_m: readonly number[];
  /** Length of hard, straight tube [m]. */
  straight_m: number;
  /** Thickest that comes in rolls [m]. */
  softUpTo_m?: number;
}

/**
 * By standard. Source: Copper Tube Handbook table 1 (types K and L soft in rolls of 60 and 100 ft, type M drawn only,
 * 20 ft) and shared/trade.md section 2 (refrigeration tube by 50 ft), grade A; PEX, stainless and metric copper (rolls
 * of 25 m up to 22 mm, straight 5 m) common practice, grade D.
 */
const SOLD: Record<TubeStandard, Sold> = {
  'plumbing K': { rolls_m: [60 * FOOT_M, 100 * FOOT_M], straight_m: 20 * FOOT_M },
  'plumbing L': { rolls_m: [60 * FOOT_M, 100 * FOOT_M], straight_m: 20 * FOOT_M },
  'plumbing M': { rolls_m: [], straight_m: 20 * FOOT_M },
  refrigeration: { rolls_m: [50 * FOOT_M], straight_m: 20 * FOOT_M },
  PEX: { rolls_m: [100 * FOOT_M], straight_m: 20 * FOOT_M },
  stainless: { rolls_m: [], straight_m: 20 * FOOT_M },
  'metric copper': { rolls_m: [25], straight_m: 5, softUpTo_m: 0.0225 },
};

/** Rolls a standard's tube is sold in [m]. */
export function rollsOf(standard: TubeStandard): readonly number[] {
  return SOLD[standard].rolls_m;
}

/**
 * How a described tube is sold, by its label; null for a tube by own numbers, of which no trade is known. Without
 * rolls it comes hard and straight, and is not for winding.
 */
export function soldAs({
  label,
  outside_diameter_m,
}: {
  label: string;
  outside_diameter_m: number;
}): Pick<Sold, 'rolls_m' | 'straight_m'> | null {
  const standards = Object.keys(TUBE_TABLES) as TubeStandard[];
  const standard = standards.find(
    (each) => /^\d/.test(label) && label.endsWith(` ${TUBE_TABLES[each].words}`),
  );
  if (!standard) return null;
  const { rolls_m, straight_m, softUpTo_m = Number.POSITIVE_INFINITY } = SOLD[standard];
  return { rolls_m: outside_diameter_m <= softUpTo_m ? rolls_m : [], straight_m };
}
