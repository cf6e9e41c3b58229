/** What a run gives back. All arrays are typed and may be transferred between threads. */
import type { Severity } from './severities.ts';

/** Energy that crossed one path over the run, in joules, positive in the path's named direction. */
export interface LedgerPath {
  /** Glossary key, as in `engine_to_store`. */
  key: string;
  energy_J: number;
  /** Into the store's side of the plant, out of it, or inside it (not part of the balance). */
  side: 'in' | 'out' | 'inside';
}

export interface Ledger {
  paths: LedgerPath[];
  /** Energy held at the end less energy held at the start. */
  stored_change_J: number;
  /** In - out - stored change; zero but for rounding. */
  residual_J: number;
  /** |residual| in percent of the throughput (the larger of all in and all out plus storage). */
  residual_percent: number;
  throughput_J: number;
}

/** A discrete thing that happened: a pump switched, boiling began, a shower ran cold. */
export interface RunEvent {
  time_s: number;
  part: string;
  /** Key of the words catalogue, as in `collector.pump.on`. */
  name: string;
  /** Value that matters (temperature, litres), with its glossary key, if any. */
  value?: number;
  unit_key?: string;
}

/** Something the person should know before relying on a figure. Words live in ui/words. */
export interface Caution {
  key: string;
  part: string;
  severity: Severity;
  /** Figure the caution stands beside, if any. */
  figure?: string;
  value?: number;
}

export interface Series {
  interval_s: number;
  /** Seconds since the run's first midnight, ascending; sample i closes the interval that precedes it. */
  time_s: Float64Array;
  layers: number;
  /** Height of each layer's middle above the bottom. */
  height_m: Float64Array;
  /** temperature of layer k at sample i: layer_C[i * layers + k], bottom layer first. */
  layer_C: Float32Array;
  /** Other channels by glossary key, one value per sample; powers are means over the preceding interval. */
  channels: Record<string, Float32Array>;
}

export interface Result {
  name: string;
  first_day: number;
  days: number;
  /** By glossary key, SI; null where the run cannot tell (no shower was drawn). */
  figures: Record<string, number | null>;
  ledger: Ledger;
  events: RunEvent[];
  cautions: Caution[];
  series: Series;
  run: { evaluations: number; steps: number; restarts: number };
}
