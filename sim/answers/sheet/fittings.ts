/** Fittings that the plant's topology asks for, whether its file mentions them or not. */
import type { SectionFacts } from '../section/facts.ts';
import type { CoilSheet } from './coils.ts';

export type FittingKind =
  | 'union'
  | 'coupling'
  | 'tee'
  | 'elbow'
  | 'relief'
  | 'expansion'
  | 'mixing_valve'
  | 'check_valve'
  | 'air_vent'
  | 'drain';

export interface Fitting {
  kind: FittingKind;
  /** Label of the tube it sits on; null for valves, which follow their pipes. */
  tube: string | null;
  count: number;
  /** To have one at hand: only of what is spoilt in the making. */
  spare: number;
  /** Coils it serves; the store by the name of nobody. */
  coils: string[];
  /** Counted though the file says there is none. */
  missing: boolean;
}

/** One in ten, at least one, of joints: common practice. */
const SPARE_SHARE = 0.1;
const JOINTS: ReadonlySet<FittingKind> = new Set(['union', 'coupling', 'tee', 'elbow']);
const ORDER: FittingKind[] = [
  'union',
  'coupling',
  'tee',
  'elbow',
  'relief',
  'expansion',
  'mixing_valve',
  'check_valve',
  'air_vent',
  'drain',
];

/**
 * Counts. Each coil, piped or not: a relief, since every one can be shut in. Each that is piped: a union at both ends,
 * above the water, so that it comes out whole; a drain at its lowest point. Rolls in series: a coupling between two. n rolls in
 * parallel: at either end n - 1 tees and an elbow behind the last. The household: a mixing valve with a check valve on
 * either leg, one more behind the pump, and room to expand. A filled loop: an air vent at its highest point and a check
 * valve against its own rising; a collector's also a vessel. A loop that drains back has neither. The store: a drain.
 * Source: shared/trade.md section 6, and the way the drawing pipes it.
 */
export function fittingsOf(facts: SectionFacts, coils: readonly CoilSheet[]): Fitting[] {
  const { engine, collector, taps } = facts;
  const found: Omit<Fitting, 'spare'>[] = [];
  const add = (
    kind: FittingKind,
    count: number,
    { name, tube }: { name: string; tube: string | null },
    missing = false,
  ) => {
    if (count === 0) return;
    const same = found.find((each) => each.kind === kind && each.tube === tube && each.missing === missing);
    if (!same) found.push({ kind, tube, count, coils: name === '' ? [] : [name], missing });
    else {
      same.count += count;
      if (name !== '' && !same.coils.includes(name)) same.coils.push(name);
    }
  };
  for (const { name, user, tube, rolls, join } of coils) {
    const joint = { name, tube: tube.label };
    const valve = { name, tube: null };
    const branches = join === 'parallel' ? rolls - 1 : 0;
    add('coupling', join === 'series' ? rolls - 1 : 0, joint);
    add('tee', 2 * branches, joint);
    add('elbow', branches > 0 ? 2 : 0, joint);
    add('relief', 1, valve);
    if (user === null) continue;
    add('union', 2, joint);
    add('drain', 1, valve);
    if (user === 'household' && taps) {
      add('mixing_valve', 1, valve, taps.mixing_valve_C === null);
      add('check_valve', 3, valve);
      add('expansion', 1, valve);
    }
    if (user === 'engine' && engine) {
      add('check_valve', 1, valve, engine.standby_loss_W_K > 0);
      add('air_vent', 1, valve);
    }
    if (user === 'collector' && collector?.loop === 'filled') {
      add('check_valve', 1, valve, !collector.check_valve);
      add('air_vent', 1, valve);
      add('expansion', 1, valve);
    }
  }
  add('drain', 1, { name: '', tube: null });
  return found
    .map((each) => ({
      ...each,
      spare: JOINTS.has(each.kind) ? Math.max(1, Math.ceil(SPARE_SHARE * each.count)) : 0,
    }))
    .sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind));
}
