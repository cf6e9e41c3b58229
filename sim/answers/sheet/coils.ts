/** Each coil as it is wound and hung. */
import type { CoilDescription, StoreDescription, Tube } from '../../parts/description.ts';
import { tubeMass } from '../../parts/filled-weight.ts';
import { insideHeight } from '../../parts/store/geometry.ts';
import { leastBendRadius } from '../../physics/bend-radius.ts';
import type { SketchedCoil } from '../../scenario/index.ts';
import { soldAs } from '../coil/rolls.ts';
import type { SectionFacts } from '../section/facts.ts';
import { windingRadii, windingTurns, woundTop } from '../section/turns.ts';
import { sheetsThickness } from './panels.ts';

export type CoilUser = 'engine' | 'collector' | 'household';

export interface CoilSheet {
  name: string;
  /** Whose liquid flows in it; null where it is piped to nobody. */
  user: CoilUser | null;
  tube: Tube;
  rolls: number;
  roll_length_m: number;
  join: CoilDescription['join'];
  /** Of all rolls. */
  length_m: number;
  windings: number;
  /** Of each winding. */
  turns: number;
  /** Of the tube's middle, as the run has it. */
  middle_diameter_m: number;
  /** What the tube is wound around: innermost and outermost winding. */
  form_m: readonly [innermost: number, outermost: number];
  /** Over the outermost winding. */
  outside_m: number;
  pitch_m: number;
  /** Clear between neighbouring turns. */
  gap_m: number;
  /** Lowest edge of the first turn and highest of the last, above the inside bottom. */
  bottom_m: number;
  top_m: number;
  /** Middle of the tube where it leaves the coil. */
  lower_port_m: number;
  upper_port_m: number;
  enters_at: 'lower' | 'upper';
  /** Fall along the tube towards the lower port, a share. */
  slope: number;
  /** It falls enough to run empty. */
  runs_empty: boolean;
  /** Smallest form that tube of this kind is bent around; null where no table says. */
  least_form_m: number | null;
  tight: boolean;
  /** The trade sells it hard and straight: it does not wind. */
  hard: boolean;
  /** Tube from each port up through the lid, beyond what is wound. */
  to_lid_m: { lower: number; upper: number };
  holds_m3: number;
  mass_kg: number;
}

/** A quarter of an inch a foot: shared/trade.md section 2 for loops that drain (grade A). */
const DRAINS_FROM = 1 / 48;

export function coilSheets(facts: SectionFacts): CoilSheet[] {
  return facts.coils.map((coil) => coilSheet(coil, facts.store, userOf(coil.name, facts)));
}

function userOf(name: string, { engine, collector, taps }: SectionFacts): CoilUser | null {
  if (engine?.coil === name) return 'engine';
  if (collector?.coil === name) return 'collector';
  return taps?.coil === name ? 'household' : null;
}

/**
 * A coil's measures. Turns N = L / hypot(pi D, p) of each winding, D to the tube's middle; a form is D less the tube;
 * the slope along the tube is p / hypot(pi D, p). Source: the helix's geometry.
 */
function coilSheet(coil: SketchedCoil, store: StoreDescription, user: CoilUser | null): CoilSheet {
  const { tube, rolls, roll_length_m, join, coil_diameter_m, pitch_m, bottom_m } = coil;
  const outside = tube.outside_diameter_m;
  const radii = windingRadii(coil, store);
  const form_m = [2 * radii[0] - outside, 2 * radii[radii.length - 1] - outside] as const;
  const top_m = woundTop(coil);
  const [lower_port_m, upper_port_m] = [bottom_m + outside / 2, top_m - outside / 2];
  const rim_m = insideHeight(store.shape) + sheetsThickness(store.insulation.lid);
  const slope = pitch_m / Math.hypot(Math.PI * coil_diameter_m, pitch_m);
  const radius = leastBendRadius(tube.material, outside);
  const length_m = rolls * roll_length_m;
  return {
    name: coil.name,
    user,
    tube,
    rolls,
    roll_length_m,
    join,
    length_m,
    windings: coil.side_by_side,
    turns: windingTurns(coil),
    middle_diameter_m: coil_diameter_m,
    form_m,
    outside_m: 2 * radii[radii.length - 1] + outside,
    pitch_m,
    gap_m: pitch_m - outside,
    bottom_m,
    top_m,
    lower_port_m,
    upper_port_m,
    enters_at: coil.fed_from === 'bottom' ? 'lower' : 'upper',
    slope,
    runs_empty: slope >= DRAINS_FROM,
    least_form_m: radius === null ? null : 2 * radius,
    tight: radius !== null && form_m[0] < 2 * radius - 1e-6,
    hard: soldAs(tube)?.rolls_m.length === 0,
    to_lid_m: { lower: rim_m - lower_port_m, upper: rim_m - upper_port_m },
    holds_m3: (Math.PI / 4) * tube.inside_diameter_m ** 2 * length_m,
    mass_kg: tubeMass(coil),
  };
}
