/** Words of the fit to an owner's log. */
import type { FilledDefault, FitAnswer, FittedInput } from '../../sim/index.ts';
import { fromSim } from './from-sim.ts';
import { fixed } from './locale.ts';
import type { Say } from './say.ts';

const names: Readonly<Record<string, string>> = {
  'store.bridges': 'loss multiplier for bridges and leaks',
  'engine.jacket_share': 'share of the fuel’s heat that reaches the coolant',
};

/** What an input is called; coils by their name. */
export function fitInputName(path: string, coils: readonly string[]): string {
  const coil = /^coils\[(\d+)\]/.exec(path);
  return coil ? `outside film of coil ${coils[Number(coil[1])]}` : (names[path] ?? path);
}

export const fitWords = {
  title: 'Fit to the log',
  time: 'Time since midnight',
  inputs: 'What the log tells (bands hold 95 in 100)',
  compared: 'Measured over simulated',
  heads: ['', 'before', 'now', 'from', 'to', 'the log'],
  probeHeads: ['probe', 'offset', 'give or take', 'strays by', 'drift a day'],
  probes: 'Probes, read less simulated',
  measured: (name: string) => `${name}, measured`,
  simulated: (name: string) => `${name}, simulated`,
  told: 'tells it',
  untold: 'cannot tell',
  unsettled: 'The search ran out of rounds: take the values with care.',
  wrote: (path: string) => `With these values: ${path}`,
  hint: 'Put them into the scenario with --write FILE.',
  ignored: (columns: readonly string[]) => `Columns not read: ${columns.join(', ')}.`,
  mending: 'It reads apart from the others beyond its doubt: compare the probes in one bucket.',
  unusual: (name: string, value: string, low: string, high: string) =>
    `The ${name} of ${value} lies beyond what is usual, ${low} to ${high}: before you believe it, look for a lid that does not sit, insulation that is wet or missing, water that leaks, a loop that draws heat by itself, and compare the probes.`,
  wallsOrVapour: (share: string, low: string, high: string) =>
    `A log cannot tell what goes through the walls from what goes past the lid as vapour. Of open water’s vapour, ${share} is taken to get past it; the band holds ${low} to ${high}. To part them, tape the lid shut all round, leave the vent open, and log a second night: what the store then loses less is vapour.`,
  drifting: 'It wanders over the log: the fit cannot trust it.',
} as const;

/** `1.50 (1.00 to 2.45)` without the band. */
export function fitValue(value: number, form: FittedInput['form']): string {
  return form === 'share' ? `${fixed(100 * value, 1)} %` : fixed(value, 2);
}

export function fitSentence(
  { inputs, rms_K }: FitAnswer,
  say: Say,
  nameOf: (path: string) => string,
): string {
  const told = inputs.filter((each) => each.told);
  const found = told.map(
    ({ path, value, low, high, form }) =>
      `${nameOf(path)} ${fitValue(value, form)} (${fitValue(low, form)} to ${fitValue(high, form)})`,
  );
  const kelvin = (value: number) => say.quantity(value, 'temperature_difference', 2);
  return `The log says: ${found.join('; ')}. The run then strays from the readings by ${kelvin(rms_K.after)}, by ${kelvin(rms_K.before)} before.`;
}

/** A share and its ends. */
function shares({ value, low, high }: FittedInput['before']): [string, string, string] {
  const [share, ...ends] = [value, low, high].map((each) => fitValue(each, 'share'));
  return [share, ends[0], ends[1]];
}

/** Pairs that go together, and how each that the log cannot tell could be measured. */
export function fitCautions(
  { inputs, beside, together, probes }: FitAnswer,
  filled: readonly FilledDefault[],
  nameOf: (path: string) => string,
): string[] {
  const walls = inputs.find(({ path }) => path === 'store.bridges');
  const vapour = beside.find(({ path }) => path === 'store.vapour_escape');
  return [
    ...inputs.flatMap(({ path, told, value, form, usual: [low, high] }) =>
      told && (value < low || value > high)
        ? [fitWords.unusual(nameOf(path), fitValue(value, form), fitValue(low, form), fitValue(high, form))]
        : [],
    ),
    ...(walls?.told && vapour ? [fitWords.wallsOrVapour(...shares(vapour.before))] : []),
    ...together.map(
      ({ paths, correlation }) =>
        `${paths.map(nameOf).join(' and ')} can be traded for each other (${fixed(correlation, 2)}): take them together, or measure one of them.`,
    ),
    ...probes.flatMap(({ name, offset_K, offsetDoubt_K, drift_K_day }) => [
      ...(Math.abs(offset_K) > offsetDoubt_K ? [`Probe ${name}: ${fitWords.mending}`] : []),
      ...(drift_K_day === null ? [] : [`Probe ${name}: ${fitWords.drifting}`]),
    ]),
    ...inputs.flatMap(({ path, told }) => {
      const measure = filled.find((each) => each.path === path)?.measure;
      return told || !measure ? [] : [`Not told: ${nameOf(path)}. ${fromSim(measure)}`];
    }),
  ];
}
