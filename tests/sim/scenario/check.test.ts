import { describe, expect, it } from 'vitest';
import demo from '../../../scenarios/demo.json';
import tote from '../../../scenarios/tote-sun.json';
import { type Edit, edited } from '../../../sim/answers/edit.ts';
import { problemsOf } from '../../../sim/scenario/check.ts';
import { fieldAt } from '../../../sim/scenario/expectation.ts';
import { scenario } from '../../../sim/scenario/fields/index.ts';
import { pathSteps, type Scenario } from '../../../sim/scenario/index.ts';
import { pathText } from '../../../sim/scenario/problem.ts';
import { scenarioSchema } from '../../../sim/scenario/scenario-schema.ts';

/** Paths of everything in a file, parts before what is in them. */
function pathsIn(value: unknown, path = ''): string[] {
  if (typeof value !== 'object' || value === null) return path === '' ? [] : [path];
  const inner = Object.entries(value).flatMap(([key, each]) =>
    pathsIn(each, Array.isArray(value) ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`),
  );
  return path === '' ? inner : [path, ...inner];
}

const wrongs = [null, 5, -1, 1e99, 2.5, 'x', '', true, [], [[]], {}, { stranger: 1 }, { kind: 'nothing' }];
const files = [demo, tote] as unknown as Scenario[];
/** Every third: neighbours are much alike. */
const edits = files
  .flatMap((file) =>
    pathsIn(file)
      .filter((path) => path !== 'version')
      .flatMap((path) => wrongs.map((value): [Scenario, Edit] => [file, { path, value }])),
  )
  .filter((_, i) => i % 3 === 0);

/** Where the library that makes the JSON Schema finds a file wrong. */
function bySchema(json: unknown): string[] {
  const { error } = scenarioSchema().safeParse(json);
  const paths = (error?.issues ?? []).flatMap((issue) =>
    issue.code === 'unrecognized_keys'
      ? issue.keys.map((key) => pathText([...issue.path, key]))
      : [pathText(issue.path)],
  );
  return [...new Set(paths)].sort();
}

/** Where the check finds it wrong; texts of quantities and dates are any text to the schema. */
function byCheck({ version: _, ...file }: Scenario): string[] {
  const paths = problemsOf(scenario, file).map(({ path }) => path);
  return paths
    .filter((path) => {
      const steps = pathSteps(path);
      const kind = fieldAt(scenario, steps, file)?.kind;
      const textual = kind === 'quantity' || kind === 'days' || kind === 'date';
      const value = steps.reduce<unknown>((at, step) => (at as Record<string, unknown>)?.[step], file);
      return !(textual && typeof value === 'string');
    })
    .sort();
}

describe('the check of a file', () => {
  it('finds wrong what its JSON Schema finds wrong, wherever a value is replaced', () => {
    expect(edits.length).toBeGreaterThan(800);
    const differ = edits.flatMap(([file, edit]) => {
      const json = edited(file, [edit]);
      const [check, schema] = [byCheck(json), bySchema(json)];
      return JSON.stringify(check) === JSON.stringify(schema) ? [] : [{ edit, check, schema }];
    });
    expect(differ.slice(0, 5)).toEqual([]);
  });

  it('finds nothing wrong with the examples', () => {
    expect(files.map(byCheck)).toEqual([[], []]);
  });
});
