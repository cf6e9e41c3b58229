/** A derivative that is already known is not asked for again, and only where it is known. */
import { describe, expect, it } from 'vitest';
import { Integrator } from '../../../sim/numerics/integrator.ts';

/** y' = -y, counting how often it is asked. */
function decay() {
  let asked = 0;
  const rates = (_t: number, y: number[], out: number[]) => {
    asked++;
    out[0] = -y[0];
  };
  const equations = { size: 1, rates, nameOf: () => 'y', absoluteTolerance: [1e-6] };
  return { integrator: new Integrator(equations, 1e-6, 10_000), asked: () => asked };
}

function run(told: [time: number, y: number, rate: number] | null) {
  const { integrator, asked } = decay();
  if (told) integrator.know(told[0], [told[1]], [told[2]]);
  const y = [1];
  integrator.advance(0, y, 2, 0.1, () => undefined);
  return { y: y[0], asked: asked() };
}

describe('a known derivative', () => {
  const plain = run(null);

  it('spares one evaluation and changes nothing', () => {
    expect(run([0, 1, -1])).toEqual({ y: plain.y, asked: plain.asked - 1 });
  });

  it('is used: a false one shows', () => {
    expect(run([0, 1, -0.5]).y).not.toBe(plain.y);
  });

  it.each([
    ['time', 1e-9, 1],
    ['state', 0, 1 + 1e-12],
  ])('is not used at another %s', (_what, time, y) => {
    expect(run([time, y, 99])).toEqual(plain);
  });
});
