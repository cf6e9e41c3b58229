/** Edits of a scenario file. */
import { pathSteps, type Scenario } from '../scenario/index.ts';

/** A value put at a path of the scenario file: `store.water_depth` = "30 in", `coils[0].rolls` = 2. */
export interface Edit {
  path: string;
  value: unknown;
}

/**
 * A copy of a scenario with edits made; objects on the way are made where they are missing.
 * @throws RangeError if a path leads through something that is not an object or list
 */
export function edited(scenario: Scenario, edits: readonly Edit[]): Scenario {
  const copy = JSON.parse(JSON.stringify(scenario)) as Record<string | number, unknown>;
  for (const { path, value } of edits) {
    const steps = pathSteps(path);
    const last = steps.pop();
    if (last === undefined || steps.concat(last).some((s) => s === '__proto__' || s === 'constructor')) {
      throw new RangeError(
        `${path} - expected the path of an input - got "${path}" - write it as store.water_depth`,
      );
    }
    let at = copy;
    for (const step of steps) {
      const next = at[step];
      if (next === undefined) at[step] = {};
      else if (typeof next !== 'object' || next === null) {
        throw new RangeError(
          `${path} - expected an object at "${step}" - got ${JSON.stringify(next)} - check the path`,
        );
      }
      at = at[step] as Record<string | number, unknown>;
    }
    at[last] = value;
  }
  return copy as Scenario;
}
