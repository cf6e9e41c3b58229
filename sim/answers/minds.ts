/** The cautions of an answer: those of a run, as serious as there, and those that are the answer's own. */
import { type CautionKey, SEVERITIES, type Severity } from '../run/severities.ts';
import type { AnswerCaution } from './answer.ts';

/** Of what only answers say. */
const OWN = {
  pause_scald: 'danger',
  fit_mixing_valve: 'danger',
  fit_relief: 'danger',
  open_lid: 'danger',
  boils_in_some: 'danger',
  already_boils: 'danger',
  already_too_hot: 'warning',
  vent_stays_open: 'warning',
  thermosiphon: 'warning',
  coolant: 'warning',
  freezing_pipe: 'warning',
  valve_assumed: 'warning',
  flow_beyond_pump: 'warning',
  no_store_hot_enough: 'note',
  valve_below_wanted: 'note',
  namesake: 'note',
  prices_invented: 'note',
  radiator_always: 'note',
  radiator_never: 'note',
  never_ran_cold: 'note',
  day_ran_cold: 'note',
  not_run: 'note',
} as const satisfies Record<string, Severity>;

export type MindKey = CautionKey | keyof typeof OWN;

/** A caution as an answer carries it. */
export function mind(key: MindKey): AnswerCaution {
  const severity: Severity = { ...SEVERITIES, ...OWN }[key];
  return { key, severity };
}

const ORDER: Severity[] = ['danger', 'warning', 'note'];

/** Those that are due, the worst first, else in their order. */
export function minds(list: readonly (readonly [key: MindKey, due: boolean])[]): AnswerCaution[] {
  return list
    .flatMap(([key, due]) => (due ? [mind(key)] : []))
    .sort((a, b) => ORDER.indexOf(a.severity) - ORDER.indexOf(b.severity));
}

/** Whether an answer carries a caution. */
export function minded({ cautions }: { cautions: readonly AnswerCaution[] }, key: MindKey): boolean {
  return cautions.some((caution) => caution.key === key);
}
