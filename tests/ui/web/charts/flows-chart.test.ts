import { describe, expect, it } from 'vitest';
import { type Flow, flowsChart } from '../../../../ui/web/charts/flows-chart.ts';

const places = [
  { key: 'fuel', column: 0, rank: 0, name: 'Fuel' },
  { key: 'sun', column: 0, rank: 9, name: 'Sun' },
  { key: 'store', column: 1, rank: 4, name: 'Store' },
  { key: 'taps', column: 2, rank: 3, name: 'Taps & more' },
  { key: 'walls', column: 2, rank: 6, name: 'Walls' },
];
const flow = (from: string, to: string, amount: number): Flow => ({
  from,
  to,
  amount,
  kind: from,
  words: `${from} to ${to}`,
});
const options = { width: 310, right: 100, thick: 100, amountWords: (amount: number) => `${amount} kWh` };
const flows = [
  flow('fuel', 'store', 30),
  flow('sun', 'store', 20),
  flow('store', 'taps', 40),
  flow('store', 'walls', 10),
];
const { drawing, height } = flowsChart(places, flows, options);
const barOf = (key: string) => {
  const found = new RegExp(`class="place ${key}" x="([^"]+)" y="([^"]+)" width="10" height="([^"]+)"`).exec(
    drawing,
  );
  const [x, y, tall] = (found ?? []).slice(1).map(Number);
  return { x, y, tall };
};

describe('flowsChart', () => {
  it('is, as text', () => {
    expect(drawing.replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it('gives every place and flow its width to scale', () => {
    // 50 kWh on 100 px.
    expect(['fuel', 'sun', 'store', 'taps', 'walls'].map((key) => barOf(key).tall)).toEqual([
      60, 40, 100, 80, 20,
    ]);
  });

  it('stands the places in their columns, the last with room for its words', () => {
    expect(['fuel', 'store', 'taps'].map((key) => barOf(key).x)).toEqual([0, 100, 200]);
  });

  it('runs the greatest flow of a place level', () => {
    expect(barOf('store').y).toBe(barOf('taps').y);
    expect(barOf('fuel').y).toBe(barOf('store').y);
    expect(drawing).toContain(`class="flow store" d="M110,${barOf('store').y}C155,${barOf('store').y} 155,`);
  });

  it('leaves places of a column apart and holds all of them', () => {
    expect(barOf('sun').y).toBeGreaterThan(barOf('fuel').y + barOf('fuel').tall);
    expect(barOf('walls').y + 34).toBeLessThanOrEqual(height);
  });

  it('names places with their amounts, and leaves out those that nothing passes', () => {
    expect(drawing).toContain('>Taps &amp; more</text>');
    expect(drawing).toContain('>40 kWh</text>');
    expect(flowsChart(places, [flow('fuel', 'store', 30)], options).drawing).not.toContain('Sun');
  });

  it('says each flow when it is pointed at', () => {
    expect(drawing).toContain('<title>sun to store</title>');
  });

  it('shows even a hair of a flow', () => {
    const thin = flowsChart(places, [...flows, flow('store', 'walls', 0.001)], options).drawing;
    expect(thin.match(/class="flow store"/g)).toHaveLength(3);
    expect(thin).not.toContain('NaN');
  });

  it('draws nothing of no flows', () => {
    expect(flowsChart(places, [], options).drawing).toBe('');
  });
});
