/** From the command line's words to a checked plant. */
import { basename, dirname, join } from 'node:path';
import {
  parseJsonText,
  type ReadContext,
  type ReadScenario,
  readScenario,
  withWeather,
} from '../../sim/index.ts';
import { refusalWords } from '../words/index.ts';
import { readText, scenarioFile, weatherFile } from './files.ts';
import { Refusal, refuse } from './refusal.ts';

export interface Overrides {
  days?: string;
  from?: string;
  /** Path of a weather file that takes the place of the scenario's weather. */
  weather?: string;
}

export interface Loaded {
  /** What was read, with the overrides in it. */
  json: Record<string, unknown>;
  /** The weather file at hand, where one is named. */
  context: ReadContext;
  read: Extract<ReadScenario, { ok: true }>;
}

/** Reads and checks a scenario file; throws a Refusal with every problem found. */
export function loadScenario(path: string, overrides: Overrides): Loaded {
  const text = readText(path, scenarioFile);
  const json = jsonOf(text, path);
  applyOverrides(json, overrides);
  const weatherFiles = overrides.weather
    ? { [basename(overrides.weather)]: readText(overrides.weather, weatherFile) }
    : weatherBeside(path, json);
  const context = withWeather(weatherFiles);
  const read = readScenario(json, context);
  if (!read.ok) throw refusalOf(read, path);
  return { json, context, read };
}

/** The file's own JSON as an object; anything else goes to the reader as it is, which says why. */
function jsonOf(text: string, path: string): Record<string, unknown> {
  const parsed = parseJsonText(text);
  if (!parsed.ok) throw refusalOf(parsed, path);
  if (isObject(parsed.json)) return parsed.json;
  const read = readScenario(parsed.json);
  if (!read.ok) throw refusalOf(read, path);
  const { expected, got, fix } = refusalWords.noScenario;
  throw refuse(path, expected, got, fix);
}

function applyOverrides(json: Record<string, unknown>, { days, from, weather }: Overrides): void {
  if (days !== undefined && !/^\d{1,6}$/.test(days)) {
    throw refuse('--days', refusalWords.days.expected, `"${days}"`, refusalWords.days.fix);
  }
  const run = isObject(json.run) ? json.run : {};
  if (days !== undefined) run.days = Number(days);
  if (from !== undefined) run.from = from;
  if (days !== undefined || from !== undefined) json.run = run;
  if (weather !== undefined) json.weather = { kind: 'file', file: basename(weather) };
}

/** A weather file that the scenario names is looked for beside it. */
function weatherBeside(path: string, json: Record<string, unknown>): Record<string, string> {
  const { weather } = json;
  if (!isObject(weather) || weather.kind !== 'file' || typeof weather.file !== 'string') return {};
  return { [weather.file]: readText(join(dirname(path), weather.file), weatherFile) };
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function refusalOf({ problems }: Extract<ReadScenario, { ok: false }>, path: string): Refusal {
  return new Refusal(
    problems.map(({ path: within, ...problem }) => ({
      ...problem,
      where: within === '' ? path : `${path}: ${within}`,
    })),
  );
}
