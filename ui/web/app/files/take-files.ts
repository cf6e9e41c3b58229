/**
 * Files that were chosen or dropped, put where they belong: a design becomes a new one, weather goes into the design
 * that stands in the page, a log waits to be held against the run.
 */
import {
  type Edit,
  migrate,
  type Problem,
  parseJsonText,
  type Scenario,
  whatTable,
} from '../../../../sim/index.ts';
import { fileWords } from '../../../words/index.ts';
import type { Attached } from '../../worker/protocol.ts';
import type { Opened, Page } from '../page.ts';
import type { ReadLink } from './link.ts';
import { type FileLike, isDesignName, readText } from './read-text.ts';

/** What became of a file. */
export interface Taken {
  name: string;
  /** `kept`: nothing was changed, since the design may not be changed here. */
  as: 'design' | 'weather' | 'log' | 'kept' | 'refused';
  /** Of a refused file, and of a design that can be drawn but not run yet. */
  problems: readonly Problem[];
  /** The encoding, where it was an unusual one. */
  encoding: string | null;
}

type TakingPage = Pick<Page, 'store' | 'commit' | 'openScenario' | 'openLog'>;

interface Text {
  name: string;
  text: string;
  encoding: string | null;
}

/** More than a hand drops on purpose. */
export const mostFiles = 20;

/** Weather that comes along with a design that names it goes into that one. */
export async function takeFiles(page: TakingPage, files: readonly FileLike[]): Promise<Taken[]> {
  const taken: Taken[] = [];
  const texts: Text[] = [];
  for (const file of files.slice(0, mostFiles)) {
    const read = await readText(file);
    if (read.ok) texts.push({ name: file.name, text: read.text, encoding: read.as });
    else taken.push({ name: file.name, as: 'refused', problems: read.problems, encoding: null });
  }
  const isDesign = ({ name, text }: Text) => isDesignName(name) || /^\s*[{[]/.test(text);
  const designs = texts.filter(isDesign);
  const tables = texts.filter((text) => !isDesign(text));
  const used = new Set<string>();
  for (const design of designs) {
    const { attached, ...found } = await takeDesign(page, design, tables);
    if (attached) used.add(attached);
    taken.push({ name: design.name, encoding: design.encoding, ...found });
  }
  for (const table of tables) {
    const { name, encoding } = table;
    const found = used.has(name) ? { as: 'weather' as const, problems: [] } : takeTable(page, table);
    taken.push({ name, encoding, ...found });
  }
  return taken;
}

async function takeDesign(page: TakingPage, { name, text }: Text, tables: Text[]) {
  const parsed = parseJsonText(text);
  const weather = parsed.ok ? tables.find((table) => table.name === weatherFileOf(parsed.json)) : undefined;
  const attached = weather && { [weather.name]: weather.text };
  const also = { name: name.replace(/\.[^.]*$/, ''), ...(attached && { attached }) };
  const { taken, problems } = await openDesign(page, parsed, also);
  return taken
    ? { as: 'design' as const, problems, attached: weather?.name }
    : { as: 'refused' as const, problems: inFile(name, problems) };
}

/** Brings JSON of an older version up to today's before it becomes a design; the file stays as it is. */
export async function openDesign(
  page: Pick<Page, 'openScenario'>,
  parsed: ReadLink,
  also: Parameters<Page['openScenario']>[1] = {},
): Promise<Opened> {
  const migrated = parsed.ok ? migrate(parsed.json) : parsed;
  return migrated.ok ? page.openScenario(migrated.json, also) : { taken: false, problems: migrated.problems };
}

function takeTable(page: TakingPage, { name, text }: Text): Pick<Taken, 'as' | 'problems'> {
  switch (whatTable(text)) {
    case 'log':
      page.openLog({ name, text });
      return { as: 'log', problems: [] };
    case 'weather':
      return { as: takeWeather(page, name, text) ? 'weather' : 'kept', problems: [] };
    default:
      return { as: 'refused', problems: [{ path: name, ...fileWords.unknown(firstLine(text)) }] };
  }
}

/** Puts weather into the design that stands in the page; false where that may not be changed. */
export function takeWeather(page: TakingPage, name: string, text: string): boolean {
  const { design } = page.store.get();
  const attached: Attached = design.attached ?? {};
  // Undoing goes back to the text of before, so no text takes the place of another.
  const others = Object.keys(attached).filter((each) => attached[each] !== text);
  const own = freeFileName(name.slice(-longestName), others);
  page.commit(weatherEdits(design.scenario, own), fileWords.weatherFrom(own), { ...attached, [own]: text });
  return page.store.get().design !== design;
}

/** Less than the form of a scenario lets a file be called. */
const longestName = 70;

/** `valley.csv` or, where that is taken, `valley-2.csv`. */
function freeFileName(name: string, taken: readonly string[]): string {
  let free = name;
  for (let n = 2; taken.includes(free); n++) free = name.replace(/(?=\.[^.]*$)|$/, `-${n}`);
  return free;
}

function weatherEdits(scenario: Scenario, file: string): Edit[] {
  return weatherFileOf(scenario) === null
    ? [{ path: 'weather', value: { kind: 'file', file } }]
    : [{ path: 'weather.file', value: file }];
}

/** The weather file that a scenario names; null where it names none. */
export function weatherFileOf(scenario: unknown): string | null {
  const { weather } = (scenario ?? {}) as { weather?: { kind?: unknown; file?: unknown } };
  return weather?.kind === 'file' && typeof weather.file === 'string' ? weather.file : null;
}

/** Where in which file: a person may have dropped several. */
function inFile(name: string, problems: readonly Problem[]): Problem[] {
  return problems.map(({ path, ...problem }) => ({ path: path ? `${name}: ${path}` : name, ...problem }));
}

function firstLine(text: string): string {
  const line = text.trim().split(/\r|\n/, 1)[0];
  return line.length > 60 ? `${line.slice(0, 60)}…` : line;
}
