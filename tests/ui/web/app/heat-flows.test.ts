import { describe, expect, it } from 'vitest';
import demo from '../../../../scenarios/demo.json' with { type: 'json' };
import { type Ledger, readScenario, type Series, simulate } from '../../../../sim/index.ts';
import { ledgerLines } from '../../../../ui/terminal/ledger-table.ts';
import { heatBalance } from '../../../../ui/web/app/heat-flows.ts';
import { fixed } from '../../../../ui/words/index.ts';

const hour_s = 3600;

function madeSeries(powers_W: Record<string, number[]>): Series {
  const count = Math.max(...Object.values(powers_W).map((values) => values.length));
  return {
    interval_s: hour_s,
    time_s: Float64Array.from({ length: count }, (_, i) => i * hour_s),
    layers: 1,
    height_m: Float64Array.of(0.5),
    layer_C: new Float32Array(count),
    channels: Object.fromEntries(
      Object.entries(powers_W).map(([key, values]) => [key, Float32Array.from(values)]),
    ),
  };
}

/** Flows by their ends, in watt hours. */
function flowsOf(series: Series, from_s: number, to_s: number): Record<string, number> {
  const { flows } = heatBalance(series, { from_s, to_s });
  return Object.fromEntries(flows.map(({ from, to, energy_J }) => [`${from} ${to}`, energy_J / hour_s]));
}

describe('heatBalance', () => {
  const series = madeSeries({
    fuel_W: [0, 100, 50],
    engine_W: [0, 60, 40],
    engine_loss_W: [0, 30, 10],
    loss_W: [0, 5, 5],
    stored_W: [0, 65, 35],
  });

  it('follows the heat through the parts, and what a part kept', () => {
    expect(flowsOf(series, 0, 2 * hour_s)).toEqual({
      'fuel engine': 150,
      'engine store': 100,
      'engine engine_air': 40,
      'store walls': 10,
      'engine kept': 10,
      'store kept': 90,
    });
  });

  it('counts the samples that close within the span', () => {
    expect(flowsOf(series, hour_s, 2 * hour_s)).toMatchObject({ 'fuel engine': 50, 'store kept': 35 });
    expect(heatBalance(series, { from_s: 0, to_s: hour_s })).toMatchObject({
      in_J: 100 * hour_s,
      out_J: 35 * hour_s,
      stored_J: 65 * hour_s,
      residual_J: 0,
      spent_J: 100 * hour_s,
    });
  });

  it('lets a cooling part give up what it held', () => {
    const cooling = madeSeries({ loss_W: [0, 8], stored_W: [0, -8] });
    expect(flowsOf(cooling, 0, hour_s)).toEqual({ 'store walls': 8, 'held store': 8 });
    expect(heatBalance(cooling, { from_s: 0, to_s: hour_s }).spent_J).toBe(8 * hour_s);
  });

  it('swaps the ends of what ran backwards', () => {
    const backwards = madeSeries({ collector_W: [0, 2], night_W: [0, 6], loss_W: [0, -3], stored_W: [0, 3] });
    const flows = flowsOf(backwards, 0, hour_s);
    expect(flows).toMatchObject({ 'store creeping': 4, 'crept collector': 4, 'around store': 3 });
    expect(Object.values(flows).every((energy_J) => energy_J > 0)).toBe(true);
  });

  it('says what is left over', () => {
    const leaking = madeSeries({ fuel_W: [0, 100], stored_W: [0, 99] });
    expect(heatBalance(leaking, { from_s: 0, to_s: hour_s }).residual_J).toBe(hour_s);
  });
});

describe('the heat of a whole run', () => {
  const read = readScenario(demo);
  if (!read.ok) throw new Error('the demo does not read');
  const { series, ledger, days } = simulate({ ...read.plant, run: { ...read.plant.run, days: 3 } });
  const whole = heatBalance(series, { from_s: 0, to_s: days * 86_400 });
  const path_J = ({ paths }: Ledger, key: string) => paths.find((path) => path.key === key)?.energy_J ?? 0;
  const flow_J = (from: string, to: string) =>
    whole.flows.find((flow) => flow.from === from && flow.to === to)?.energy_J ?? 0;

  it('is the ledger’s', () => {
    const near = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(1e-5 * ledger.throughput_J);
    near(flow_J('fuel', 'engine'), path_J(ledger, 'fuel_to_coolant'));
    near(flow_J('store', 'water'), path_J(ledger, 'household_heat'));
    near(flow_J('store', 'walls'), path_J(ledger, 'store_conducted') + path_J(ledger, 'store_surface_air'));
    near(whole.stored_J, ledger.stored_change_J);
    near(whole.residual_J, 0);
  });

  it('has the totals and shares that the terminal prints', () => {
    const printed = ledgerLines(ledger, { width: 80, unicode: true, colour: false });
    const row = (words: string) => printed.find((line) => line.trim().startsWith(words))?.match(/[\d.]+/g);
    const asPrinted = (energy_J: number) => [
      fixed(energy_J / 3.6e6, 1),
      fixed(energy_J / 1_055_055.85, 1),
      fixed((100 * energy_J) / whole.spent_J, 1),
    ];
    expect(row('All in')).toEqual(asPrinted(whole.in_J));
    expect(row('All out')).toEqual(asPrinted(whole.out_J));
    expect(row('Fuel heat into the coolant')).toEqual(asPrinted(flow_J('fuel', 'engine')));
    expect(row('Hot water to the taps')).toEqual(asPrinted(flow_J('water', 'taps')));
  });

  it('is the sum of any two stretches', () => {
    const at_s = 1.3 * 86_400;
    const parts = [
      { from_s: 0, to_s: at_s },
      { from_s: at_s, to_s: days * 86_400 },
    ].map((span) => heatBalance(series, span));
    expect(parts[0].in_J + parts[1].in_J).toBeCloseTo(whole.in_J, -1);
    expect(parts[0].stored_J + parts[1].stored_J).toBeCloseTo(whole.stored_J, -1);
  });

  it('leaves no place with more in than out', () => {
    for (const place of ['engine', 'collector', 'store', 'water']) {
      const sum = (end: 'from' | 'to') =>
        whole.flows.filter((flow) => flow[end] === place).reduce((all, { energy_J }) => all + energy_J, 0);
      expect(Math.abs(sum('from') - sum('to')), place).toBeLessThan(1e-4 * whole.spent_J);
    }
  });
});
