/** What all answers have in words: how one is told, what limits, what stands beside it. */
import type { Answer, DimensionKey, Limit } from '../../sim/index.ts';
import type { Say } from './say.ts';

/** A table's row by the keys of its columns. */
export type RowByKey = Record<string, number | string | null>;

export interface ShownColumn {
  /** What it is, and its unit beneath. */
  head: (say: Say) => [string, string];
  cell: (row: RowByKey, say: Say) => string;
  left?: true;
  /** Its cells are paths of inputs: the page names those as a person does. */
  isPath?: true;
}

/** A column of numbers in one unit. */
export function numberColumn(head: string, key: string, dimension: DimensionKey, decimals = 0): ShownColumn {
  return {
    head: (say) => [head, say.unit(dimension)],
    cell: (row, say) => say.number(row[key] as number | null, dimension, decimals),
  };
}

/** Rows of one of the answer's tables, by the keys of its columns; none if it has no such table. */
export function rowsOf({ tables }: Answer, key: string): RowByKey[] {
  const table = tables[key];
  if (!table) return [];
  return table.rows.map((cells) => Object.fromEntries(table.columns.map((each, i) => [each.key, cells[i]])));
}

export interface ShownTable {
  /** Key in the answer's tables. */
  key: string;
  title: (answer: Answer, say: Say) => string;
  /** All of them, or those that this answer's table has. */
  columns: ShownColumn[] | ((answer: Answer, say: Say) => ShownColumn[]);
  /** Rows that a report shows; all if not said. */
  rows?: (row: RowByKey) => boolean;
}

export function shownColumns({ columns }: ShownTable, answer: Answer, say: Say): ShownColumn[] {
  return typeof columns === 'function' ? columns(answer, say) : columns;
}

export interface ShownCurve {
  key: string;
  title: (answer: Answer, say: Say) => string;
  /** By the lines' names; lines without words are left out. */
  lines: Record<string, string>;
  /** What begins at its knee, if it has one. */
  knee?: string;
  /** What a line is called that is one of many, drawn thin where there is room; null for others. */
  thin?: (name: string) => string | null;
}

/** An answer in words. */
export interface AnswerWords {
  title: string;
  /** One sentence with a number and its band. */
  sentence: (answer: Answer, say: Say) => string;
  /** What limits, in a sentence. */
  reason: (answer: Answer, say: Say) => string;
  /** What else is worth a sentence each. */
  more: (answer: Answer, say: Say) => string[];
  tables: ShownTable[];
  curves: ShownCurve[];
  /** What the headline is called where levers move it, as in `lowest store`. */
  headline: Record<string, string>;
  /** Cautions and notes of its own, by key; others are those of a run. */
  cautions: Record<string, (answer: Answer, say: Say) => string>;
}

export const limitWords: Record<Limit, string> = {
  coil: 'The coil is the limit',
  store: 'The store is the limit',
  engine: 'The engine is the limit',
  pump: 'The pump is the limit',
  sun: 'The sun is the limit',
  liner: 'The liner is the limit',
  insulation: 'The insulation is the limit',
  none: 'Nothing holds it back',
};

/** What answers take for granted, by key. */
export const takenWords: Record<string, string> = {
  row_alone: 'The row of showers begins a minute after midnight, nothing else is drawn and nothing heats.',
  dull_is_dark:
    'A dull day is one without any sun and with the engine standing, the household drawing as usual.',
  no_backup: 'The backup heater is left out.',
  level_kept: 'Somebody keeps the water level where it is.',
  typical_weeks: 'Each month is seven days in its middle, after three for the store to forget how it began.',
  worst_month_bands:
    'Bands come from the month that needs most; the other months are taken to need as many times more or less.',
  charging_hours: 'The timetable in the file is taken as what charging needs.',
  four_stretches:
    'Bands and numerical error come from four days in each season; the year is taken to change as they do.',
  spared_by_hours:
    'What the engine is spared is the difference of the hours that keep the showers warm (tankful hours), without and with the collector.',
  spared_by_calls: 'The engine is called for heat: what it is spared is what it ran less over the year.',
  no_engine: 'There is no engine to spare.',
  nobody_draws: 'Nobody draws: a timetable that heats for nobody is spared nothing.',
  span_from_start: 'The engine runs once a day, from the hour at which the timetable in the file begins.',
  span_before_evening: 'The engine runs once a day and is done before the evening’s first shower.',
  coil_as_it_is: 'The collector’s coil stays as it is at every size.',
  one_at_a_time: 'One thing fails at a time and all else works.',
  away_in_summer:
    'Away and the loop’s pump are tried in July (January south of the equator), as the weather there is.',
  off_in_winter: 'Engine, power and frost are tried in January (July south of the equator).',
  at_usual: 'Degrees a day are lost with nobody drawing, the engine standing and the collector dark.',
  carried_from_full:
    'Carried is the time until the first draw runs cold, by its wish, with no heat coming in.',
  spread_evenly:
    'Each run puts every unsure input somewhere between its ends, half of them below what the scenario has and half above, evenly spread and independent of each other. How often something came in these runs is only that.',
  like_years: 'Each run has the weather of another like year.',
  weather_as_it_is: 'The weather is the file’s own in every run.',
  others_held: 'What nobody marked and what comes without a band stays as it is, and nothing breaks.',
  each_alone: 'What an input does by itself is two runs, at its ends, with all else as the scenario has it.',
  found_as_taken:
    'A measurement is taken to find what the scenario has now; what it leaves unsure comes from cheap probes, a bucket and a tape.',
  each_change_alone: 'Each change is tried by itself, as a run of the same days.',
  year_as_these_days: 'A year’s fuel is that of these days gone on with.',
  gain_over_few_runs:
    'A gain is the mean of six runs of each design, one as it stands and five with everything unsure varied alike in both; it reaches from the least of them to the most.',
  first_year_money:
    'Gain for the money counts what a change costs once and the fuel it takes more in the first year.',
  less_charging: 'An hour of engine less is an hour less of charging too.',
  heat_up_from_fresh: 'Heating up runs the engine without a pause and nobody draws.',
};
