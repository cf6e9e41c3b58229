/** The household: its draws, its mixing valve and the pipe to its taps. */
import type { Draw, TapsDescription } from '../../parts/description.ts';
import type { Desk } from '../desk.ts';
import { patternDraws, showerDraws } from '../draws-of-day.ts';
import type { ScenarioValues } from '../fields/index.ts';
import { taps as field } from '../fields/taps.ts';
import { pipeConductanceFrom, surroundingsFrom, tubeFrom } from './shared.ts';

type TapsRead = NonNullable<ScenarioValues['taps']>;
type DrawRead = TapsRead['draws'][number];

const STEPS = ['taps'] as const;
const DAY_S = 86_400;

/** The household's description, or null where something in it is refused. */
export function tapsFrom(desk: Desk, read: TapsRead): TapsDescription | null {
  const before = desk.problems.length;
  const steps = [...STEPS, 'pipe'];
  const tube = tubeFrom(desk, [...steps, 'tube'], read.pipe.tube);
  const draws = [
    ...read.showers.flatMap((showers) =>
      showerDraws({
        name: showers.name,
        at_s: showers.at,
        days: showers.days,
        people: showers.people,
        gap_s: showers.gap,
        lasts_s: showers.lasts,
        flow_m3_s: showers.flow,
        wanted_C: showers.temperature,
        rated_Pa: showers.rated_pressure,
      }),
    ),
    ...read.draws.map((draw, i) => drawFrom(desk, [...STEPS, 'draws', i], draw)),
    ...(read.pattern ? patternDraws(read.pattern.name, read.pattern.starts) : []),
  ];
  if (desk.problems.length > before || !tube) return null;
  if (read.mixing_valve.fitted) noteTooHot(desk, draws, read.mixing_valve.set);
  const { pipe } = read;
  return {
    coil: read.coil,
    draws: draws.sort((a, b) => a.at_s - b.at_s),
    mixing_valve_C: read.mixing_valve.fitted ? read.mixing_valve.set : null,
    pipe: {
      length_m: pipe.length,
      tube,
      conductance_W_mK: pipeConductanceFrom(
        desk,
        steps,
        field.fields.pipe.fields,
        pipe,
        tube.outside_diameter_m,
      ),
      surroundings: surroundingsFrom(pipe.stands),
    },
  };
}

function drawFrom(desk: Desk, steps: readonly PropertyKey[], read: DrawRead): Draw {
  let duration_s = read.lasts ?? 0;
  if ((read.lasts === null) === (read.volume === null)) {
    const got = read.lasts === null ? 'neither' : 'both';
    desk.problem(
      [...steps, 'lasts'],
      'either how long it runs or a volume',
      got,
      got === 'both' ? 'remove one' : 'add "lasts", as in "3 min", or "volume", as in "4 gal"',
    );
  } else if (read.volume !== null) {
    duration_s = read.volume / read.flow;
    if (duration_s < 1 || duration_s > DAY_S) {
      desk.problem(
        [...steps, 'volume'],
        'a draw of one second to one day',
        `${Math.round(duration_s)} s`,
        'check the units of volume and flow',
      );
    }
  }
  return {
    name: read.name,
    days: read.days,
    at_s: read.at % DAY_S,
    duration_s,
    flow_m3_s: read.flow,
    wanted_C: read.temperature,
    outlet: outletFrom(desk, steps, read),
    shower: false,
  };
}

function outletFrom(desk: Desk, steps: readonly PropertyKey[], read: DrawRead): Draw['outlet'] {
  if (read.outlet === 'tap') return { kind: 'tap' };
  const drawField = field.fields.draws.of;
  const rated_Pa = desk.complete(drawField, steps, 'rated_pressure', read.rated_pressure, () => ({
    value: USUAL_PRESSURE_PA,
  }));
  return { kind: 'head', rated_Pa };
}

/** 20 psi: what a small pump keeps up at a shower's flow [Pa]. */
const USUAL_PRESSURE_PA = 20 * 6894.757;

/** Draws that want more than the mixing valve lets through can never be served. */
function noteTooHot(desk: Desk, draws: readonly Draw[], set_C: number): void {
  const hotter = draws.filter((draw) => draw.wanted_C > set_C + 0.1);
  if (hotter.length === 0) return;
  const names = [...new Set(hotter.map((draw) => draw.name))].join(', ');
  desk.note(
    [...STEPS, 'mixing_valve', 'set'],
    `the mixing valve lets through less than these want: ${names}`,
  );
}
