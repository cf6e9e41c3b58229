/** The runs behind the store's answer: as the file has it, cooling by itself, carrying the household, heating up. */
import type { PlantDescription } from '../../parts/description.ts';
import type { Edit } from '../edit.ts';
import type { Job, JobDone } from '../job.ts';
import { stretchEdits } from '../stretch.ts';

const DAY = 86_400;
/** Of water between 20 and 80 C [J/(kg K)], within 0.3 %. */
const HEAT_CAPACITY = 4186;
/** The file's own days, but no more. */
const MOST_OWN_DAYS = 14;
const CARRIED_DAYS = 8;
const HEAT_UP_DAYS = 3;
/** Hottest a run may start with [C]. */
const HOTTEST_START_C = 95;

/** Temperatures that the variants are compared at, from the file's own run. */
export interface Temperatures {
  /** Mean over its days. */
  usual_C: number;
  /** Hottest at its top. */
  full_C: number;
  /** Filled anew. */
  fresh_C: number;
}

export interface Measured {
  /** At the usual temperature, in a day without draws, sun and engine [K]. */
  drop_K: number | null;
  loss_W: number | null;
  /** Of that through walls, lid and surface, vapour included; the rest goes back through the coils' loops. */
  skin_W: number | null;
  evaporated_kg: number | null;
  /** From full until the first draw runs cold [s]; null where it lasts longer than was tried. */
  carried_s: number | null;
  /** From fresh to the usual temperature with the engine [s]; null where it never gets there. */
  heat_up_s: number | null;
}

export function ownJob(plant: PlantDescription): Job {
  return { edits: [{ path: 'run.days', value: Math.min(MOST_OWN_DAYS, plant.run.days) }] };
}

export function temperaturesOf(plant: PlantDescription, { figures }: JobDone): Temperatures {
  const { bottom_C, top_C } = plant.run.start;
  return {
    usual_C: figures.store_mean_C ?? (bottom_C + top_C) / 2,
    full_C: Math.min(HOTTEST_START_C, figures.store_top_C_max ?? top_C),
    fresh_C: plant.store.make_up_C,
  };
}

/** The three runs of a variant; those that the plant has no part for are left out. */
export interface VariantJobs {
  cool: Job;
  carry: Job | null;
  heat: Job | null;
}

export function variantJobs(
  plant: PlantDescription,
  edits: readonly Edit[],
  { usual_C, full_C, fresh_C }: Temperatures,
): VariantJobs {
  const from = (days: number, start_C: number): Edit[] => [
    ...stretchEdits({ from_day: plant.run.first_day, days }),
    { path: 'run.start', value: { bottom: `${start_C} C`, top: `${start_C} C` } },
  ];
  const gone = (...parts: string[]) => parts.map((path) => ({ path, value: undefined }));
  const still = plant.engine ? [{ path: 'engine.runs', value: { kind: 'timetable', spans: [] } }] : [];
  const dark = plant.collector ? DARK : [];
  const drawn = (plant.taps?.draws.length ?? 0) > 0;
  const heats = plant.engine !== null && usual_C > fresh_C + LEAST_RISE_K;
  return {
    cool: { edits: [...edits, ...gone('taps', 'backup'), ...still, ...dark, ...from(1, usual_C)] },
    carry: drawn
      ? { edits: [...edits, ...gone('backup'), ...still, ...dark, ...from(CARRIED_DAYS, full_C)] }
      : null,
    heat: heats
      ? {
          edits: [
            ...edits,
            ...gone('taps', 'backup'),
            ...dark,
            ...from(HEAT_UP_DAYS, fresh_C),
            ...untilEdits(plant, fresh_C, usual_C),
          ],
        }
      : null,
  };
}

/** Less of a rise is no heating up [K]. */
const LEAST_RISE_K = 5;

/** A collector under a cover: what its loop loses, it loses all the same. */
const DARK: Edit[] = [{ path: 'collector.shade', value: new Array(12).fill('100 %') }];

/** The engine started on a fresh store and stopped once its middle has reached `until_C`. */
function untilEdits({ store }: PlantDescription, fresh_C: number, until_C: number): Edit[] {
  const runs = {
    kind: 'call for heat',
    below: `${fresh_C + 1} C`,
    until: `${until_C} C`,
    probe: `${store.water_depth_m / 2} m`,
    allowed: [{ from: '0:00', to: '24:00' }],
  };
  return [{ path: 'engine.runs', value: runs }];
}

export function measured(
  usual_C: number,
  cool: JobDone | null,
  carry: JobDone | null,
  heat: JobDone | null,
): Measured {
  const end_C = cool?.figures.store_mean_C_end ?? null;
  const drop_K = end_C === null ? null : usual_C - end_C;
  const mass_kg = cool?.figures.store_mass_kg ?? null;
  const heated_s = heat?.figures.engine_s ?? null;
  return {
    drop_K,
    loss_W: drop_K === null || mass_kg === null ? null : (mass_kg * HEAT_CAPACITY * drop_K) / DAY,
    skin_W: cool ? (cool.figures.loss_J ?? 0) / DAY : null,
    evaporated_kg: cool?.figures.evaporated_kg ?? null,
    carried_s: carry?.figures.first_cold_s ?? null,
    heat_up_s: heated_s !== null && heated_s < HEAT_UP_DAYS * DAY - 1 ? heated_s : null,
  };
}
