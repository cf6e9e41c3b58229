/** What stands in the file at a path; own keys only, so that no inherited name is found. */
export function valueAt(json: unknown, steps: readonly PropertyKey[]): unknown {
  let value = json;
  for (const step of steps) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[step];
  }
  return value;
}
