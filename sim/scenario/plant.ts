/** Builds the plant from a file that has passed the schema, part by part, with the checks between parts. */
import type { CoilDescription, PlantDescription, StoreDescription } from '../parts/description.ts';
import { coilsFrom, type Users } from './build/coils.ts';
import { collectorFrom, noteCollectorFreezing } from './build/collector.ts';
import { engineFrom, noteEngineFreezing } from './build/engine.ts';
import { pricesFrom } from './build/prices.ts';
import { runFrom, siteFrom, weatherFrom } from './build/site.ts';
import { storeFrom } from './build/store.ts';
import { backupFrom, supplyFrom } from './build/supply.ts';
import { tapsFrom } from './build/taps.ts';
import type { WeatherContext } from './build/weather-file.ts';
import type { Desk } from './desk.ts';
import type { ScenarioValues } from './fields/index.ts';
import { nearestWord } from './nearest.ts';
import type { Sketch } from './sketch.ts';

/** Each part as read, or undefined where the schema already refused it: its checks are then left out. */
export type Sections = Partial<ScenarioValues>;

/** The plant, or null where a problem was reported; its sketch, or null where not even that much is known. */
export function plantFrom(
  desk: Desk,
  sections: Sections,
  context: WeatherContext,
): { plant: PlantDescription | null; sketch: Sketch | null } {
  const store = sections.store ? storeFrom(desk, sections.store) : null;
  if (sections.coils) checkUsers(desk, sections);
  const { coils, sketched } = sections.coils
    ? coilsFrom(desk, sections.coils, store, usersOf(sections))
    : { coils: null, sketched: null };
  const sketch = store && sketched ? { store, coils: sketched } : null;
  return { plant: wholePlant(desk, sections, context, store, coils), sketch };
}

function wholePlant(
  desk: Desk,
  sections: Sections,
  context: WeatherContext,
  store: StoreDescription | null,
  coils: CoilDescription[] | null,
): PlantDescription | null {
  const name = sections.name ?? '';
  const site = sections.site ? siteFrom(desk, sections.site) : null;
  const run = sections.run ? runFrom(desk, sections.run) : null;
  const engine = sections.engine ? engineFrom(desk, sections.engine, store, coils) : null;
  const collector = sections.collector ? collectorFrom(desk, sections.collector, site, coils) : null;
  const supply = sections.supply ? supplyFrom(desk, sections.supply) : null;
  const taps = sections.taps ? tapsFrom(desk, sections.taps) : null;
  const backup = sections.backup ? backupFrom(sections.backup) : null;
  const prices = sections.prices ? pricesFrom(sections.prices) : null;
  if (sections.backup && sections.taps === null) {
    desk.problem(
      ['backup'],
      'a household it heats for',
      'no "taps"',
      'add "taps", or remove the backup heater',
    );
  }
  if (!site || !sections.weather) return null;
  const weather = weatherFrom(desk, sections.weather, site, name, context);
  if (desk.problems.length > 0 || !weather || !run || !store || !coils || !supply || !prices) return null;
  const coldest_C = weather.air_C.reduce((a, b) => Math.min(a, b));
  if (collector) noteCollectorFreezing(desk, collector, coldest_C);
  if (engine) noteEngineFreezing(desk, engine, coldest_C);
  noteIdleCoils(desk, coils, sections);
  return { name, site, weather, store, coils, engine, collector, supply, taps, backup, prices, run };
}

const USERS = ['engine', 'collector', 'taps'] as const;

function usersOf(sections: Sections): Users {
  return Object.fromEntries(
    USERS.flatMap((user) => {
      const coil = sections[user]?.coil;
      return coil === undefined ? [] : [[coil, user]];
    }),
  );
}

/** Each part's coil must exist and serve that part alone. */
function checkUsers(desk: Desk, sections: Sections): void {
  const names = [...new Set(sections.coils?.map((coil) => coil.name))];
  const taken = new Map<string, string>();
  for (const user of USERS) {
    const coil = sections[user]?.coil;
    if (coil === undefined) continue;
    if (!names.includes(coil)) {
      const near = nearestWord(coil, names);
      const known =
        names.length > 0
          ? `the name of a coil: ${names.map((name) => `"${name}"`).join(', ')}`
          : 'a coil under "coils"';
      desk.problem(
        [user, 'coil'],
        known,
        JSON.stringify(coil.slice(0, 60)),
        near ? `did you mean "${near}"?` : 'add a coil of that name',
      );
    }
    const other = taken.get(coil);
    if (other)
      desk.problem(
        [user, 'coil'],
        'a coil of its own',
        `"${coil.slice(0, 60)}", which ${other} uses`,
        'their liquids must not mix: add another coil',
      );
    taken.set(coil, user);
  }
}

function noteIdleCoils(desk: Desk, coils: readonly CoilDescription[], sections: Sections): void {
  const users = usersOf(sections);
  coils.forEach((coil, i) => {
    if (!Object.hasOwn(users, coil.name))
      desk.note(['coils', i], `nothing flows through the coil "${coil.name}"`);
  });
}
