/** The build sheet of a scenario, and of a file of `scenarios/`. */
import { readFileSync } from 'node:fs';
import { type BuildSheet, buildSheet } from '../../../../sim/answers/sheet/index.ts';
import type { Scenario } from '../../../../sim/scenario/index.ts';
import { factsOf, tenTurns } from '../section/facts-of.ts';

export const inch = 0.0254;
export const foot = 12 * inch;
export const pound = 0.45359237;

export function sheetOf(scenario: Scenario): BuildSheet {
  return buildSheet(factsOf(scenario));
}

export function sheetOfFile(name: string): BuildSheet {
  const file = new URL(`../../../../scenarios/${name}.json`, import.meta.url);
  return sheetOf(JSON.parse(readFileSync(file, 'utf8')) as Scenario);
}

type Coil = NonNullable<Scenario['coils']>[number];

/** A box of 48 x 36 x 36 in with 32 in of water and these coils, each a household's or nobody's. */
export function withCoils(coils: Partial<Coil>[], over: Record<string, unknown> = {}): Scenario {
  const { coils: usual = [], ...plant } = tenTurns();
  return {
    ...plant,
    coils: coils.map((coil, i) => ({ ...usual[0], name: `coil ${i + 1}`, ...coil })),
    ...over,
  } as Scenario;
}
