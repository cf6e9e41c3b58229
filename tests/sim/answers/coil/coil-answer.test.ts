import { describe, expect, it } from 'vitest';
import type { Answer, Banded } from '../../../../sim/answers/answer.ts';
import { type BareCoil, bareScenario } from '../../../../sim/answers/coil/bare-scenario.ts';
import { chargingAnswer } from '../../../../sim/answers/coil/charging-answer.ts';
import { coilAnswer } from '../../../../sim/answers/coil/coil-answer.ts';
import { coilOf } from '../../../../sim/answers/coil/coil-of.ts';
import { ShowerBench } from '../../../../sim/answers/coil/shower-bench.ts';
import { edited } from '../../../../sim/answers/edit.ts';
import { householdOf } from '../../../../sim/answers/household.ts';
import { coilFrictionSpread } from '../../../../sim/physics/coil-spread.ts';
import { readScenario, type Scenario } from '../../../../sim/scenario/index.ts';
import { toteScenario } from '../scenarios.ts';

const scenario = toteScenario();
const question = { scenario, context: {} };
const answer = coilAnswer(question);

function plantOf(given: Scenario) {
  const read = readScenario(given);
  if (!read.ok) throw new Error(read.problems[0].path);
  return read.plant;
}

function column({ tables }: Answer, table: string, key: string): unknown[] {
  const { columns, rows } = tables[table];
  return rows.map((row) => row[columns.findIndex((each) => each.key === key)]);
}

const keysOf = (cautions: readonly { key: string }[]) => cautions.map(({ key }) => key);

describe('coilAnswer', () => {
  it('has the bench’s lowest store as its headline, inside its band', () => {
    const plant = plantOf(scenario);
    const shower = plant.taps?.draws[0];
    if (!shower) throw new Error('no shower');
    const { lowest_tank_C } = answer.facts;
    expect(lowest_tank_C.value).toBe(new ShowerBench(plant, shower).lowestTank());
    expect(answer.headline).toBe('lowest_tank_C');
    expect(lowest_tank_C.low).toBeLessThan(lowest_tank_C.value - 1);
    expect(lowest_tank_C.high).toBeGreaterThan(lowest_tank_C.value + 1);
  });

  it('agrees at each lever’s end with the file that says so', () => {
    expect(answer.levers.length).toBeGreaterThan(2);
    for (const { path, low, high } of answer.levers.slice(0, 3)) {
      for (const { text, value } of [low, high]) {
        const varied = edited(scenario, [{ path, value: /^[\d.]+$/.test(text) ? Number(text) : text }]);
        expect(coilAnswer({ scenario: varied, context: {} }).facts.lowest_tank_C.value).toBeCloseTo(value, 6);
      }
    }
  });

  it('asks about the mean the scenario starts with, or about the store it is told', () => {
    expect(answer.facts.tank_C.value).toBeCloseTo((142 - 32) / 1.8, 6);
    const told = coilAnswer({ ...question, tank_C: 80 });
    expect(told.facts.tank_C.value).toBe(80);
    expect(told.facts.outlet_C.value).toBeGreaterThan(answer.facts.outlet_C.value);
    expect(told.facts.lowest_tank_C.value).toBe(answer.facts.lowest_tank_C.value);
  });

  it('asks about a usual store where the scenario starts with cold water', () => {
    const cold = toteScenario({ run: { start: { bottom: '45 F' } } });
    expect(coilAnswer({ scenario: cold, context: {} }).facts.tank_C.value).toBe(60);
  });

  it('says what the coil costs, with the prices’ band, and that they are invented until typed', () => {
    const { price } = answer.facts;
    // Four ends of two rolls, and two of the manifolds; 20 a kilogram and 6 a joint unless the file says otherwise.
    expect(price.value).toBeCloseTo(20 * answer.facts.mass_kg.value + 6 * 6, 6);
    expect(price.high - price.value).toBeCloseTo(Math.hypot(10 * answer.facts.mass_kg.value, 3 * 6), 4);
    expect(keysOf(answer.cautions)).toContain('prices_invented');
    const prices = { copper_per_kg: 9, pex_per_m: 1, fitting_per_joint: 2 };
    const own = coilAnswer({ scenario: toteScenario({ prices }), context: {} });
    expect(own.facts.price.low).toBe(own.facts.price.high);
    expect(keysOf(own.cautions)).not.toContain('prices_invented');
    expect(own.facts.lowest_tank_C).toEqual(answer.facts.lowest_tank_C);
  });

  // The formulas lie as far apart as physics.md 3 has it; a tenth of a 0.032 in wall is 2.1 % of a 0.311 in bore.
  it('has its pressure between the published formulas and its speed between the walls that a standard allows', () => {
    const bare = bareScenario({
      tube: { kind: 'refrigeration', size: '3/8 in' },
      length: '50 ft',
      flow: '2 gpm',
      tank: '140 F',
      cold: '50 F',
    });
    const { pressure_drop_Pa, velocity_m_s } = coilAnswer({
      scenario: bare,
      context: {},
      flow_m3_s: 2 * 6.309e-5,
    }).facts;
    const reach = ({ value, low, high }: Banded) => [low / value, high / value];
    const { coil } = householdOf(plantOf(bare));
    const d = coil.tube.inside_diameter_m;
    const reynolds = (velocity_m_s.value * d) / 0.8e-6;
    const spread = coilFrictionSpread(reynolds, d / coil.coil_diameter_m);
    const [low, high] = reach(pressure_drop_Pa);
    expect(low).toBeLessThan(Math.min(0.88, spread.low));
    expect(low).toBeGreaterThan(0.8);
    expect(high).toBeGreaterThan(Math.max(1.15, spread.high));
    expect(high).toBeLessThan(1.35);
    const [slow, fast] = reach(velocity_m_s);
    expect(slow).toBeCloseTo(0.9797 ** 2, 2);
    expect(fast).toBeCloseTo(0.9797 ** -2, 2);
  });

  it('takes friction and bore that were measured at their word', () => {
    const [household, engine] = toteScenario().coils ?? [];
    const at = (own: object) => {
      const tried = toteScenario({ coils: [{ ...household, ...own }, engine] });
      return coilAnswer({ scenario: tried, context: {}, flow_m3_s: 1e-4 }).facts.pressure_drop_Pa;
    };
    const was = at({});
    const is = at({ friction: 1.2, bore: 1 });
    expect(is.value / was.value).toBeGreaterThan(1.15);
    expect(is.value / was.value).toBeLessThan(1.2);
    expect((is.high - is.low) / is.value).toBeLessThan(0.2 * ((was.high - was.low) / was.value));
    expect(at({ bore: 0.98 }).value / was.value).toBeCloseTo(0.98 ** -4.8, 1);
  });

  it('marks the present coil in its tables', () => {
    const { candidates, worth, joined } = answer.tables;
    const key = candidates.columns.findIndex((each) => each.key === 'lowest_tank_C');
    for (const table of [candidates, worth, joined]) {
      expect(table.rows[table.present ?? -1][key]).toBe(answer.facts.lowest_tank_C.value);
    }
  });

  it('recommends nothing that something cheaper beats', () => {
    const { rows, present } = answer.tables.worth;
    const others = rows.filter((_, i) => i !== present || present !== 0);
    const [price, lowest] = ['price', 'lowest_tank_C'].map((key) =>
      answer.tables.worth.columns.findIndex((each) => each.key === key),
    );
    for (let i = 1; i < others.length; i++) {
      expect(Number(others[i][price])).toBeGreaterThanOrEqual(Number(others[i - 1][price]));
      expect(Number(others[i][lowest])).toBeLessThan(Number(others[i - 1][lowest]));
    }
    for (const flow of column(answer, 'worth', 'tap_flow_m3_s')) {
      expect(Number(flow)).toBeGreaterThan(0.9 * 1.5 * 6.309e-5);
    }
  });

  it('sets the same footage in series against parallel: pressure some seven times, the store nearly alike', () => {
    const [series, parallel] = column(answer, 'joined', 'pressure_drop_Pa').map(Number);
    expect(series / parallel).toBeGreaterThan(5.5);
    expect(series / parallel).toBeLessThan(8.5);
    const [a, b] = column(answer, 'joined', 'lowest_tank_C').map(Number);
    expect(Math.abs(a - b)).toBeLessThan(6);
  });

  it('warns of the tube that goes by the same size, with both side by side', () => {
    expect(keysOf(answer.cautions)).toContain('namesake');
    const [thin, thick] = column(answer, 'namesake', 'content_m3').map(Number);
    // Bores 0.311 and 0.430 in: the square of their ratio.
    expect(thick / thin).toBeCloseTo((0.43 / 0.311) ** 2, 2);
  });

  it('names the pump where it starves the tap, and the store where more tube would hardly help', () => {
    const weak = { ...toteScenario().supply, pump: { open_flow: '1.6 gpm', cut_out: '20 psi' } };
    const starved = coilAnswer({ scenario: toteScenario({ supply: weak }), context: {} });
    expect([starved.limit, keysOf(starved.cautions).includes('pump_at_limit')]).toEqual(['pump', true]);
    const [household, engine] = toteScenario().coils ?? [];
    const long = [{ ...household, rolls: 8, coil_diameter: '30 in', side_by_side: 2 }, engine];
    expect(coilAnswer({ scenario: toteScenario({ coils: long }), context: {} }).limit).toBe('store');
    expect(answer.limit).toBe('coil');
  });

  it('gives the outlet instead where no store will do, and says so', () => {
    const [household, engine] = toteScenario().coils ?? [];
    const stub = [{ ...household, rolls: 1, roll_length: '3 ft' }, engine];
    const short = coilAnswer({ scenario: toteScenario({ coils: stub }), context: {} });
    expect(short.headline).toBe('outlet_C');
    expect(short.facts.lowest_tank_C).toBeUndefined();
    expect(keysOf(short.cautions)).toContain('no_store_hot_enough');
  });

  it('draws the outlet over tube and over store, rising, with the present design on them', () => {
    for (const { lines, at, present } of Object.values(answer.curves)) {
      const values = lines[0].values.map(Number);
      expect(values.toSorted((a, b) => a - b)).toEqual(values);
      expect(present).toBeGreaterThan(at[0]);
      expect(present).toBeLessThan(at[at.length - 1]);
    }
  });

  it('refuses a scenario without a household and one that cannot be read', () => {
    const { taps: _, ...none } = toteScenario();
    expect(() => coilAnswer({ scenario: none as Scenario, context: {} })).toThrow(/^taps - expected/);
    const broken = toteScenario({ store: { inside: { shape: 'barrel' } } });
    expect(() => coilAnswer({ scenario: broken, context: {} })).toThrow(/^store\.inside/);
  });

  it('tells how far it is', () => {
    const seen: number[] = [];
    coilAnswer({ ...question, onProgress: (share) => void seen.push(share) });
    expect(seen[seen.length - 1]).toBe(1);
    expect(seen.toSorted((a, b) => a - b)).toEqual(seen);
  });
});

describe('a coil by itself', () => {
  const bare: BareCoil = {
    tube: { kind: 'refrigeration', size: '3/8 in' },
    length: '50 ft',
    flow: '2 gpm',
    tank: '140 F',
    cold: '45 F',
  };
  const flow_m3_s = (2 * 3.785411784e-3) / 60;

  it('is the steady coil of its flags, whatever the pump could give', () => {
    const { facts } = coilAnswer({ scenario: bareScenario(bare), context: {}, tank_C: 60, flow_m3_s });
    const plant = plantOf(bareScenario(bare));
    const alone = coilOf({ ...plant.coils[0], flow_m3_s, tank_C: 60, cold_C: 13 / 1.8 });
    expect(facts.outlet_C.value).toBeCloseTo(alone.outlet_C, 9);
    expect(facts.UA_W_K.value).toBeCloseTo(alone.UA_W_K, 9);
    expect(facts.tap_flow_m3_s.value).toBeLessThan(flow_m3_s);
  });

  it.each([
    ['a store colder than the cold water', { tank_C: 5 }, /^tank - expected a store warmer than/],
    ['a store past boiling', { tank_C: 108 }, /^tank - expected a store no hotter than boiling/],
    ['a flow that tears the tube', { tank_C: 60, flow_m3_s: 1e-3 }, /^flow - expected .* its tube tears/],
  ])('refuses %s', (_, asked, message) => {
    const long = bareScenario({ ...bare, length: '500 ft' });
    expect(() => coilAnswer({ scenario: long, context: {}, ...asked })).toThrow(message);
  });

  it('warns of scalds from what leaves the coil, and of a valve that nobody said is there', () => {
    const hot = coilAnswer({ scenario: bareScenario(bare), context: {}, tank_C: 60, flow_m3_s: 2e-5 });
    expect(hot.cautions).toContainEqual({ key: 'scald', severity: 'danger' });
    expect(keysOf(hot.cautions)).toContain('valve_assumed');
    expect(hot.facts.hottest_outlet_C.value).toBeGreaterThan(49);
    const mild = coilAnswer({
      scenario: bareScenario({ ...bare, tank: '115 F' }),
      context: {},
      tank_C: 46,
      flow_m3_s,
    });
    expect(keysOf(mild.cautions)).not.toContain('scald');
    const fitted = {
      ...toteScenario().taps,
      coil: 'household',
      mixing_valve: { fitted: true, set: '115 F' },
    };
    const own = coilAnswer({ scenario: toteScenario({ taps: fitted }), context: {}, tank_C: 80 });
    expect(keysOf(own.cautions)).toContain('scald');
    expect(keysOf(own.cautions)).not.toContain('valve_assumed');
  });

  it('warns of plastic in a store past its rating and of a store near boiling', () => {
    const pex = bareScenario({ ...bare, tube: { kind: 'PEX', size: '1/2 in' }, length: '100 ft' });
    const { cautions } = coilAnswer({ scenario: pex, context: {}, tank_C: 95, flow_m3_s });
    expect(keysOf(cautions)).toEqual(expect.arrayContaining(['plastic_tube', 'boil_over']));
    const cool = bareScenario({ ...bare, length: '100 ft' });
    const other = coilAnswer({ scenario: cool, context: {}, tank_C: 60, flow_m3_s });
    expect(keysOf(other.cautions)).not.toContain('plastic_tube');
    expect(keysOf(other.cautions)).not.toContain('boil_over');
  });

  it.each([
    ['1 ft', 1],
    ['100 ft', 4],
    ['500 ft', 50],
  ])('fits whatever its length: %s, %i rolls', (length, rolls) => {
    const read = readScenario(bareScenario({ ...bare, length, rolls, join: 'parallel' }));
    expect(read.ok ? [] : read.problems).toEqual([]);
  });
});

describe('chargingAnswer', () => {
  const charging = chargingAnswer(question);

  it('has the store at which the radiator takes over as its headline, with a band', () => {
    const { radiator_from_C } = charging.facts;
    expect(charging.headline).toBe('radiator_from_C');
    expect(radiator_from_C.low).toBeLessThan(radiator_from_C.value);
    expect(radiator_from_C.high).toBeGreaterThan(radiator_from_C.value);
    expect(charging.curves.tank.knee).toBe(radiator_from_C.value);
  });

  it('takes half the rated output for the usual load, as the reader does', () => {
    expect(charging.facts.output_W.value).toBe(3000);
    expect(charging.facts.to_store_rated_W.value).toBeGreaterThan(charging.facts.to_store_W.value);
  });

  it('takes the load that holds longest while the engine runs', () => {
    const engine = {
      ...toteScenario().engine,
      load_by_hour: [
        { from: '0:00', output: '5 kW' },
        { from: '4:30 pm', output: '2 kW' },
      ],
    };
    const varied = chargingAnswer({ scenario: toteScenario({ engine }), context: {} });
    expect(varied.facts.output_W.value).toBe(2000);
  });

  it('blames the coil where the radiator throws heat away into the store asked about', () => {
    const hot = chargingAnswer({ ...question, tank_C: 92 });
    expect([charging.limit, hot.limit]).toEqual(['engine', 'coil']);
  });

  it('refuses a store past boiling', () => {
    expect(() => chargingAnswer({ ...question, tank_C: 108 })).toThrow(
      /^tank - expected a store no hotter than boiling/,
    );
  });

  it('gives the heat instead where the coil never takes it all', () => {
    const [household, engine] = toteScenario().coils ?? [];
    const coils = [household, { ...engine, roll_length: '3 ft' }];
    const short = chargingAnswer({ scenario: toteScenario({ coils }), context: {} });
    expect(short.headline).toBe('to_store_W');
    expect(keysOf(short.cautions)).toContain('radiator_always');
  });

  it('refuses a scenario without an engine', () => {
    const { engine: _, ...none } = toteScenario();
    expect(() => chargingAnswer({ scenario: none as Scenario, context: {} })).toThrow(/^engine - expected/);
  });
});
