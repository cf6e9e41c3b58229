/**
 * What is not known in advance and must be found: thermostats, differential control, limits, fronts, boiling,
 * ice. Each watch is a function that rises through zero when its event happens.
 */
import { LIMIT_DEAD_BAND } from '../parts/collector.ts';
import type { Plant } from './plant.ts';

export interface Happening {
  part: string;
  name: string;
  value?: number;
  unit_key?: string;
}

export interface Watch {
  /** Whether it can happen now. */
  armed(): boolean;
  /** Rises through zero at the event; reads the plant's prepared layers and the state. */
  value(t: number, y: ArrayLike<number>): number;
  /** Changes modes and state; returns what to log, if anything. */
  happen(t: number, y: number[]): Happening | null;
}

/** Below this far under boiling the store counts as boiling, and as still boiling [K]. */
const BOILING_FROM = 0.3;
const BOILING_OVER = 2;

export function watches(plant: Plant): Watch[] {
  return [
    ...engineWatches(plant),
    ...collectorWatches(plant),
    ...storeWatches(plant),
    ...cisternWatches(plant),
  ];
}

function engineWatches(plant: Plant): Watch[] {
  const { engine, store } = plant;
  if (!engine) return [];
  const part = engine.description.name;
  const list: Watch[] = [
    {
      armed: () => engine.running && engine.coil.mode === 'filling',
      value: (_t, y) => engine.coil.front(y) - 1,
      happen: () => {
        engine.coil.mode = 'steady';
        return null;
      },
    },
  ];
  const { runs } = engine.description;
  if (runs.kind === 'call for heat') {
    const probe = () => store.at_C(runs.probe_m);
    list.push(
      {
        armed: () => !engine.running && engine.mayRun,
        value: () => runs.below_C - probe(),
        happen: (t, y) => {
          engine.start(t, y, store);
          return { part, name: 'engine.start', value: probe(), unit_key: 'store_top_C' };
        },
      },
      {
        armed: () => engine.running,
        value: () => probe() - runs.until_C,
        happen: (t, y) => {
          engine.stop(t, y, store);
          return { part, name: 'engine.stop', value: probe(), unit_key: 'store_top_C' };
        },
      },
    );
  }
  return list;
}

function collectorWatches(plant: Plant): Watch[] {
  const { collector, store } = plant;
  if (!collector) return [];
  const { description: d } = collector;
  const part = d.name;
  const lead = (y: ArrayLike<number>) => collector.outlet_C(y) - store.at_C(collector.probe_m);
  const top = () => store.layer_C[store.layers - 1];
  const log = (name: string, y: ArrayLike<number>): Happening => ({
    part,
    name,
    value: collector.outlet_C(y),
    unit_key: 'collector_C',
  });
  return [
    {
      armed: () => !collector.pumping && !collector.limited && collector.mayPump,
      value: (_t, y) => lead(y) - d.on_K,
      happen: (t, y) => {
        collector.start(t, y, store);
        return log('collector.pump.on', y);
      },
    },
    {
      armed: () => collector.pumping,
      value: (_t, y) => d.off_K - lead(y),
      happen: (t, y) => {
        collector.stop(t, y, store);
        return log('collector.pump.off', y);
      },
    },
    {
      armed: () => !collector.limited,
      value: () => top() - d.high_limit_C,
      happen: (t, y) => {
        if (collector.pumping) collector.stop(t, y, store);
        collector.limited = true;
        return log('collector.high_limit', y);
      },
    },
    {
      armed: () => collector.limited,
      value: () => d.high_limit_C - LIMIT_DEAD_BAND - top(),
      happen: (_t, y) => {
        collector.limited = false;
        return log('collector.high_limit.over', y);
      },
    },
  ];
}

function storeWatches(plant: Plant): Watch[] {
  const { store } = plant;
  let boiling = false;
  const top = () => store.layer_C[store.layers - 1];
  const log = (name: string): Happening => ({ part: 'store', name, value: top(), unit_key: 'store_top_C' });
  return [
    {
      armed: () => !boiling,
      value: () => top() - (store.boiling_C - BOILING_FROM),
      happen: () => {
        boiling = true;
        return log('store.boiling');
      },
    },
    {
      armed: () => boiling,
      value: () => store.boiling_C - BOILING_OVER - top(),
      happen: () => {
        boiling = false;
        return log('store.boiling.over');
      },
    },
  ];
}

function cisternWatches(plant: Plant): Watch[] {
  const { supply } = plant;
  if (supply.description.cold.kind !== 'cistern') return [];
  let frozen = false;
  return [
    {
      armed: () => !frozen,
      value: (_t, y) => supply.ice(y) - 0.5,
      happen: () => {
        frozen = true;
        return { part: 'cistern', name: 'cistern.frozen' };
      },
    },
    {
      armed: () => frozen,
      value: (_t, y) => 0.45 - supply.ice(y),
      happen: () => {
        frozen = false;
        return { part: 'cistern', name: 'cistern.thawed' };
      },
    },
  ];
}
