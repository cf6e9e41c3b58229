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
  /** Between what it usually lies, as the field catalogue has it. */
  usual: readonly [low: number, high: number];
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

type Prior = Pick<FitInput, 'deviation' | 'least' | 'greatest' | 'usual'>;

function prior(usual: readonly [number, number], least: number, greatest: number): Prior {
  return { usual, deviation: deviation(usual), least, greatest };
}

/** Bands and bounds as in the field catalogue. */
const LOSS = prior([1.1, 2.5], 1, 6);
const FILM = prior([0.5, 1.2], 0.2, 2);
const JACKET = prior([0.18, 0.33], 0.05, 0.5);
const LIGHTEST = 0.6;

/**
 * Vapour past a lid, closed or ajar. A closed lid's band, 0 to 5 % about 2 %, has no logarithm: 5 % is as far above 2 % as
 * 0.8 % below. What evaporates from open water, 0.65 to 1.4 of the formula, acts on the same heat and is in it.
 */
const VAPOUR = { closed: [0.008, 0.05], ajar: [0.1, 0.5] } as const;
const EVAPORATION = deviation([0.65, 1.4]);
const LEAST_VAPOUR = 5e-4;

/** The loss multiplier, every coil's outside film, and the jacket share of an engine. */
export function fitInputs({ store, coils, engine }: PlantDescription): FitInput[] {
  const number = (path: string, value: number, prior: Prior): FitInput => ({
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

/**
 * The share of vapour past the lid; null where all or nearly none of it gets past. A log does not tell it from the loss
 * through the walls but by how the layers of the model part, which is worth little: it is never fitted, and its doubt
 * is in the bands of what is.
 */
export function vapourInput({ store }: PlantDescription): FitInput | null {
  if (store.lid === 'open' || !(store.vapour_share > LEAST_VAPOUR)) return null;
  const usual = VAPOUR[store.lid];
  return {
    path: 'store.vapour_escape',
    value: store.vapour_share,
    ...prior(usual, LEAST_VAPOUR, 1),
    deviation: Math.hypot(deviation(usual), EVAPORATION),
    form: 'share',
    edits: (to) => [{ path: 'store.vapour_escape', value: percent(to) }],
  };
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
