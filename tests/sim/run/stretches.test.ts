import { describe, expect, it } from 'vitest';
import demo from '../../../scenarios/demo.json' with { type: 'json' };
import { detailOf, type Result, readScenario, simulate } from '../../../sim/index.ts';

const read = readScenario(demo);
if (!read.ok) throw new Error('the demo does not read');
const plant = { ...read.plant, run: { ...read.plant.run, days: 3, interval_s: 600 } };

describe('the channels of a run', () => {
  const result = simulate(plant);
  const energy_J = (channel: string, { series }: Result = result) =>
    series.channels[channel].reduce((sum, power_W) => sum + power_W * series.interval_s, 0);
  const path_J = (...keys: string[]) =>
    result.ledger.paths.filter(({ key }) => keys.includes(key)).reduce((sum, path) => sum + path.energy_J, 0);

  it.each([
    ['fuel_W', ['fuel_to_coolant']],
    ['engine_loss_W', ['block_to_air', 'engine_pipes_to_air']],
    ['radiator_W', ['radiator_to_air']],
    ['absorbed_W', ['sun_to_collector']],
    ['collector_loss_W', ['collector_pipes_to_air']],
    ['standby_W', ['standby_to_engine']],
    ['night_W', ['night_to_collector']],
    ['loss_W', ['store_conducted', 'store_surface_air']],
    ['evaporation_W', ['store_lid_vapour', 'store_boiled']],
    ['make_up_W', ['make_up_water']],
    ['tap_pipe_W', ['tap_pipe_to_air']],
    ['backup_W', ['backup_to_water']],
  ])('%s add up to the ledger', (channel, keys) => {
    const wanted_J = path_J(...keys);
    expect(Math.abs(energy_J(channel) - wanted_J)).toBeLessThanOrEqual(1e-5 * Math.abs(wanted_J) + 1);
  });

  it('give the taps what they got beyond the cold water, and the stores what they took up', () => {
    const { throughput_J, stored_change_J } = result.ledger;
    const taps_J = path_J('household_to_taps') - path_J('household_cold_in');
    expect(Math.abs(energy_J('taps_W') - taps_J)).toBeLessThan(1e-5 * throughput_J);
    expect(Math.abs(energy_J('stored_W') - stored_change_J)).toBeLessThan(1e-5 * throughput_J);
  });

  it('balance over any stretch, not only over the whole', () => {
    const { channels } = result.series;
    const sum = (i: number, ...keys: string[]) => keys.reduce((all, key) => all + channels[key][i], 0);
    for (const first of [1, 40, 150, 300]) {
      let rest = 0;
      let passed = 0;
      for (let i = first; i < first + 60; i++) {
        const ins = sum(i, 'fuel_W', 'absorbed_W', 'backup_W', 'make_up_W');
        const outs = sum(i, 'radiator_W', 'engine_loss_W', 'collector_loss_W', 'loss_W', 'evaporation_W');
        rest += ins - outs - sum(i, 'taps_W', 'tap_pipe_W', 'stored_W');
        passed += Math.abs(ins) + Math.abs(outs);
      }
      expect(Math.abs(rest), `from sample ${first}`).toBeLessThan(1e-3 * passed);
    }
  });
});

describe('a stretch in detail', () => {
  const fine = simulate({ ...plant, run: { ...plant.run, interval_s: 10 } }).series;
  const from_s = 86_400 + 6.5 * 3600;
  const detail = detailOf(plant, { from_s, to_s: from_s + 7200, interval_s: 10 });

  it('reaches from its start to its end', () => {
    expect(detail.time_s[0]).toBe(from_s);
    expect(detail.time_s).toHaveLength(721);
    expect(detail.layer_C).toHaveLength(721 * detail.layers);
  });

  it('is the same run, to the bit', () => {
    const first = from_s / 10;
    expect(detail.layer_C).toEqual(fine.layer_C.slice(first * fine.layers, (first + 721) * fine.layers));
    expect(Object.keys(detail.channels)).toEqual(Object.keys(fine.channels));
    for (const [key, values] of Object.entries(detail.channels)) {
      expect(values, key).toEqual(fine.channels[key].slice(first, first + 721));
    }
  });

  it('may begin at the start and end with the run', () => {
    expect(detailOf(plant, { from_s: 0, to_s: 60, interval_s: 10 }).time_s).toHaveLength(7);
    const end = detailOf(plant, { from_s: 3 * 86_400 - 60, to_s: 3 * 86_400, interval_s: 10 });
    expect(end.time_s[end.time_s.length - 1]).toBe(3 * 86_400);
  });
});
