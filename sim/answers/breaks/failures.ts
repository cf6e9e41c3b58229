/** What can fail, in the order in which it is told, and whether a plant has what fails. */
import type { PlantDescription } from '../../parts/description.ts';
import { tubeRating } from '../../physics/trapped.ts';

/** The night that is tried where it freezes at all [C]. */
export const NIGHT_C = -30;

export const FAILURES = [
  'pump',
  'away',
  'trapped',
  'mixing',
  'off',
  'power',
  'night',
  'weak',
  'pipe',
  'cistern',
  'lid',
  'sun_valve',
  'engine_valve',
] as const;
export type Failure = (typeof FAILURES)[number];

/** Why a failure cannot happen to a plant: keys of words. */
export type NotApplying =
  | 'no_collector'
  | 'drains_back'
  | 'no_engine'
  | 'no_household'
  | 'nobody_draws'
  | 'nothing_to_stop'
  | 'no_frost'
  | 'no_metal_coil'
  | 'no_mixing_valve'
  | 'no_cistern'
  | 'no_glycol'
  | 'lid_open'
  | 'no_check_valve';

/** Why a failure does not apply, or null where it does. */
export function whyNot(failure: Failure, plant: PlantDescription): NotApplying | null {
  const { collector, engine, taps, store, supply } = plant;
  const frost = freezes(plant) ? null : 'no_frost';
  switch (failure) {
    case 'pump':
    case 'away':
      return collector ? null : 'no_collector';
    case 'trapped':
      return shutCoils(plant).length > 0 ? null : 'no_metal_coil';
    case 'mixing':
      if (!taps) return 'no_household';
      if (taps.mixing_valve_C === null) return 'no_mixing_valve';
      return taps.draws.length > 0 ? null : 'nobody_draws';
    case 'off':
      return engine ? null : 'no_engine';
    case 'power':
      return taps || collector || engine ? null : 'nothing_to_stop';
    case 'night':
      return !collector ? 'no_collector' : collector.loop === 'drain-back' ? 'drains_back' : frost;
    case 'weak':
      if (collector?.loop === 'drain-back') return 'drains_back';
      return !collector ? 'no_collector' : collector.fluid.kind === 'water' ? 'no_glycol' : frost;
    case 'pipe':
      return taps ? frost : 'no_household';
    case 'cistern':
      return supply.cold.kind === 'cistern' ? frost : 'no_cistern';
    case 'lid':
      return store.lid === 'open' ? 'lid_open' : null;
    case 'sun_valve':
      if (!collector) return 'no_collector';
      return collector.loop === 'drain-back'
        ? 'drains_back'
        : collector.check_valve
          ? null
          : 'no_check_valve';
    case 'engine_valve':
      return !engine ? 'no_engine' : engine.standby_loss_W_K > 0 ? 'no_check_valve' : null;
  }
}

/** Whether the weather has frost in some hour of the year. */
function freezes({ weather }: PlantDescription): boolean {
  return weather.air_C.some((t_C) => t_C < 0);
}

/** Coils that a user can shut off while the store is hot, of tube whose strength is known; the household's first. */
export function shutCoils({ coils, taps, engine, collector }: PlantDescription) {
  const users = [taps, engine, collector?.loop === 'filled' ? collector : null];
  return users.flatMap((user) => {
    const coil = coils.find(({ name }) => name === user?.coil);
    if (!user || !coil || !tubeRating(coil.tube)) return [];
    const fluid =
      'coolant' in user
        ? user.coolant
        : 'fluid' in user
          ? user.fluid
          : ({ kind: 'water', mass_share: 0 } as const);
    return [{ coil, fluid, household: user === taps }];
  });
}
