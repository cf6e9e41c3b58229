/**
 * Lists what `sim` says in English, for a translator: `npm run -s texts` prints a table for `ui/words/sim-texts.ts`, each
 * text beside itself. The catalogue's texts come from the catalogue, those that are put together from the source.
 */
import { join, resolve } from 'node:path';
import { argv, stdout } from 'node:process';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';
import { templatesIn } from './sim-templates.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

/** What a field says of a value that the file leaves out. */
const saidOf = new Set(['how', 'source', 'absent']);

/**
 * Every text of `sim` that a person may read, holes as `{}`.
 * @returns {Promise<string[]>} sorted, each once
 */
export async function simTexts() {
  /** @type {typeof import('../sim/scenario/fields/index.ts')} */
  const { scenario } = await loaded('sim/scenario/fields/index.ts');
  /** @type {typeof import('../sim/quantity/units.ts')} */
  const { dimensions } = await loaded('sim/quantity/units.ts');
  /** @type {typeof import('../sim/physics/tube-tables.ts')} */
  const { TUBE_TABLES, TUBE_MATERIALS } = await loaded('sim/physics/tube-tables.ts');
  /** @type {typeof import('../sim/physics/materials.ts')} */
  const { MATERIALS } = await loaded('sim/physics/materials.ts');
  /** @type {typeof import('../sim/physics/combustion.ts')} */
  const { FUELS } = await loaded('sim/physics/combustion.ts');
  const texts = [
    ...textsOfField(scenario),
    ...Object.values(dimensions).map(({ name }) => name),
    // Units that are words; signs of units are the same everywhere.
    '{} day',
    '{} days',
    '{} per day',
    ...Object.values(TUBE_TABLES).map(({ words }) => `{} ${words}`),
    // They are words of the file as well.
    ...[TUBE_MATERIALS, MATERIALS, FUELS].flatMap((table) => Object.keys(table)),
    ...templatesIn(root),
  ];
  return [...new Set(texts)].filter((text) => /\p{L}{2}|\ba\b/u.test(text)).sort();
}

/**
 * Node runs no TypeScript: Vite does.
 * @template Module
 * @param {string} path
 * @returns {Promise<Module>}
 */
async function loaded(path) {
  const { module } = await runnerImport(join(root, path), { configFile: false, logLevel: 'error' });
  return /** @type {Module} */ (module);
}

/**
 * What a field and all that is in it are called, where they come from, how they are measured, which words they take.
 * @param {import('../sim/scenario/field.ts').Field} field
 * @returns {string[]}
 */
function textsOfField(field) {
  const { label, measure, presence } = field;
  const said = Object.entries(presence).flatMap(([key, text]) => (saidOf.has(key) ? [String(text)] : []));
  const own = [label, ...(measure === undefined ? [] : [measure]), ...said];
  switch (field.kind) {
    case 'choice':
      return [...own, ...field.choices];
    case 'text':
      // What a thing goes by for want of a name of its own.
      return presence.need === 'default' ? [...own, String(presence.value)] : own;
    case 'list':
      return [...own, ...textsOfField(field.of)];
    case 'group':
      return [...own, ...Object.values(field.fields).flatMap(textsOfField)];
    case 'variants':
      return [
        ...own,
        ...Object.keys(field.cases),
        ...Object.values(field.cases).flatMap((fields) => Object.values(fields).flatMap(textsOfField)),
      ];
    default:
      return own;
  }
}

if (argv[1] && resolve(argv[1]) === fileURLToPath(import.meta.url)) {
  const lines = (await simTexts()).map((text) => `  ${JSON.stringify(text)}: ${JSON.stringify(text)},`);
  stdout.write(`export const simTexts: Readonly<Record<string, string>> = {\n${lines.join('\n')}\n};\n`);
}
