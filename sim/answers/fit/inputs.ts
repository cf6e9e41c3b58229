/** Inputs that a log may tell: each with its prior, its bounds and the edits that put a value in. */
import type { PlantDescription } from '../../parts/description.ts';
import type { Edit } from '../edit.ts';

export interface FitInput {
  /** Path in the scenario file. */
  path: string;
  /** As the scenario has it, or as it was filled in: the middle of the prior. */
  value: number;
  /** Of the prior, in the value's logarithm. */
  deviation: number;
  least: number;
  greatest: number;
  /** As the file has it: a multiplier or a share. */
  form: 'number' | 'share';
  edits: (value: number) => Edit[];
}

/** A band holds nine in ten: so many deviations of a normal spread lie between its ends. */
const DEVIATIONS_IN_BAND = 3.29;

/** Prior deviation from the catalogue's band, kept about whatever value the scenario has. */
function deviation([low, high]: readonly [number, number]): number {
  return Math.log(high / low) / DEVIATIONS_IN_BAND;
}

/** Bands and bounds as in the field catalogue (loss 1.1 to 2.5, outside film 0.5 to 1.2, jacket share 18 to 33 %). */
const LOSS = { deviation: deviation([1.1, 2.5]), least: 1, greatest: 6 };
const FILM = { deviation: deviation([0.5, 1.2]), least: 0.2, greatest: 2 };
const JACKET = { deviation: deviation([0.18, 0.33]), least: 0.05, greatest: 0.5 };
const LIGHTEST = 0.6;

/** The loss multiplier, every coil's outside film, and the jacket share of an engine. */
export function fitInputs({ store, coils, engine }: PlantDescription): FitInput[] {
  const number = (path: string, value: number, prior: typeof LOSS): FitInput => ({
    path,
    value,
    ...prior,
    form: 'number',
    edits: (to) => [{ path, value: rounded(to) }],
  });
  const inputs = [
    number('store.bridges', store.bridges, LOSS),
    ...coils.map((coil, i) => number(`coils[${i}].outside_film`, coil.outside_film, FILM)),
  ];
  if (!engine) return inputs;
  const { rated, quarter } = engine.jacket_share;
  const jacket: FitInput = {
    path: 'engine.jacket_share',
    value: rated,
    ...JACKET,
    form: 'share',
    // Its share at light load keeps its proportion: one log is one load.
    edits: (to) => [
      { path: 'engine.jacket_share', value: percent(to) },
      { path: 'engine.jacket_share_light', value: percent(Math.min(LIGHTEST, (to * quarter) / rated)) },
    ],
  };
  return [...inputs, jacket];
}

/** Value of an input `u` deviations from the middle of its prior. */
export function valueAt(input: FitInput, u: number): number {
  return input.value * Math.exp(u * input.deviation);
}

/** Deviations from the middle of its prior at a value. */
export function deviationsAt(input: FitInput, value: number): number {
  return Math.log(value / input.value) / input.deviation;
}

function rounded(value: number): number {
  return Number(value.toPrecision(5));
}

function percent(share: number): string {
  return `${rounded(100 * share)} %`;
}
