/** Recipes against what is known: closed forms, and values put into a run and found again. */
import { describe, expect, it } from 'vitest';
import { coilOf } from '../../../../sim/answers/coil/coil-of.ts';
import { benchJob } from '../../../../sim/answers/fit/recipe-runs.ts';
import { doJob } from '../../../../sim/answers/job.ts';
import {
  type Edit,
  edited,
  type RecipeKind,
  readScenario,
  recipeAnswer,
  type Scenario,
} from '../../../../sim/index.ts';
import { edit, smallScenario, sunnyScenario } from '../small.ts';

const scenario = sunnyScenario();
const HOUR = 3600;

function found(kind: RecipeKind, typed: Record<string, string>, of: Scenario = scenario) {
  return recipeAnswer({ scenario: of, context: {}, recipe: { kind, typed } });
}

/** Stirred store of a design with a value put in, after a time [C]. */
function reached(truth: Edit[], from_C: number, time_s: number, more: Edit[] = []): number {
  const bench = { from_C, room_C: 12, time_s, more };
  const done = doJob(scenario, benchJob(bench, truth), {});
  return done.ok ? (done.modelled_C?.[0] ?? Number.NaN) : Number.NaN;
}

describe('a recipe', () => {
  it('turns a bucket and a watch into a flow, gpm = 300 / s for 5 gallons', () => {
    const { facts, edits } = found('bucket', { volume: '5 gal', time: '120 s' });
    const gpm = (m3_s: number) => (m3_s * 60) / 3.785411784e-3;
    expect(gpm(facts.flow_m3_s.value)).toBeCloseTo(2.5, 6);
    expect(facts.flow_m3_s.low).toBeLessThan(facts.flow_m3_s.value);
    const read = readScenario(edited(scenario, edits));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(gpm(read.plant.supply.pump.open_flow_m3_s)).toBeCloseTo(2.5, 2);
    expect(read.marks.map(({ path }) => path)).toEqual(['supply.pump.open_flow']);
  });

  it('puts the flow of a shower’s bucket into every shower, and refuses where there is none', () => {
    const { edits } = found('shower bucket', { volume: '8 L', time: '60 s' });
    expect(edit(edits, 'taps.showers[0].flow')).toBe('8 L/min');
    const none = smallScenario({ taps: { coil: 'household' } });
    expect(() => found('shower bucket', { volume: '8 L', time: '60 s' }, none)).toThrow(
      /^taps\.showers - expected/,
    );
  });

  it('finds a coil’s UA by the recipe’s own formula, and the film with which the computed coil gives as much', () => {
    const read = readScenario(scenario);
    if (!read.ok) throw new Error('not read');
    const case_ = { flow_m3_s: 1e-4, tank_C: 60, cold_C: 8 };
    const { outlet_C } = coilOf({ ...read.plant.coils[0], ...case_, outside_film: 0.65 });
    const { facts, inputs } = found('coil outlet', {
      flow: '6 L/min',
      tank: '60 C',
      cold: '8 C',
      outlet: `${outlet_C} C`,
    });
    const effectiveness = (outlet_C - 8) / 52;
    expect(facts.effectiveness.value).toBeCloseTo(effectiveness, 9);
    // 500 Btu/h F to the gpm is 1 kg/L x 4186 J/kg K: within 0.5 %.
    expect(facts.UA_W_K.value / (-0.1 * 4186 * Math.log(1 - effectiveness))).toBeCloseTo(1, 2);
    expect(inputs[0].path).toBe('coils[0].outside_film');
    expect(inputs[0].value.value).toBeCloseTo(0.65, 2);
    expect(inputs[0].value.low).toBeLessThan(0.65);
    expect(inputs[0].value.high).toBeGreaterThan(0.65);
  });

  it('finds the loss of an overnight cool-down that a run with it shows', () => {
    const truth = [{ path: 'store.bridges', value: 2.4 }];
    const still = [{ path: 'engine.runs', value: { kind: 'timetable', spans: [] } }];
    const end_C = reached(truth, 60, 12 * HOUR, still);
    const { inputs, facts, edits } = found('cool-down', {
      from: '60 C',
      to: `${end_C} C`,
      room: '12 C',
      time: '12 h',
    });
    expect(inputs[0].value.value).toBeCloseTo(2.4, 1);
    expect(edit(edits, 'store.bridges')).toBeCloseTo(2.4, 1);
    // m c ln(...) / t: 0.512 m3 of water.
    const closed = ((512 * 0.985 * 4185) / (12 * HOUR)) * Math.log(48 / (end_C - 12));
    expect(facts.loss_W_K.value / closed).toBeCloseTo(1, 1);
  });

  it('does not take for loss through the walls what may be vapour past the lid', () => {
    const still = [{ path: 'engine.runs', value: { kind: 'timetable', spans: [] } }];
    const wet = { path: 'store.vapour_escape', value: '4.5 %' };
    const end_C = reached([{ path: 'store.bridges', value: 1.6 }, wet], 60, 12 * HOUR, still);
    const typed = { from: '60 C', to: `${end_C} C`, room: '12 C', time: '12 h' };
    const [unknown, known] = [scenario, edited(scenario, [wet])].map(
      (of) => found('cool-down', typed, of).inputs[0].value,
    );
    expect(unknown.value).toBeGreaterThan(1.7);
    expect(unknown.low).toBeLessThan(1.6);
    expect(known.value).toBeCloseTo(1.6, 1);
    expect(known.high - known.low).toBeLessThan(unknown.high - unknown.low);
  });

  it('finds the jacket share of a heat-up that a run with it shows', () => {
    const runs = [
      { path: 'engine.runs', value: { kind: 'timetable', spans: [{ from: '0:00', to: '3:00' }] } },
      { path: 'engine.typical_load', value: '3 kW' },
    ];
    const truth = [
      { path: 'engine.jacket_share', value: '29 %' },
      { path: 'engine.jacket_share_light', value: '34.8 %' },
    ];
    const end_C = reached(truth, 35, 3 * HOUR, runs);
    const { inputs } = found('heat-up', {
      from: '35 C',
      to: `${end_C} C`,
      room: '12 C',
      time: '3 h',
      load: '3 kW',
    });
    expect(inputs[0].value.value).toBeCloseTo(0.29, 2);
    expect(inputs[0].value.low).toBeLessThan(0.29);
  });

  it('says what a solar day brought, what the store lost included', () => {
    const { facts, edits } = found('solar day', { from: '40 C', to: '48 C', room: '12 C' });
    const stored = 512 * 0.99 * 4180 * 8;
    expect(facts.heat_J.value).toBeGreaterThan(stored);
    expect(facts.heat_J.value).toBeLessThan(stored * 1.6);
    expect(facts.per_m2_J.value).toBeCloseTo(facts.heat_J.value / 2, 0);
    expect(edits).toEqual([]);
  });

  it('turns a mark that fell into vapour and the lid’s share of it', () => {
    const { facts, inputs } = found('level', { fell: '5 mm', time: '7 days', store: '60 C', room: '12 C' });
    // 0.64 m2 x 5 mm x 983 kg/m3 over 7 days.
    expect(facts.kg_a_day.value).toBeCloseTo((0.64 * 0.005 * 983.2) / 7, 3);
    expect(facts.vapour_W.value).toBeCloseTo((facts.kg_a_day.value * 2.358e6) / 86_400, 1);
    expect(inputs[0].value.value).toBeGreaterThan(0);
    expect(inputs[0].value.value).toBeLessThan(0.5);
  });

  it('refuses what was typed wrongly, all at once and each in the house’s form', () => {
    expect(() => found('cool-down', { from: '60', to: 'cold', room: '12 C', time: '5 min' })).toThrow(
      /^from - expected .* - got .*\nto - expected .*\ntime - expected 60 min to 6 days - got "5 min" - /,
    );
  });

  it('refuses what the design cannot give whatever the input', () => {
    const hotter = { from: '60 C', to: '59.99 C', room: '12 C', time: '12 h' };
    expect(() => found('cool-down', hotter)).toThrow(
      /^to - expected .* with any store\.bridges - got 59\.99 C/,
    );
  });
});
