/** The list of parts: each part of a design in one line. */
import {
  type Addable,
  type DimensionKey,
  parseQuantity,
  type Refusal,
  type Scenario,
  type SectionFacts,
} from '../../sim/index.ts';
import { fromSim } from './from-sim.ts';
import { counted } from './locale.ts';
import { machineFacts } from './section.ts';
import { coilLine, storeLine, waterLine } from './section-legend.ts';
import { quantityText, type Units } from './units.ts';

export const partListWords = {
  title: 'Parts',
  intro: 'All that the drawing shows, and what it runs on. Open a part to change it.',
  open: 'Open',
  duplicate: 'Duplicate',
  remove: 'Remove',
  removeSure: (title: string) => `Remove ${title}?`,
  keep: 'Keep it',
  addTitle: 'Add',
  wrong: (count: number) => `${counted(count, 'value')} to correct`,
} as const;

export const addableWords: Record<Addable, string> = {
  coil: 'a coil',
  engine: 'an engine',
  collector: 'a collector',
  household: 'a household',
  shower: 'showers',
  draw: 'another draw',
  backup: 'a backup heater',
};

/** What was done to the parts, as undoing names it. */
export const partGesture = {
  add: (kind: Addable) => `add ${addableWords[kind]}`,
  duplicate: (title: string) => `duplicate ${title}`,
  remove: (title: string) => `remove ${title}`,
} as const;

const usersWords = {
  engine: 'the engine’s coolant',
  collector: 'the collector’s loop',
  taps: 'the household’s water',
};

/** Why a part cannot be added, doubled or taken away. */
export function refusalText(refusal: Refusal): string {
  switch (refusal.no) {
    case 'one of its kind':
      return 'There is one already.';
    case 'always there':
      return 'No design is without it.';
    case 'in use':
      return `Not while ${usersWords[refusal.by]} flows through it: give that another coil, or remove it first.`;
    case 'heats for it':
      return 'Not while the backup heater heats its water: remove that first.';
    case 'nobody draws':
      return 'Nobody draws water yet: add a household first.';
    case 'full':
      return `There are ${refusal.most} already, the most there can be.`;
  }
}

/** A part of the file, in the order of the list. */
export interface ListedPart {
  path: string;
  /** What the file calls it; null where it has no name of its own. */
  name: string | null;
  facts: string;
}

/** Every part of a design with its line of facts; without facts of the plant the file's own texts must do. */
export function listedParts(scenario: Scenario, facts: SectionFacts | null, units: Units): ListedPart[] {
  const { coils = [], engine, collector, taps, backup } = scenario;
  const say = sayIn(units);
  const list: ListedPart[] = [{ path: 'store', name: null, facts: facts ? storeFacts(facts, units) : '' }];
  for (const [i, coil] of coils.entries()) {
    const known = facts?.coils[i];
    list.push({
      path: `coils[${i}]`,
      name: coil.name,
      facts: known ? coilLine(known, units) : coil.roll_length,
    });
  }
  const machine = (user: 'engine' | 'collector', coil: string) =>
    joined(facts?.[user] ? machineFacts(user, facts, units, false) : '', `coil ${coil}`);
  if (engine) {
    const own = joined(machine('engine', engine.coil), runsText(engine, say));
    list.push({ path: 'engine', name: engine.name ?? null, facts: own });
  }
  if (collector) {
    list.push({
      path: 'collector',
      name: collector.name ?? null,
      facts: machine('collector', collector.coil),
    });
  }
  list.push({ path: 'supply', name: null, facts: facts ? supplyText(facts, units) : '' });
  if (taps)
    list.push({ path: 'taps', name: null, facts: tapsText(taps.coil, facts, units) }, ...drawsOf(taps, say));
  if (backup)
    list.push({
      path: 'backup',
      name: backup.name ?? null,
      facts: backupText(facts, say.power(backup.max_heat), units),
    });
  return [...list, ...around(scenario, say)];
}

function storeFacts(facts: SectionFacts, units: Units): string {
  return `${storeLine(facts.store, units)}; ${waterLine(facts, units)}`;
}

/** A text of the file in the reader's units; as it stands where it cannot be read. */
type SayText = Record<
  'length' | 'clock' | 'time' | 'volume' | 'flow' | 'temperature' | 'power',
  (text: string) => string
>;

function sayIn(units: Units): SayText {
  const as = (dimension: DimensionKey) => (text: string) => {
    const read = parseQuantity(text, dimension);
    return read.ok ? quantityText(read.value, dimension, units) : fromSim(text);
  };
  return {
    length: as('length'),
    clock: as('clock'),
    time: as('time'),
    volume: as('volume'),
    flow: as('flow'),
    temperature: as('temperature'),
    power: as('power'),
  };
}

function runsText({ runs }: NonNullable<Scenario['engine']>, say: SayText): string {
  if (runs.kind === 'call for heat') {
    return `runs from below ${say.temperature(runs.below)} until ${say.temperature(runs.until)}`;
  }
  return runs.spans
    .map(({ days, from, to }) => `${days ?? 'every day'} ${say.clock(from)} to ${say.clock(to)}`)
    .join(' and ');
}

function supplyText({ supply }: SectionFacts, units: Units): string {
  const { cold, pump } = supply;
  const water =
    cold.kind === 'cistern'
      ? `cistern of ${quantityText(cold.volume_m3, 'volume', units)}`
      : cold.kind === 'fixed'
        ? `water at ${quantityText(cold.temperature_C, 'temperature', units)}`
        : 'water by the month';
  const flow = quantityText(pump.open_flow_m3_s, 'flow', units);
  return `${water}; pump of ${flow}, cut-out ${quantityText(pump.cut_out_Pa, 'pressure', units)}`;
}

function tapsText(coil: string, facts: SectionFacts | null, units: Units): string {
  const set_C = facts?.taps?.mixing_valve_C;
  if (set_C === undefined) return `coil ${coil}`;
  const valve =
    set_C === null ? 'no mixing valve' : `mixing valve at ${quantityText(set_C, 'temperature', units)}`;
  return `coil ${coil}; ${valve}`;
}

function drawsOf({ showers = [], draws = [] }: NonNullable<Scenario['taps']>, say: SayText): ListedPart[] {
  const when = ({ at, days }: { at: string; days?: string }) => joined(say.clock(at), days ?? '', ', ');
  const water = ({ flow, temperature }: { flow?: string; temperature?: string }) => [
    flow && say.flow(flow),
    temperature && say.temperature(temperature),
  ];
  return [
    ...showers.map((shower, i): ListedPart => {
      const people = counted(shower.people ?? 1, 'person', 'people');
      const facts = [when(shower), people, shower.lasts && say.time(shower.lasts), ...water(shower)];
      return { path: `taps.showers[${i}]`, name: shower.name ?? null, facts: listed(facts) };
    }),
    ...draws.map((draw, i): ListedPart => {
      const much = draw.volume ? say.volume(draw.volume) : draw.lasts && say.time(draw.lasts);
      return { path: `taps.draws[${i}]`, name: draw.name, facts: listed([when(draw), much, ...water(draw)]) };
    }),
  ];
}

function backupText(facts: SectionFacts | null, max_heat: string, units: Units): string {
  const backup = facts?.backup;
  if (!backup) return max_heat;
  const heat = quantityText(backup.max_heat_W, 'power', units);
  return `${fromSim(backup.fuel.name)}, up to ${heat}, heats to ${quantityText(backup.set_C, 'temperature', units)}`;
}

/** What a design runs on, as the file says it. */
function around({ site, weather, run, prices }: Scenario, say: SayText): ListedPart[] {
  const days = run?.days === undefined ? undefined : counted(run.days, 'day');
  return [
    {
      path: 'site',
      name: null,
      facts: listed([
        fromSim(site.latitude),
        site.longitude && fromSim(site.longitude),
        site.altitude && say.length(site.altitude),
      ]),
    },
    { path: 'weather', name: null, facts: fromSim(weather?.kind ?? 'by latitude') },
    { path: 'run', name: null, facts: listed([run?.from && `from ${run.from}`, days]) },
    { path: 'prices', name: null, facts: prices ? '' : 'invented, until you type your own' },
  ];
}

function listed(texts: readonly (string | undefined)[]): string {
  return texts.filter(Boolean).join(', ');
}

function joined(a: string, b: string, by = '; '): string {
  return a === '' || b === '' ? a + b : a + by + b;
}
