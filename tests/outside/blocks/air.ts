import {
  carrierEvaporation,
  evaporativeHeat,
  STILL_WATER_SHARE,
  shahEvaporation,
} from '../../../sim/physics/evaporation.ts';
import {
  ATMOSPHERE_PA,
  airSaturationPressure,
  dewPoint,
  humidityRatio,
  moistAirEnthalpy,
  wetBulb,
} from '../../../sim/physics/moist-air.ts';
import { waterLatentHeat } from '../../../sim/physics/water.ts';
import { type Block, type Check, input } from '../checks.ts';

/** Moist air, and evaporation from an open surface into it. */
export const air: Block = {
  name: 'air',
  atLeast: 73,
  answers: {
    'air.': (check) => {
      const t = input(check, 'T_C');
      const vapour = input(check, 'RH') * airSaturationPressure(t);
      const w = humidityRatio(vapour, ATMOSPHERE_PA);
      return { W: w, Tdp: dewPoint(vapour), Twb: wetBulb(t, w, ATMOSPHERE_PA), pw_Pa: vapour };
    },
    'air.sat.': (check) => {
      const t = input(check, 'T_C');
      const w = humidityRatio(airSaturationPressure(t), input(check, 'P'));
      return { pws_Pa: airSaturationPressure(t), Ws: w, h_J_kg: moistAirEnthalpy(t, w) };
    },
    'evap.': evaporation,
  },
};

function evaporation(check: Check) {
  const water_C = input(check, 'Tw_C');
  const above = {
    air_C: input(check, 'Ta_C'),
    relative_humidity: input(check, 'RH'),
    pressure_Pa: ATMOSPHERE_PA,
  };
  const carrier = carrierEvaporation(
    airSaturationPressure(water_C),
    above.relative_humidity * airSaturationPressure(above.air_C),
    input(check, 'V'),
    waterLatentHeat(water_C),
  );
  const shah = shahEvaporation(water_C, above);
  return {
    ashrae_kg_m2h: 3600 * carrier,
    slj_kg_m2h: 3600 * STILL_WATER_SHARE * carrier,
    shah_kg_m2h: 3600 * shah,
    ashrae_W_m2: evaporativeHeat(carrier, water_C),
    shah_W_m2: evaporativeHeat(shah, water_C),
  };
}
