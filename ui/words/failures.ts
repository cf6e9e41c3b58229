/** Words of each failure: what happens, when, how hot, how much, what protects; and why one cannot happen. */
import type { Answer, Banded } from '../../sim/index.ts';
import { cautionTitles } from './caution-titles.ts';
import type { Say } from './say.ts';

type Facts = Answer['facts'];

interface FailureWords {
  title: string;
  /** In a clause, where it is among the worst for people. */
  brief?: (facts: Facts, say: Say) => string;
  /** Both are empty where its runs were left undone. */
  story: (facts: Facts, say: Say, coil: string) => string;
  protects: string;
  /** Title of the caution that goes with it. */
  mind?: string;
}

/** A sentence of facts that must be there; empty where one is missing. */
function told<K extends string>(
  facts: Facts,
  keys: readonly K[],
  words: (of: Record<K, Banded>) => string,
): string {
  return keys.every((key) => facts[key]) ? words(facts as Record<K, Banded>) : '';
}

const degrees = (say: Say, fact: Banded) => say.quantity(fact.value, 'temperature', 3);
/** Tops of the store no further apart are one [K]. */
const ALIKE_K = 0.5;
/** Air of the cold night [C]. */
const NIGHT_C = -30;
const night = (say: Say) => say.quantity(NIGHT_C, 'temperature', 2);

/** A second or less is all there is above the hottest that was measured. */
function burnWords(facts: Facts, say: Say): string {
  const { mixing_burn_s } = facts;
  if (!mixing_burn_s) return 'which takes longer than five minutes to burn deeply';
  return mixing_burn_s.value <= 1
    ? 'which burns deeply within a second'
    : `which burns deeply within ${say.banded(mixing_burn_s)}`;
}

export const failureWords: Readonly<Record<string, FailureWords>> = {
  pump: {
    title: 'Loop pump dead in the sun',
    mind: cautionTitles.stagnation,
    story: (facts, say) =>
      told(facts, ['pump_collector_C'], ({ pump_collector_C }) => {
        const { pump_steam_s: steam } = facts;
        const when = !steam
          ? 'never boils its liquid but gets'
          : steam.value === 0
            ? 'stood above the boiling point of its liquid before, held off by the high limit, and gets'
            : `passes the boiling point of its liquid within ${say.banded(steam)} and gets`;
        return `Dead from noon of the sunniest day, the collector ${when} to ${say.banded(pump_collector_C)}.`;
      }),
    protects:
      'A relief and room to expand on the loop, pipes and insulation that stand the heat, a cover; or a loop that drains back.',
  },
  away: {
    title: 'Nobody home for two weeks in summer',
    mind: cautionTitles.boil_over,
    brief: (facts, say) =>
      told(facts, ['away_top_C'], ({ away_top_C }) => {
        const { limitless_boils_s: boils } = facts;
        const boiling = boils ? ` and boils after ${say.banded(boils)} should the high limit fail` : '';
        return `With nobody home in summer the top of the store gets to ${say.banded(away_top_C)}${boiling}`;
      }),
    story: (facts, say) =>
      told(facts, ['away_top_C', 'limitless_top_C'], ({ away_top_C, limitless_top_C }) => {
        const { away_plain_C: plain, away_limit_s: limit } = facts;
        const same = Math.abs(limitless_top_C.value - away_top_C.value) < ALIKE_K;
        const { limitless_boils_s: boils, limitless_boiled_kg: kg } = facts;
        const usual = plain ? ` (${degrees(say, plain)} with everybody home and the engine running)` : '';
        const held = limit
          ? `; the high limit first stops the pump after ${say.banded(limit)}`
          : '; the high limit is not reached';
        const boiling =
          boils && kg && kg.value > 0
            ? `: it boils after ${say.banded(boils)}, and ${say.banded(kg)} of water go up in steam`
            : '';
        const failed = same ? '' : ` Should the limit fail too, to ${say.banded(limitless_top_C)}${boiling}.`;
        return `With nobody drawing and the engine standing, the top of the store gets to ${say.banded(away_top_C)}${usual}${held}.${failed}`;
      }),
    protects:
      'A high limit well below boiling and below what the liner stands, a cover over the collector, an overflow to a drain, a float; run every tap hot before anybody showers again.',
  },
  trapped: {
    title: 'A coil shut off while the store is hot',
    mind: cautionTitles.trapped_coil,
    brief: (facts, say) =>
      told(facts, ['trapped_rated_K'], ({ trapped_rated_K }) => {
        return `a coil shut at both ends passes its tube’s rating when it warms by ${say.banded(trapped_rated_K)}`;
      }),
    story: (facts, say, coil) =>
      told(facts, ['trapped_per_K_Pa', 'trapped_rated_Pa'], ({ trapped_per_K_Pa, trapped_rated_Pa }) => {
        const { trapped_rated_K: rated, trapped_burst_K: burst, trapped_store_C: store } = facts;
        const us = say.units !== 'SI';
        const per = say.quantity(trapped_per_K_Pa.value / (us ? 1.8 : 1), 'pressure', 2);
        const past = rated
          ? ` Warmed by ${say.banded(rated)} from when it was shut, it passes the ${say.quantity(trapped_rated_Pa.value, 'pressure', 2)} its tube is rated for`
          : ' It does not reach what its tube is rated for';
        const torn = burst ? ` and, by ${say.banded(burst)}, what would tear it` : '';
        const loop = facts.trapped_loop_K
          ? ` A loop shut while it is hot passes its own with ${say.banded(facts.trapped_loop_K)} more.`
          : '';
        const hot = store ? `; the store around it gets to ${degrees(say, store)}` : '';
        return `Shut at both ends, the coil “${coil}” gains ${per} with every ${us ? '°F' : 'K'} near ${say.quantity(60, 'temperature', 2)}.${past}${torn}${hot}.${loop} Soft copper swells before it tears; joints, valves and the pump give way before that.`;
      }),
    protects:
      'A relief valve on every coil with no valve between, piped to a safe place, and room to expand.',
  },
  mixing: {
    title: 'Mixing valve stuck on hot',
    mind: cautionTitles.scald,
    story: (facts, say) =>
      told(facts, ['mixing_tap_C'], ({ mixing_tap_C }) => {
        const plain = facts.mixing_plain_C ? ` instead of ${degrees(say, facts.mixing_plain_C)}` : '';
        return `In summer the tap then gives water of up to ${say.banded(mixing_tap_C)}${plain}, ${burnWords(facts, say)}.`;
      }),
    protects:
      'A thermometer behind the valve and a test at the tap each month; a second limit at the shower for children and the old.',
  },
  off: {
    title: 'Engine off for three days in winter',
    brief: (facts, say) =>
      told(facts, ['off_mean_C'], ({ off_mean_C }) => {
        return `three winter days without the engine leave the store at ${say.banded(off_mean_C)}`;
      }),
    story: (facts, say) =>
      told(facts, ['off_mean_C', 'plain_mean_C'], ({ off_mean_C, plain_mean_C }) => {
        const { off_first_s: first, off_cold: cold } = facts;
        const draws = first
          ? `; the first draw runs cold after ${say.banded(first)}${cold ? `, and ${say.banded(cold)} showers in those days` : ''}`
          : '; no draw runs cold';
        return `It leaves the store at ${say.banded(off_mean_C)} instead of ${degrees(say, plain_mean_C)}${draws}.`;
      }),
    protects: 'A backup heater or a stove, shorter showers, and spare parts and fuel at home.',
  },
  power: {
    title: 'No power for three days in winter',
    mind: cautionTitles.wiring,
    story: (facts, say) =>
      told(facts, ['power_mean_C'], ({ power_mean_C }) => {
        const { power_missed: missed, power_collector_C: sun } = facts;
        const showers = missed && missed.value > 0 ? `; ${say.value(missed)} showers are not to be had` : '';
        const steam = sun ? `; the collector gets to ${say.banded(sun)} in the winter sun` : '';
        return `Pumps and engine stand, nothing comes out of a tap and the store falls to ${say.banded(power_mean_C)}${showers}${steam}.`;
      }),
    protects:
      'A reserve in the battery for the loop’s pump, or a panel that drives it; a bucket; a way to drain what can freeze.',
  },
  night: {
    title: 'A very cold night',
    mind: cautionTitles.freezing_loop,
    story: (facts, say) =>
      told(facts, ['night_collector_C', 'night_freezes_C'], ({ night_collector_C, night_freezes_C }) => {
        const { night_freezing_s: time } = facts;
        const freezes =
          time && time.value > 0
            ? `, below which it then is for ${say.banded(time)}`
            : ', which that night does not reach';
        return `In air of ${night(say)} the collector falls to ${say.banded(night_collector_C)}. Its liquid begins to freeze at ${degrees(say, night_freezes_C)}${freezes}.`;
      }),
    protects: 'Glycol tested each autumn, or a loop that drains back with no low spot.',
  },
  weak: {
    title: 'Glycol thinned to half',
    mind: cautionTitles.freezing_loop,
    story: (facts, say) =>
      told(facts, ['weak_freezes_C', 'night_freezes_C'], ({ weak_freezes_C, night_freezes_C }) => {
        const { weak_freezing_s: time } = facts;
        const how =
          time && time.value > 0
            ? `; through such a night and the next it is below that for ${say.banded(time)}`
            : '';
        return `Topped up with water until half is left, the loop begins to freeze at ${degrees(say, weak_freezes_C)} instead of ${degrees(say, night_freezes_C)}${how}.`;
      }),
    protects: 'Top up with the mix and not with water; a few drops on a refractometer tell.',
  },
  pipe: {
    title: 'Still water in a pipe in the cold',
    mind: 'Ice splits pipes',
    story: (facts, say) =>
      told(facts, ['pipe_ice_s', 'pipe_solid_s'], ({ pipe_ice_s, pipe_solid_s }) => {
        return `Were the pipe to the taps in air of ${night(say)}, its cold water would begin to freeze after ${say.banded(pipe_ice_s)} and be ice throughout after ${say.banded(pipe_solid_s)}.`;
      }),
    protects: 'Keep it where it is warm, slope it to a drain, leave it empty when away.',
  },
  cistern: {
    title: 'Cistern without its shelter in the cold',
    mind: cautionTitles.freezing_cistern,
    story: (facts, say) =>
      told(facts, ['cistern_ice_s'], ({ cistern_ice_s }) => {
        const { cistern_frozen_s: frozen } = facts;
        const half = frozen
          ? `, and half of it is ice after ${say.banded(frozen)}`
          : '; half of it is not ice within a week';
        return `In air of ${night(say)} its water is at freezing after ${say.banded(cistern_ice_s)}${half}.`;
      }),
    protects: 'Shelter and insulation; its pump and pipe freeze long before.',
  },
  lid: {
    title: 'Lid left open',
    mind: 'Open hot water',
    brief: (facts, say) =>
      told(facts, ['lid_more_K'], ({ lid_more_K }) => {
        return `an open lid costs ${say.banded(lid_more_K)} a day`;
      }),
    story: (facts, say) =>
      told(facts, ['lid_more_K', 'lid_vapour_kg'], ({ lid_more_K, lid_vapour_kg }) => {
        return `A day without it costs ${say.banded(lid_more_K)} more, and ${say.banded(lid_vapour_kg)} of water as vapour.`;
      }),
    protects: 'A lid that is heavy, latched and locked against children, and a look at the level.',
  },
  sun_valve: {
    title: 'Check valve of the collector stuck open',
    mind: 'Hot pipes',
    story: (facts, say) =>
      told(facts, ['sun_valve_more_K'], ({ sun_valve_more_K }) => {
        return `Warm liquid rises to the cold collector by itself: a still day in winter costs the store ${say.banded(sun_valve_more_K)} more.`;
      }),
    protects: 'Two overnight tests, loop open and loop valved off: their difference is the valve.',
  },
  engine_valve: {
    title: 'Check valve of the engine stuck open',
    mind: 'Hot pipes, hot engine',
    story: (facts, say) =>
      told(facts, ['engine_valve_more_K'], ({ engine_valve_more_K }) => {
        return `The store warms the standing engine: a still day in winter costs it ${say.banded(engine_valve_more_K)} more.`;
      }),
    protects: 'Feel the hoses in the morning: warm ones tell. A drop in the pipes hinders it as well.',
  },
};

export const notApplyingWords: Readonly<Record<string, string>> = {
  no_collector: 'there is no collector',
  drains_back: 'the loop stands empty when its pump does',
  no_engine: 'there is no engine',
  no_household: 'nobody draws water',
  nobody_draws: 'no draw is in the file',
  nothing_to_stop: 'nothing in it needs power',
  no_frost: 'the weather has no frost',
  no_metal_coil: 'no coil in use is of metal; plastic stretches instead, and is not worked out here',
  no_mixing_valve: 'none is fitted: it is always as if it had failed',
  no_cistern: 'the cold water comes from no cistern',
  no_glycol: 'there is none in the loop',
  lid_open: 'it already is',
  no_check_valve: 'none is fitted: every run has that loss',
};
