/**
 * Words for the cautions of a run: a title, a sentence with the figure it stands beside, what to do. They warn;
 * they never say that something is safe, and certify nothing.
 */
import type { Caution } from '../../sim/index.ts';
import { type CautionKey, cautionTitles, isCaution } from './caution-titles.ts';
import type { FigureKey } from './figures.ts';
import type { Speak } from './speak.ts';

interface CautionWords {
  title: string;
  /** Figure beside which the sentence stands; null where it stands alone. */
  figure: FigureKey | null;
  /** `value` is the caution's number in SI, in the unit of `figure` if it names no other; null if it has none. */
  says: (value: number | null, speak: Speak) => string;
  todo: (speak: Speak) => string;
  /** Codes and licensed trades have a say in it. */
  licensed?: true;
}

const DAY_S = 86_400;

export const licensedWords = 'Local code and licensed practice decide; this is an estimate, not an approval.';

/** What burns, and how fast: Moritz and Henriques, as `sim/physics/scald.ts` has it. */
export const burnWords = ({ temperature }: Speak): string =>
  `a deep burn takes about 5 min at ${temperature(48.9)}, 15 s at ${temperature(56.1)}, 5 s at ${temperature(60)}, 1 s at ${temperature(68.3)}`;

export const cautionWords = {
  scald: {
    title: cautionTitles.scald,
    figure: 'outlet_C_max',
    says: (C, speak) =>
      `${C === null ? 'The tap gives scalding water' : `Water reaches ${speak.temperature(C)} at the tap`}; ${burnWords(speak)}.`,
    todo: ({ temperature }) =>
      `Fit a thermostatic mixing valve near the store, set it no higher than ${temperature(48.9)}, and test at the tap.`,
    licensed: true,
  },
  scald_no_valve: {
    title: cautionTitles.scald_no_valve,
    figure: 'outlet_C_max',
    says: (C, speak) =>
      `Nothing limits what reaches the tap${C === null ? '' : `, where water comes as hot as ${speak.temperature(C)}`}; ${burnWords(speak)}.`,
    todo: ({ temperature }) =>
      `Fit a thermostatic mixing valve near the store, set it no higher than ${temperature(48.9)}, and test at the tap; a hand on the tap is not one.`,
    licensed: true,
  },
  trapped_coil: {
    title: cautionTitles.trapped_coil,
    figure: 'store_top_C_max',
    says: (C, { temperature }) =>
      `Check valves, shut valves, caps and closed taps seal the liquid in a coil${C === null ? '' : `, around which the store reaches ${temperature(C)}`}; a few degrees of warming raise its pressure until something bursts.`,
    todo: () =>
      'Give every coil that can be shut off a relief valve with no valve between, piped to a safe place, and room to expand. Never cap a relief.',
    licensed: true,
  },
  carbon_monoxide: {
    title: cautionTitles.carbon_monoxide,
    figure: 'engine_s',
    says: (s, { time }) =>
      `A running engine makes carbon monoxide${s === null ? '' : `, here for ${time(s)}`}; it kills without a smell.`,
    todo: ({ length }) =>
      `Keep the engine out of living space, its exhaust at least ${length(6.1)} from any opening, and alarms with batteries where people sleep. A homemade exhaust exchanger is a path for a leak.`,
    licensed: true,
  },
  hot_engine: {
    title: cautionTitles.hot_engine,
    figure: 'engine_s',
    says: (s, { time }) =>
      `Coolant is under pressure and scalds, exhaust pipes set foam, wood and fuel vapour alight${s === null ? '' : `, over ${time(s)} of running`}.`,
    todo: () =>
      'Never open a hot cap; keep thermostat and shutdown as the maker fitted them; keep exhaust and fuel away from foam and from each other.',
    licensed: true,
  },
  plastic_tube: {
    title: cautionTitles.plastic_tube,
    figure: 'store_top_C_max',
    says: (C, { temperature }) =>
      `PEX is rated to about ${temperature(82.2)}, and to more only at less pressure${C === null ? '; engine coolant comes hotter' : `; around it the store reaches ${temperature(C)}`}.`,
    todo: () =>
      'Use metal tube there, read the rating printed on tube and fittings, and hang no weight on plastic fittings in hot water.',
    licensed: true,
  },
  mixed_metals: {
    title: cautionTitles.mixed_metals,
    figure: null,
    says: () =>
      'Copper in the water of a zinc-coated steel tank dissolves the zinc, then the steel; a trace of copper is enough.',
    todo: () =>
      'Line the tank, or use stainless steel or another wall; join the metals by dielectric unions only.',
  },
  coolant_poison: {
    title: cautionTitles.coolant_poison,
    figure: null,
    says: (share, speak) =>
      `The coolant is ${share === null ? '' : `${speak.share(share)} `}ethylene glycol: one pinhole puts it into the store, a second into the tap.`,
    todo: () =>
      'Use inhibited propylene glycol or two walls, keep the household water at the higher pressure, dye the coolant, watch its level. Never drink from the store.',
    licensed: true,
  },
  boil_over: {
    title: cautionTitles.boil_over,
    figure: 'store_top_C_max',
    says: (C, { temperature }) =>
      `${C === null ? 'The store can go on' : `The top of the store reaches ${temperature(C)} and can go on`} to boiling if a pump fails or nobody draws.`,
    todo: () =>
      'Fit a high limit, a vent that can neither ice up nor be blocked, an overflow to a drain, and a way to dump or cover. Keep the radiator working.',
    licensed: true,
  },
  boiling: {
    title: cautionTitles.boiling,
    figure: 'boiled_kg',
    says: (kg, { mass }) =>
      `${kg === null ? 'The store' : `${mass(kg)} of water`} boils off; steam scalds, and the coils come to stand dry.`,
    todo: () =>
      'Stop or dump the heat earlier: a lower high limit, a cover, a larger store, or less collector.',
    licensed: true,
  },
  liner_limit: {
    title: cautionTitles.liner_limit,
    figure: 'liner_C_max',
    says: (C, { temperature }) =>
      `The liner ${C === null ? 'gets hotter than it' : `sees ${temperature(C)}, more than it`} is made for; it ages fast and leaks unseen behind the insulation.`,
    todo: () => 'Lower the high limit or choose a liner for the heat; lay a pan with a leak alarm.',
    licensed: true,
  },
  foam_limit: {
    title: cautionTitles.foam_limit,
    figure: 'foam_C_max',
    says: (C, { temperature }) =>
      `The insulation ${C === null ? 'gets hotter than it' : `sees ${temperature(C)}, more than it`} is made for; foam shrinks, sags and stops insulating.`,
    todo: () => 'Put a sheet that stands the heat next to the hot side, or lower the high limit.',
    licensed: true,
  },
  wall_limit: {
    title: cautionTitles.wall_limit,
    figure: 'wall_C_max',
    says: (C, { temperature }) =>
      `The wall ${C === null ? 'gets hotter than it' : `sees ${temperature(C)}, more than it`} is made for; it softens under the weight of the water.`,
    todo: () => 'Lower the high limit, or choose a wall that stands the heat or is held from outside.',
    licensed: true,
  },
  engine_cold: {
    title: cautionTitles.engine_cold,
    figure: 'coldest_return_C',
    says: (C, { temperature }) =>
      `Coolant returns ${C === null ? 'colder than the engine likes' : `at ${temperature(C)}`}; an engine run cold wears faster and soots.`,
    todo: () =>
      'Keep its own thermostat, never bypass it; a valve that mixes warm coolant into the return helps.',
  },
  freezing_loop: {
    title: cautionTitles.freezing_loop,
    figure: 'collector_C_min',
    says: (C, { temperature }) =>
      `The fluid in the loop ${C === null ? 'falls below its freezing point' : `falls to ${temperature(C)}, below its freezing point`}; ice splits tubes and manifolds.`,
    todo: () => 'Use tested glycol, or drain back with a slope everywhere and no trapped low spot.',
  },
  freezing_cistern: {
    title: cautionTitles.freezing_cistern,
    figure: 'cistern_C_min',
    says: (C, { temperature }) =>
      `The cistern ${C === null ? 'comes near freezing' : `falls to ${temperature(C)}`}; its pump and pipe freeze first.`,
    todo: () =>
      'Shelter cistern, pump and pipe, or drain the pipe when it stands; drain the coil before leaving.',
  },
  legionella: {
    title: cautionTitles.legionella,
    figure: 'store_top_C_min',
    says: (C, { temperature }) =>
      `Household water stands in a coil ${C === null ? 'that is only warm' : `that the store keeps only at ${temperature(C)} at times`}; legionella grows between ${temperature(20)} and ${temperature(50)}, fastest from ${temperature(35)} to ${temperature(46)}.`,
    todo: ({ temperature }) =>
      `Keep warm dead ends short, flush after idle days, heat through above ${temperature(60)} at times. A small coil helps and proves nothing.`,
    licensed: true,
  },
  weight: {
    title: cautionTitles.weight,
    figure: 'store_mass_kg',
    says: (kg, { mass }) =>
      `${kg === null ? 'Filled, the store is heavy' : `Filled, water and coils weigh ${mass(kg)}, box and insulation not counted`}; a house floor may not carry it, and boxes burst at corners and middles.`,
    todo: () =>
      'Set it on the ground or have the floor checked, band the box, lay a pan and a drain, lock the lid against children.',
    licensed: true,
  },
  wiring: {
    title: cautionTitles.wiring,
    figure: null,
    says: (W, { electricity }) =>
      `Pumps${W === null ? '' : ` of ${electricity(W)}`}, and whatever else takes or makes electricity here, stand beside open water.`,
    todo: () =>
      'Fuse at the battery, cable for the starting current, ground-fault protection on mains voltage, drip loops, no joint above the water, any generator isolated from any other supply.',
    licensed: true,
  },
  estimate_only: {
    title: cautionTitles.estimate_only,
    figure: null,
    says: (filled, { count }) =>
      `These figures come from ${filled === null ? 'assumptions and what was entered' : `what was entered and ${count(filled)} assumptions`}; no inspection stands behind them.`,
    todo: () => 'Measure what the doubts hang on; build to local code.',
    licensed: true,
  },
  stagnation: {
    title: cautionTitles.stagnation,
    figure: 'collector_C_max',
    says: (C, { temperature }) =>
      `${C === null ? 'The collector gets' : `The collector reaches ${temperature(C)}`}${C === null ? ' far hotter than the store' : ''}; shut-in liquid flashes to steam, and glycol turns acid.`,
    todo: () =>
      'Leave the loop a relief and room to expand, pipe and insulate it for the heat, cover it when away.',
    licensed: true,
  },
  level_low: {
    title: cautionTitles.level_low,
    figure: 'level_m_end',
    says: (m, { length }) =>
      `${m === null ? 'The level falls' : `Water stands at ${length(m)} at the end`}; a coil above the water heats nothing.`,
    todo: () => 'Make up water, seal the lid, or fit a float valve; look for a leak behind the insulation.',
  },
  runs_dry: {
    title: cautionTitles.runs_dry,
    figure: 'dry_s',
    says: (s, { time, count }) =>
      `Nobody makes up the water that leaves${s === null ? ': it' : `: after ${time(s)}, on day ${count(Math.floor(s / DAY_S) + 1)} of the run, it`} no longer covers half of a coil; bare tubes heat nothing, and one that comes to stand in steam or dry beside a hot engine may crack.`,
    todo: () =>
      'Mark the level and look weekly, fit a float valve, seal the lid; look for a leak behind the insulation.',
  },
  pump_at_limit: {
    title: cautionTitles.pump_at_limit,
    figure: 'pump_at_limit_s',
    says: (s, { time }) =>
      `The household pump gives all it can${s === null ? '' : ` for ${time(s)}`} and the tap gets less than wanted.`,
    todo: () => 'Use wider tube, rolls in parallel, a thriftier shower head, or a stronger pump.',
  },
  tap_pressure_low: {
    title: cautionTitles.tap_pressure_low,
    figure: 'tap_pressure_Pa_min',
    says: (Pa, { pressure }) =>
      `${Pa === null ? 'Little pressure' : `Only ${pressure(Pa)}`} is left at the tap; heaters and mixing valves want ${pressure(137895)} or more.`,
    todo: () => 'Put the rolls in parallel, use wider tube, shorten the pipe, or lower the tap.',
  },
  tube_speed: {
    title: cautionTitles.tube_speed,
    figure: 'tube_speed_m_s_max',
    says: (m_s, { speed }) =>
      `Water runs ${m_s === null ? 'faster than copper stands' : `at ${speed(m_s)}`} through the tube; copper wears away above ${speed(1.524)} hot, ${speed(2.4384)} cold.`,
    todo: () => 'Put rolls in parallel or use wider tube.',
  },
  short_cycling: {
    title: cautionTitles.short_cycling,
    figure: 'engine_starts',
    says: (times, { count }) =>
      `It starts ${times === null ? 'very often' : `${count(times)} times`}; each start wears engine, pump and switch.`,
    todo: () => 'Widen the dead band between on and off, or run longer and less often.',
  },
  back_feed: {
    title: cautionTitles.back_feed,
    figure: null,
    says: () =>
      'A head shut off behind an open mixer lets hot and cold cross over, and the next tap opened runs pure hot.',
    todo: () => 'Fit check valves on both legs of the mixer; shut off ahead of it, not at the head.',
    licensed: true,
  },
  altitude_output: {
    title: cautionTitles.altitude_output,
    figure: 'electricity_J',
    // The sentence quotes the most it can give, in watts, beside the electricity it made.
    says: (W, { electricity }) =>
      `At this height the engine gives ${W === null ? 'less than its plate says' : `at most ${electricity(W)}, less than asked`}.`,
    todo: () => 'Plan loads, and the heat they bring, on that.',
  },
  faults_played: {
    title: cautionTitles.faults_played,
    figure: null,
    says: () => 'The run plays failures that stand under “run”, so its figures are not those of usual days.',
    todo: () => 'Take the list of faults out of the run for the usual days.',
  },
  weather_generated: {
    title: cautionTitles.weather_generated,
    figure: null,
    says: () =>
      'The weather is a year made up from monthly means: its cloudy runs are likely ones, on no particular date.',
    todo: () => 'Try other seeds, or give a weather file of the nearest station.',
  },
} as const satisfies Record<CautionKey, CautionWords>;

/** A caution in words. */
export interface CautionSaid {
  title: string;
  says: string;
  todo: string;
  licensed: string | null;
}

/** A caution's words with its number in them; a key without words is shown by its bare name. */
export function sayCaution(caution: Caution, speak: Speak): CautionSaid {
  const { key, part, figure, value } = caution;
  if (!isCaution(key)) return { title: key, says: `${part}.`, todo: '', licensed: null };
  const words: CautionWords = cautionWords[key];
  // A number that belongs to another figure than the sentence quotes would be misread.
  const quoted = figure === undefined || words.figure === null || figure === words.figure;
  return {
    title: words.title,
    says: words.says(quoted && value !== undefined ? value : null, speak),
    todo: words.todo(speak),
    licensed: words.licensed ? licensedWords : null,
  };
}
