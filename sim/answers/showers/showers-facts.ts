/** What the showers' answer found, and the facts made of it. */
import type { CoilDescription, Draw } from '../../parts/description.ts';
import type { FactKind, Facts } from '../band.ts';
import type { RowPlan, WarmRow } from './in-a-row.ts';
import type { RealDay } from './morning.ts';
import type { Heating } from './recovery.ts';
import type { Trace } from './trace.ts';

/** Everything found, for facts, tables and curves. */
export interface Found {
  plan: RowPlan & { shower: Draw };
  coil: CoilDescription;
  /** By number of dull days, 0 first; null where a run was left undone. */
  rows: (WarmRow | null)[];
  waits: Record<Heating, number | null>;
  trace: Trace;
  day: RealDay;
}

const KINDS: Record<string, FactKind> = {
  showers: { dimension: 'count', least: 0 },
  warm_s: { dimension: 'time', least: 0 },
  showers_dull: { dimension: 'count', least: 0 },
  warm_dull_s: { dimension: 'time', least: 0 },
  into_s: { dimension: 'time' },
  dull_days: { dimension: 'count' },
  tried: { dimension: 'count' },
  wait_none_s: { dimension: 'time' },
  wait_engine_s: { dimension: 'time' },
  wait_planned_s: { dimension: 'time' },
  warm_up_s: { dimension: 'time' },
  hottest_tap_C: { dimension: 'temperature' },
  slug_C: { dimension: 'temperature' },
  steady_C: { dimension: 'temperature' },
  again_hottest_C: { dimension: 'temperature' },
  again_coldest_C: { dimension: 'temperature' },
  day_showers: { dimension: 'count' },
  day_warm_showers: { dimension: 'count' },
  wanted_C: { dimension: 'temperature' },
  lasts_s: { dimension: 'time' },
  flow_m3_s: { dimension: 'flow' },
};

/** How far the row moves with twice the layers is what the computing may be off. */
export function kindsWith(base: Facts, finer: Facts): Record<string, FactKind> {
  const off = Object.entries(finer).map(([key, value]) => {
    const as = base[key];
    const numerical = value === null || as === null ? 0 : Math.abs(value - as);
    return [key, { ...KINDS[key], numerical }];
  });
  return { ...KINDS, ...Object.fromEntries(off) };
}

export function rowFacts(now: WarmRow | null, later: WarmRow | null): Facts {
  return {
    showers: now?.showers ?? null,
    warm_s: now?.warm_s ?? null,
    showers_dull: later?.showers ?? null,
    warm_dull_s: later?.warm_s ?? null,
  };
}

export function otherFacts({ plan, rows, waits, trace, day }: Found, dull: number): Facts {
  return {
    into_s: rows[0]?.into_s ?? null,
    dull_days: dull,
    tried: plan.count,
    wait_none_s: waits.none,
    wait_engine_s: waits.engine,
    wait_planned_s: waits.planned,
    warm_up_s: trace.wait_s,
    hottest_tap_C: trace.peak_C,
    slug_C: trace.slug_C,
    steady_C: trace.steady_C,
    again_hottest_C: trace.again_peak_C,
    again_coldest_C: trace.again_low_C,
    day_showers: day.showers,
    day_warm_showers: day.warm_showers,
    wanted_C: plan.shower.wanted_C,
    lasts_s: plan.shower.duration_s,
    flow_m3_s: plan.shower.flow_m3_s,
  };
}
