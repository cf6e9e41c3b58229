/**
 * The runs in which something fails, and those without the failure beside them: each is the scenario with edits. A run
 * leads in for days, so that the store forgets how it began.
 */
import type { CollectorDescription, Fault, PlantDescription } from '../../parts/description.ts';
import { planeOfArray } from '../../parts/weather/plane-of-array.ts';
import type { Edit } from '../edit.ts';
import { usualTank } from '../household.ts';
import type { Job, JobDone } from '../job.ts';
import { type Stretch, stretchEdits } from '../stretch.ts';
import { coldOf } from './by-hand.ts';
import { type Failure, NIGHT_C, whyNot } from './failures.ts';

export const LEAD_DAYS = 5;
export const AWAY_DAYS = 14;
export const OFF_DAYS = 3;
const CISTERN_DAYS = 7;
const HOUR = 3600;
const DAY = 24 * HOUR;

/** Runs of the answer: plain ones, and one or two for each failure that the store takes part in. */
export type RunKey = 'summer' | 'winter' | 'still' | 'limitless' | Exclude<Failure, 'trapped' | 'pipe'>;

export type Runs = Partial<Record<RunKey, JobDone | null>>;

export interface Plan {
  jobs: Partial<Record<RunKey, Job>>;
  /** Day of the summer's run at whose noon the pump fails: the sunniest of those away. */
  sunny_day: number;
}

/** First days, north of the equator, of the weeks in July and January [day of the year]; south half a year apart. */
const SUMMER = { from_day: 181, days: LEAD_DAYS + AWAY_DAYS };
const WINTER = { from_day: 9, days: LEAD_DAYS + 2 * OFF_DAYS };
const HALF_YEAR = 182;

export const LEAD_S = LEAD_DAYS * DAY;
/** From mid-afternoon to the next morning. */
const NIGHT = { from_s: LEAD_S + 15 * HOUR, to_s: LEAD_S + 34 * HOUR };

/** Everything that applies to a plant, in an order that keeps what is plain first. */
export function planOf(plant: PlantDescription): Plan {
  const south = plant.site.latitude_rad < 0;
  const at = (stretch: Stretch): Stretch => ({
    ...stretch,
    from_day: stretch.from_day + (south ? HALF_YEAR : 0),
  });
  const [summer, winter] = [at(SUMMER), at(WINTER)];
  const sunny_day = plant.collector ? sunniest(plant, plant.collector, summer) : LEAD_DAYS;
  const noon_s = sunny_day * DAY + 12 * HOUR;
  const applies = (failure: Failure) => whyNot(failure, plant) === null;
  const jobs: Plan['jobs'] = {};
  const add = (key: RunKey, wanted: boolean, job: () => Job) => {
    if (wanted) jobs[key] = job();
  };
  const inSummer = (parts: number[], faults: Fault[], more: Edit[] = []) => job(summer, parts, faults, more);
  const inWinter = (parts: number[], faults: Fault[], more: Edit[] = []) => job(winter, parts, faults, more);
  const off = { from_s: LEAD_S, to_s: LEAD_S + OFF_DAYS * DAY };
  const cold: Fault = { kind: 'cold spell', ...NIGHT, temperature_C: NIGHT_C };
  const gone: Fault[] = [all('household', LEAD_S), all('engine', LEAD_S)];
  const threeDays = [LEAD_DAYS, LEAD_DAYS + OFF_DAYS];

  add('summer', applies('away') || applies('mixing'), () => inSummer([LEAD_DAYS], []));
  add('winter', true, () => inWinter(threeDays, []));
  add('still', true, () => still(plant, winter, []));
  add('away', applies('away'), () => inSummer([LEAD_DAYS], gone));
  add('limitless', applies('away'), () =>
    inSummer([LEAD_DAYS], gone, [{ path: 'collector.high_limit', value: '100 C' }]),
  );
  add('pump', applies('pump'), () =>
    inSummer([sunny_day], [{ kind: 'collector pump', from_s: noon_s, to_s: noon_s + OFF_DAYS * DAY }]),
  );
  add('mixing', applies('mixing'), () =>
    inSummer([LEAD_DAYS], [], [{ path: 'taps.mixing_valve', value: { fitted: false } }]),
  );
  add('off', applies('off'), () => inWinter(threeDays, [{ kind: 'engine', ...off }]));
  add('power', applies('power'), () =>
    inWinter(threeDays, [
      { kind: 'engine', ...off },
      { kind: 'household', ...off },
      { kind: 'collector pump', ...off },
    ]),
  );
  const oneNight = [LEAD_DAYS, LEAD_DAYS + 2];
  add('night', applies('night'), () => inWinter(oneNight, [cold]));
  add('weak', applies('weak'), () => inWinter(oneNight, [cold], thinned(plant.collector)));
  add('cistern', applies('cistern'), () =>
    job(
      { from_day: winter.from_day, days: CISTERN_DAYS },
      [],
      [{ kind: 'cold spell', from_s: 0, to_s: Number.POSITIVE_INFINITY, temperature_C: NIGHT_C }],
      [{ path: 'supply.cold.stands', value: { where: 'outdoors' } }],
    ),
  );
  add('lid', applies('lid'), () =>
    still(plant, winter, [
      { path: 'store.lid', value: 'open' },
      { path: 'store.vapour_escape', value: undefined },
    ]),
  );
  add('sun_valve', applies('sun_valve'), () =>
    still(plant, winter, [
      { path: 'collector.check_valve', value: false },
      { path: 'collector.night_loss', value: undefined },
    ]),
  );
  add('engine_valve', applies('engine_valve'), () =>
    still(plant, winter, [
      { path: 'engine.check_valve', value: false },
      { path: 'engine.standby_loss', value: undefined },
    ]),
  );
  return { jobs, sunny_day };
}

function job(stretch: Stretch, parts: number[], faults: Fault[], more: readonly Edit[]): Job {
  return { edits: [...more, ...stretchEdits(stretch), faultEdit(faults)], parts, course: true };
}

/** A day on which nothing is drawn and nothing heats, from the scenario's usual temperature. */
function still(plant: PlantDescription, { from_day }: Stretch, more: readonly Edit[]): Job {
  const start = `${usualTank(plant, coldOf(plant)).toFixed(3)} C`;
  const faults = [all('household', 0), all('engine', 0), all('collector pump', 0)];
  return {
    edits: [
      ...more,
      ...stretchEdits({ from_day: from_day + LEAD_DAYS, days: 1 }),
      { path: 'run.start', value: { bottom: start, top: start } },
      faultEdit(faults),
    ],
  };
}

/** As the file has it; the run's own end ends what is not over before. */
function faultEdit(faults: readonly Fault[]): Edit {
  const value = faults.map((fault) => ({
    kind: fault.kind,
    from: `${fault.from_s / HOUR} h`,
    ...(Number.isFinite(fault.to_s) ? { to: `${fault.to_s / HOUR} h` } : {}),
    ...(fault.kind === 'cold spell' ? { temperature: `${fault.temperature_C} C` } : {}),
  }));
  return { path: 'run.faults', value: value.length > 0 ? value : undefined };
}

function all(kind: Exclude<Fault['kind'], 'cold spell'>, from_s: number): Fault {
  return { kind, from_s, to_s: Number.POSITIVE_INFINITY };
}

/** The loop topped up with water until half of its glycol is left. */
function thinned(collector: CollectorDescription | null): Edit[] {
  if (!collector) return [];
  const { kind, mass_share } = collector.fluid;
  return [{ path: 'collector.fluid', value: { kind, share: `${50 * mass_share} %`, share_by: 'mass' } }];
}

/** Day of a stretch, after the lead-in, on which the collectors' glass takes in most. */
function sunniest(plant: PlantDescription, collector: CollectorDescription, stretch: Stretch): number {
  const { absorbed_W_m2 } = planeOfArray(plant.weather, plant.site, collector);
  const sums = Array.from({ length: AWAY_DAYS - OFF_DAYS }, (_, i) => {
    const day = (stretch.from_day + LEAD_DAYS + i) % 365;
    return absorbed_W_m2.slice(24 * day, 24 * day + 24).reduce((sum, each) => sum + each, 0);
  });
  return LEAD_DAYS + sums.indexOf(Math.max(...sums));
}
