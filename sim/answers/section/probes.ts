/** Where the store is felt. */
import type { SectionFacts } from './facts.ts';

export interface Probe {
  what: 'engine' | 'collector' | 'limit';
  height_m: number;
}

/** By the engine's call for heat, by the collector's pump at the foot of its coil, and by its high limit at the top. */
export function probesOf({ store, coils, engine, collector }: SectionFacts): Probe[] {
  const probes: Probe[] = [];
  if (engine?.runs.kind === 'call for heat') probes.push({ what: 'engine', height_m: engine.runs.probe_m });
  const coil = collector && coils.find(({ name }) => name === collector.coil);
  if (coil) {
    probes.push({ what: 'collector', height_m: coil.bottom_m });
    probes.push({ what: 'limit', height_m: store.water_depth_m });
  }
  return probes;
}
