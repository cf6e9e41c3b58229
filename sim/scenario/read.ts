/** From JSON to a checked plant: the one way in for file, page, share link and terminal. */
import type { PlantDescription } from '../parts/description.ts';
import { checkCurrency } from './build/prices.ts';
import type { WeatherContext } from './build/weather-file.ts';
import { problemsOf } from './check.ts';
import { Desk } from './desk.ts';
import { type Mark, marksFrom } from './doubts.ts';
import type { Field } from './field.ts';
import { scenario } from './fields/index.ts';
import { type FilledDefault, fillField } from './fill.ts';
import { parseJsonText } from './json-text.ts';
import { migrate } from './migrate.ts';
import { plantFrom, type Sections } from './plant.ts';
import type { Note, Problem } from './problem.ts';
import type { Sketch } from './sketch.ts';

/** What a scenario may name besides itself: weather files, by `withWeather`. */
export type ReadContext = WeatherContext;

export type ReadScenario =
  | {
      ok: true;
      plant: PlantDescription;
      sketch: Sketch;
      filled: FilledDefault[];
      notes: Note[];
      /** Inputs that the file marks as unsure. */
      marks: Mark[];
    }
  /** `sketch` where store and coils can be drawn all the same. */
  | { ok: false; problems: Problem[]; sketch?: Sketch };

/** More than anyone corrects in one go; the last one says how many follow. */
const MOST_PROBLEMS = 100;

/** Reads a scenario: strict, with all problems at once. Never throws on any JSON; never changes it. */
export function readScenario(json: unknown, context: ReadContext = {}): ReadScenario {
  const migrated = migrate(json);
  if (!migrated.ok) return migrated;
  // The gate before has read the version, which is no field.
  const { version: _, ...file } = migrated.json;
  const problems = problemsOf(scenario, file);
  // What failed the schema may be no JSON at all, and gives no plant to tell of in anyone's units.
  const desk = new Desk(problems.length === 0 ? systemOf(migrated.json) : 'SI');
  const sections = soundSections(migrated.json, problems, desk.filled);
  if (sections.prices) checkCurrency(desk, migrated.json, sections.prices);
  const { plant, sketch } = plantFrom(desk, sections, context);
  const marks = marksFrom(desk, migrated.json, sections.doubts ?? []);
  problems.push(...desk.problems);
  if (problems.length === 0 && plant && sketch)
    return { ok: true, plant, sketch, filled: desk.filled, notes: desk.notes, marks };
  return { ok: false, problems: capped(problems), ...(sketch ? { sketch } : {}) };
}

/** As `readScenario`, from the file's text. */
export function parseScenarioText(text: string, context: ReadContext = {}): ReadScenario {
  const parsed = parseJsonText(text);
  return parsed.ok ? readScenario(parsed.json, context) : parsed;
}

/** The top-level parts without a problem, read by the catalogue. */
function soundSections(
  json: Record<string, unknown>,
  problems: readonly Problem[],
  filled: FilledDefault[],
): Sections {
  const broken = new Set(problems.map(({ path }) => path.split(/[.[]/, 1)[0]));
  const sections: Record<string, unknown> = {};
  for (const [key, field] of Object.entries<Field>(scenario.fields)) {
    if (!broken.has(key))
      sections[key] = fillField(field, Object.hasOwn(json, key) ? json[key] : undefined, [key], filled);
  }
  return sections as Sections;
}

function capped(problems: Problem[]): Problem[] {
  if (problems.length <= MOST_PROBLEMS) return problems;
  const more = problems.length - MOST_PROBLEMS;
  const rest = { path: '', expected: 'fewer problems', got: `${more} more`, fix: 'correct these first' };
  return [...problems.slice(0, MOST_PROBLEMS), rest];
}

/** The units a file mostly uses. */
function systemOf(json: unknown): 'US' | 'SI' {
  const text = JSON.stringify(json);
  const us = text.match(/\d\s?(in|ft|gal|gpm|F|psi|Btu\/h|lb|mph)\b|R-\d/g)?.length ?? 0;
  const si = text.match(/\d\s?(mm|cm|m|L|L\/min|C|kPa|bar|kg|m\/s)\b/g)?.length ?? 0;
  return us > si ? 'US' : 'SI';
}
