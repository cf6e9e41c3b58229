/** The whole catalogue: what a scenario file may hold. */
import { choice, group, optional, type Raw, required, text, type Value } from '../field.ts';
import { backup } from './backup.ts';
import { coils } from './coil.ts';
import { collector } from './collector.ts';
import { doubts } from './doubts.ts';
import { engine } from './engine.ts';
import { prices } from './prices.ts';
import { run } from './run.ts';
import { site, weather } from './site.ts';
import { store } from './store.ts';
import { supply } from './supply.ts';
import { taps } from './taps.ts';

export const SCENARIO_FORMAT = 'tankful';
export const SCENARIO_VERSION = 1;

export const scenario = group(
  'scenario',
  {
    format: choice('format', [SCENARIO_FORMAT], required),
    name: text('name', required),
    note: text('note', optional('no note'), { longest: 2000 }),
    site,
    weather,
    run,
    store,
    coils,
    engine,
    collector,
    supply,
    taps,
    backup,
    prices,
    doubts,
  },
  required,
);

/** A scenario file's content. `version` stands beside the catalogue: `migrate.ts` has read it by then. */
export type Scenario = Raw<typeof scenario> & { version: typeof SCENARIO_VERSION };
export type ScenarioValues = Value<typeof scenario>;
