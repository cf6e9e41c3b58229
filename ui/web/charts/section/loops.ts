/** What is piped to the store: who, through which coil, and what sits in the pipes. */
import type { SectionFacts, SketchedCoil } from '../../../../sim/index.ts';
import type { SymbolKind } from './symbols.ts';

export type LoopUser = 'engine' | 'collector' | 'household';

export interface Loop {
  user: LoopUser;
  coil: SketchedCoil;
  /** Place of the coil in the plant. */
  index: number;
  /** In the pipe into the coil, and in the one out of it, each from the machine down to the store. */
  inward: SymbolKind[];
  outward: SymbolKind[];
}

/** The loops of a plant, left to right as they are drawn. A relief stands in each: every coil needs one. */
export function loopsOf(facts: SectionFacts): Loop[] {
  const { coils, engine, collector, taps, backup } = facts;
  const loops: Loop[] = [];
  const add = (
    user: LoopUser,
    coilName: string,
    inward: (SymbolKind | false)[],
    outward: (SymbolKind | false)[],
  ) => {
    const index = coils.findIndex(({ name }) => name === coilName);
    if (index < 0) return;
    const there = (kinds: (SymbolKind | false)[]) => kinds.filter((kind) => kind !== false);
    loops.push({ user, coil: coils[index], index, inward: there(inward), outward: there(outward) });
  };
  if (engine) {
    // Nothing is drawn back by a stopped engine where a check valve stands in the way.
    add('engine', engine.coil, ['pump', 'relief'], [engine.standby_loss_W_K === 0 && 'check']);
  }
  if (collector) {
    const filled = collector.loop === 'filled';
    add(
      'collector',
      collector.coil,
      ['relief', filled ? 'vessel' : 'drain'],
      [collector.check_valve && 'check', 'pump'],
    );
  }
  if (taps) {
    add(
      'household',
      taps.coil,
      ['pump', 'check'],
      [taps.mixing_valve_C !== null && 'mixer', backup !== null && 'heater', 'relief'],
    );
  }
  return loops;
}

/** Who uses a coil; null where nothing flows through it. */
export function userOf(facts: SectionFacts, index: number): LoopUser | null {
  return loopsOf(facts).find((loop) => loop.index === index)?.user ?? null;
}
