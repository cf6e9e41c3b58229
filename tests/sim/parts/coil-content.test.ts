/**
 * The tool books a coil's content as one number and moves a front through it. Here that is held, second by second,
 * against a coil of 300 short lengths with water and metal of their own (`coil-reference.ts`).
 */
import { describe, expect, it } from 'vitest';
import type { CoilDescription } from '../../../sim/parts/description.ts';
import { liquid, REFERENCE_HEAT_CAPACITY, temperatureOf } from '../../../sim/parts/liquid.ts';
import { CoilRig, DEPTH, enthalpy, LAYERS, WATER } from '../support/coil-rig.ts';
import { coilOf, tubeOf } from '../support/plant.ts';
import { FineCoil } from './coil-reference.ts';

const LENGTHS = 300;
const FOOT = 0.3048;
/** Heat and water are compared to within this share, and temperatures to within this [K]. */
const SHARE = 0.005;
const CLOSE = 1;

/** Seconds, flow [kg/s], entry [C]; no flow is a pause. */
type Phase = [seconds: number, flow_kg_s: number, entry_C: number];

const coils: Record<string, CoilDescription> = {
  '50 ft of 3/8 in refrigeration tube': coilOf('c', {
    tube: tubeOf('refrigeration', '3/8'),
    roll_length_m: 50 * FOOT,
  }),
  '100 ft of 3/4 in plumbing tube': coilOf('c', {
    tube: tubeOf('plumbing L', '3/4'),
    roll_length_m: 100 * FOOT,
  }),
};
const stores: Record<string, (height_m: number) => number> = {
  'a store of one temperature': () => 60,
  'a layered store': (z) => 30 + 40 * Math.min(1, Math.max(0, (z - 0.15) / 0.4)),
};
const draws: Record<string, Phase[]> = {
  'a long shower': [[150, 0.1, 10]],
  'a pause of 10 s': [
    [130, 0.1, 10],
    [10, 0, 0],
    [130, 0.1, 10],
  ],
  'a pause of 60 s': [
    [130, 0.1, 10],
    [60, 0, 0],
    [130, 0.1, 10],
  ],
  'a pause of 10 min': [
    [130, 0.1, 10],
    [600, 0, 0],
    [130, 0.1, 10],
  ],
  'three short draws': [
    [20, 0.08, 10],
    [40, 0, 0],
    [20, 0.08, 10],
    [40, 0, 0],
    [20, 0.08, 10],
  ],
  'a trickle': [[240, 0.03, 10]],
  'hot liquid': [[120, 0.15, 85]],
};
const cases = Object.keys(coils).flatMap((coil) =>
  Object.keys(stores).flatMap((store) => Object.keys(draws).map((draw) => [draw, coil, store] as const)),
);

interface Course {
  /** Mean enthalpy of what came out in each second [J/kg]; NaN in a pause. */
  out: number[];
  taken_J: number;
}

function byTool(coil: CoilDescription, profile: (z: number) => number, phases: Phase[]) {
  const rig = new CoilRig(coil, profile);
  const out: number[] = [];
  for (const [seconds, flow, entry] of phases) {
    if (flow > 0) {
      rig.start();
      for (let i = 0; i < seconds; i++) out.push(rig.pass(1, flow, entry));
      rig.stop(flow, entry);
    } else {
      rig.time_s += seconds;
      for (let i = 0; i < seconds; i++) out.push(Number.NaN);
    }
  }
  return { out, taken_J: rig.taken_J, arrivals: rig.arrivals, frontSpeed: rig.coil.frontSpeed(1, 10) };
}

function byLengths(coil: CoilDescription, profile: (z: number) => number, phases: Phase[]): Course {
  const layer = (share: number) => {
    const height = coil.bottom_m + share * (coil.top_m - coil.bottom_m);
    const index = Math.min(LAYERS - 1, Math.floor((height / DEPTH) * LAYERS));
    return profile(((index + 0.5) / LAYERS) * DEPTH);
  };
  const fine = new FineCoil(coil, LENGTHS, layer);
  const out = phases.flatMap(([seconds, flow, entry]) =>
    Array.from({ length: seconds }, () => fine.pass(1, flow, entry)),
  );
  // To rest, as the tool has booked it already.
  fine.pass(1800, 0, 0);
  return { out, taken_J: fine.taken_J };
}

const water = liquid(WATER);
const temperature = (h: number) => temperatureOf(water, h / REFERENCE_HEAT_CAPACITY);

describe.each(cases)('%s through %s in %s', (draw, coil, store) => {
  const phases = draws[draw];
  const tool = byTool(coils[coil], stores[store], phases);
  const fine = byLengths(coils[coil], stores[store], phases);
  const flowAt = phases.flatMap(([seconds, flow]) => new Array<number>(seconds).fill(flow));
  const entry = phases[0][2];
  const heat = (out: number[]) =>
    out.reduce((sum, h, i) => sum + (flowAt[i] > 0 ? flowAt[i] * (h - enthalpy(entry)) : 0), 0);

  it('warms the water as much', () => {
    expect(Math.abs(heat(tool.out) / heat(fine.out) - 1)).toBeLessThan(SHARE);
  });

  it('takes as much from the layers, once all has come to rest', () => {
    expect(Math.abs(tool.taken_J - fine.taken_J)).toBeLessThan(SHARE * Math.abs(heat(fine.out)));
  });

  it('gives the same temperature second by second, but for seconds around the front', () => {
    const transit = 1 / (tool.frontSpeed * Math.max(...flowAt));
    // In truth the front is blurred by the metal it warms, the more the longer its way.
    const window = 3 + 0.06 * transit;
    const off = tool.out
      .map((h, i) => ({ second: i, got: temperature(h), expected: temperature(fine.out[i]) }))
      .filter(({ second }) => flowAt[second] > 0)
      .filter(({ second }) => tool.arrivals.every((t) => Math.abs(second + 0.5 - t) > window))
      .filter(({ got, expected }) => !(Math.abs(got - expected) < CLOSE));
    expect(off).toEqual([]);
  });
});
