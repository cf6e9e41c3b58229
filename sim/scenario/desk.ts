/** What the builders share: where they report, and how they complete what the file left out. */
import { formatQuantity } from '../quantity/index.ts';
import type { Band, Field, Fields, GroupField, Value } from './field.ts';
import { type FilledDefault, told } from './fill.ts';
import { type Note, type Problem, pathText } from './problem.ts';
import { rawOf } from './raw.ts';

/** What a rule made of the rest of the file; `band` where it is another than the field's own, null for none. */
export interface Made<V> {
  value: V;
  band?: Band | null;
}

/** Stores and coils are measured in inches up to here. */
const TAPE_M = 3.048;

export class Desk {
  readonly problems: Problem[] = [];
  readonly notes: Note[] = [];
  readonly filled: FilledDefault[] = [];
  /** The units the file mostly uses: derived values are told of in them. */
  readonly system: 'US' | 'SI';

  constructor(system: 'US' | 'SI') {
    this.system = system;
  }

  problem(steps: readonly PropertyKey[], expected: string, got: string, fix: string): void {
    this.problems.push({ path: pathText(steps), expected, got, fix });
  }

  note(steps: readonly PropertyKey[], text: string): void {
    this.notes.push({ path: pathText(steps), text });
  }

  /** The given value of a derived field, or what `make` derives, told of with the field's source and grade. */
  complete<G extends Fields, K extends keyof G & string>(
    group: GroupField<G> | { fields: G },
    steps: readonly PropertyKey[],
    key: K,
    given: Value<G[K]> | null,
    make: () => Made<Value<G[K]>>,
  ): Value<G[K]> {
    if (given !== null) return given;
    const field: Field = group.fields[key];
    if (field.presence.need !== 'derived')
      throw new Error(
        `scenario.${key} - expected a derived field - got ${field.presence.need} - report this`,
      );
    const { value, band } = make();
    this.filled.push(told(field, [...steps, key], field.presence, this.write(field, value), band));
    return value;
  }

  /** Tells of a part of a derived group by itself. */
  tell(group: Field, steps: readonly PropertyKey[], field: Field, value: unknown, band?: Band | null): void {
    if (group.presence.need !== 'derived')
      throw new Error(
        `scenario.${pathText(steps)} - expected a derived group - got ${group.presence.need} - report this`,
      );
    this.filled.push(told(field, steps, group.presence, this.write(field, value), band));
  }

  /** In both systems, the file's own first: `40 in (1016 mm)`; what a tape reaches is in inches, not in part of a foot. */
  length(value_m: number): string {
    const inches = `${Number((value_m / 0.0254).toPrecision(4))} in`;
    const us = Math.abs(value_m) < TAPE_M ? inches : formatQuantity(value_m, 'length', 'US');
    const si = `${Math.round(value_m * 1e4) / 10} mm`;
    return this.system === 'US' ? `${us} (${si})` : `${si} (${us})`;
  }

  /** In both systems, the file's own first. */
  temperature(value_C: number): string {
    const [us, si] = [`${Math.round(value_C * 1.8 + 32)} F`, `${Math.round(value_C * 10) / 10} C`];
    return this.system === 'US' ? `${us} (${si})` : `${si} (${us})`;
  }

  /** A value as it could stand in the file. */
  write(field: Field, value: unknown): string {
    const raw = rawOf(field, value, this.system);
    return typeof raw === 'string' ? raw : JSON.stringify(raw);
  }
}
