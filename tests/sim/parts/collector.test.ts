/** The collector part: its rated curve, its pipes, and the way back at night. */
import { describe, expect, it } from 'vitest';
import type { Collector } from '../../../sim/parts/collector.ts';
import type { CollectorDescription } from '../../../sim/parts/description.ts';
import { placeOf } from '../../../sim/parts/layout.ts';
import { Plant } from '../../../sim/plant/plant.ts';
import { simulate } from '../../../sim/run/simulation.ts';
import { coilOf, collectorOf, plantOf, roomAt, storeOf } from '../support/plant.ts';
import { sunnyWeather } from '../support/weather.ts';

const NOON = 12.5 * 3600;
const coils = [coilOf('solar', { roll_length_m: 15, fed_from: 'top' })];

function plantWith(over: Partial<CollectorDescription> = {}, store_C = 40, weather = sunnyWeather(5)) {
  const plant = new Plant(
    plantOf({
      weather,
      coils,
      collector: collectorOf('solar', over),
      run: { start: { bottom_C: store_C, top_C: store_C } },
    }),
  );
  const y = plant.layout.initial();
  const out = y.map(() => 0);
  const collector = plant.collector as Collector;
  /** Place of the outlet: the state the collector reads. */
  const place = y.findIndex((_, i) => plant.layout.nameOf(i) === 'panels.outlet');
  const at = (outlet_C: number, t = NOON) => {
    y[place] = outlet_C;
    plant.rates(t, y, out);
    return (key: keyof typeof placeOf) => out[placeOf[key]];
  };
  return { plant, y, out, collector, place, at };
}

describe('a collector that stands', () => {
  it('gains eta0 of its light at air temperature, and loses by its rated quadratic above it', () => {
    const { at } = plantWith();
    const full = at(5)('sun_to_collector');
    expect(full).toBeGreaterThan(500);
    for (const lead of [20, 60, 100]) {
      // ISO 9806: A (a1 dT + a2 dT^2), 4 m2 of 3.5 W/(m2 K) and 0.012 W/(m2 K2).
      const lost = 4 * (3.5 * lead + 0.012 * lead * lead);
      expect(at(5 + lead)('sun_to_collector')).toBeCloseTo(full - lost, 6);
    }
  });

  it('warms by its gain over its capacity', () => {
    const { at, out, place } = plantWith();
    const gain = at(30)('sun_to_collector');
    expect(out[place]).toBeCloseTo(gain / (4 * 8000), 12);
  });

  it('takes in twice the light on twice the area, and nothing at night', () => {
    const one = plantWith().at(5)('sun_to_collector');
    expect(plantWith({ area_m2: 8 }).at(5)('sun_to_collector')).toBeCloseTo(2 * one, 6);
    expect(plantWith().at(5, 3600)('sun_to_collector')).toBe(0);
  });

  it('takes in less behind snow and behind a hill', () => {
    const one = plantWith().at(5)('sun_to_collector');
    const snow = plantWith({ shade_by_month: new Array(12).fill(0.4) }).at(5)('sun_to_collector');
    expect(snow).toBeCloseTo(0.6 * one, 6);
    const horizon = [
      { azimuth_rad: 0, elevation_rad: 1 },
      { azimuth_rad: 6, elevation_rad: 1 },
    ];
    expect(plantWith({ horizon }).at(5)('sun_to_collector')).toBeLessThan(0.5 * one);
  });

  it('without a check valve draws heat from a warmer store, and gets all of it', () => {
    const { at } = plantWith({ check_valve: false, night_loss_W_K: 2 }, 60);
    const read = at(10, 3600);
    expect(read('night_to_collector')).toBeCloseTo(2 * 50, 6);
    expect(at(70, 3600)('night_to_collector')).toBe(0);
  });
});

describe('a collector whose pump runs', () => {
  function pumping(over: Partial<CollectorDescription> = {}, outlet_C = 60) {
    const rig = plantWith(over);
    rig.plant.store.prepare(rig.y);
    rig.collector.start(0, rig.y, rig.plant.store);
    rig.collector.coil.mode = 'steady';
    return { ...rig, read: rig.at(outlet_C) };
  }

  it('gives store and pipes what it gains and gives up', () => {
    const { read, out, place } = pumping();
    const warming = out[place] * 4 * 8000;
    const given = read('collector_to_store') + read('collector_pipes_to_air');
    expect(given).toBeGreaterThan(500);
    expect(read('sun_to_collector') - warming).toBeCloseTo(given, 6);
  });

  it('loses by the mean of inlet and outlet', () => {
    const { read, collector, at } = pumping();
    const mean = (60 + collector.inlet_C) / 2;
    expect(collector.inlet_C).toBeLessThan(59);
    const pumped = read('sun_to_collector');
    collector.pumping = false;
    expect(pumped).toBeCloseTo(at(mean)('sun_to_collector'), 6);
  });

  it('loses on the way by its pipes, half on either side', () => {
    const { read, collector } = pumping({ pipes: { length_m: 15, conductance_W_mK: 0.4, outdoor_share: 1 } });
    // 3 W/K each way, to air at 5 C, at 55 and about 45 K above it.
    const expected = 3 * (60 - 5) + 3 * (collector.inlet_C - 5);
    expect(read('collector_pipes_to_air') / expected).toBeCloseTo(1, 1);
    expect(
      pumping({ pipes: { length_m: 0, conductance_W_mK: 0, outdoor_share: 0 } }).read(
        'collector_pipes_to_air',
      ),
    ).toBeCloseTo(0, 9);
  });
});

describe('a sealed collector in steady light', () => {
  it('stands at the temperature at which its quadratic loses all it takes in', () => {
    const weather = sunnyWeather(5);
    // An unbroken noon.
    for (let h = 0; h < 8760; h++) {
      if (h % 24 >= 10 && h % 24 < 15) {
        weather.direct_normal_W_m2[h] = 0;
        weather.diffuse_horizontal_W_m2[h] = 500;
      }
    }
    const collector = collectorOf('solar', { high_limit_C: 20, a1_W_m2K: 6, heat_capacity_J_m2K: 1500 });
    const plant = plantOf({
      weather,
      coils,
      collector,
      store: storeOf({ surroundings: roomAt(40) }),
      run: { interval_s: 600, start: { bottom_C: 40, top_C: 40 } },
    });
    const { series } = simulate(plant);
    const i = (13.5 * 3600) / 600;
    const read = plantWith({ a1_W_m2K: 6 }, 40, weather).at(5, 13.5 * 3600);
    const light = read('sun_to_collector') / 4;
    const stagnation = 5 + (-6 + Math.sqrt(36 + 4 * 0.012 * light)) / (2 * 0.012);
    expect(light).toBeGreaterThan(200);
    expect(Math.abs(series.channels.collector_C[i] - stagnation)).toBeLessThan(0.5);
  });
});
