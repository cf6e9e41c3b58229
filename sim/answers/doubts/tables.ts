/** Doubts as tables and a picture: each run, each shower over all runs, each input, what measuring leaves. */
import { COLD_SHOWER_FROM } from '../../run/tally.ts';
import type { FilledDefault } from '../../scenario/index.ts';
import type { Column, Curve, Table } from '../answer.ts';
import type { Facts } from '../band.ts';
import type { JobDone } from '../job.ts';
import { type Effect, movesBy } from './effects.ts';
import { dimensionOf } from './facts.ts';
import type { Measured } from './measuring.ts';
import { type Varied, valueAt, written } from './varied.ts';
import type { Watched } from './watched.ts';

const DAY = 86_400;

const column = (key: string, dimension: Column['dimension']): Column => ({ key, dimension });

/** A row for each run that was done. */
export function runsTable(keys: readonly string[], runs: readonly (Facts | null)[]): Table {
  const rows = runs.flatMap((facts, i) => (facts ? [[i + 1, ...keys.map((key) => facts[key] ?? null)]] : []));
  return {
    columns: [column('run', 'number'), ...keys.map((key) => column(key, dimensionOf(key)))],
    rows,
    present: null,
  };
}

/** Where each run stood, as a file would have it. */
export function pointsTable(
  varied: readonly Varied[],
  points: readonly ReadonlyMap<string, number>[],
): Table {
  return {
    columns: [column('run', 'number'), ...varied.map(({ path }) => column(path, 'text'))],
    rows: points.map((point, i) => [
      i + 1,
      ...varied.map((each) => String(written(each.field, valueAt(each, point.get(each.path) ?? 0.5), 4))),
    ]),
    present: null,
  };
}

/** Each shower of the days: in how many runs it ran cold, for how long at the most; ranked by how often, then by when. */
export function showersTable(base: Watched, runs: readonly Watched[], firstWeekday: number): Table {
  const rows = base.showers.map(({ from_s }, i) => {
    const cold = runs.map(({ showers }) => showers[i]?.cold_s ?? 0);
    const day = Math.floor(from_s / DAY);
    const often = cold.filter((each_s) => each_s > COLD_SHOWER_FROM).length;
    return [i + 1, day + 1, (firstWeekday + day) % 7, from_s - day * DAY, often, Math.max(0, ...cold)];
  });
  const [NUMBER, OFTEN] = [0, 4];
  const colder = (a: number[], b: number[]) =>
    a[OFTEN] > b[OFTEN] || (a[OFTEN] === b[OFTEN] && a[NUMBER] < b[NUMBER]);
  return {
    columns: [
      column('rank', 'number'),
      column('shower', 'number'),
      column('day', 'number'),
      column('weekday', 'number'),
      column('at_s', 'clock'),
      column('cold_runs', 'number'),
      column('most_s', 'time'),
    ],
    rows: rows.map((row) => [1 + rows.filter((other) => colder(other, row)).length, ...row]),
    present: null,
  };
}

/** Every varied input with what it does by itself, those that move the headline farthest first. */
export function inputsTable(
  varied: readonly Varied[],
  effects: readonly Effect[],
  key: string,
  base: Facts,
): Table {
  const still = varied.filter(({ path }) => !effects.some((effect) => effect.path === path));
  const dimension = dimensionOf(key);
  return {
    columns: [
      column('rank', 'number'),
      column('path', 'text'),
      column('input', 'text'),
      column('low', 'text'),
      column('high', 'text'),
      column('marked', 'text'),
      column('at_low', dimension),
      column('at_high', dimension),
      column('moves', dimension === 'temperature' ? 'temperature_difference' : dimension),
    ],
    rows: [
      ...effects.map((effect, i) => {
        const { path, label, marked, low, high } = effect;
        const mark = marked ? 'yes' : 'no';
        const ends = [low, high].map(({ facts }) => facts[key] ?? null);
        return [i + 1, path, label, low.text, high.text, mark, ...ends, movesBy(effect, key, base)];
      }),
      ...still.map(({ path, label, texts, marked }) => {
        return [null, path, label, texts.low, texts.high, marked ? 'yes' : 'no', null, null, 0];
      }),
    ],
    present: null,
  };
}

/** What measuring would leave, the best first. */
export function measurementsTable(measured: readonly Measured[], key: string): Table {
  const dimension = dimensionOf(key);
  return {
    columns: [
      column('path', 'text'),
      column('input', 'text'),
      column('recipe', 'text'),
      column('how', 'text'),
      column('low', 'text'),
      column('high', 'text'),
      column('was_from', dimension),
      column('was_to', dimension),
      column('from', dimension),
      column('to', dimension),
      column('left', 'share'),
    ],
    rows: measured.map(({ measurement, input, was, is, left }) => [
      measurement.path,
      input.label,
      measurement.recipe,
      input.measure,
      String(written(input.field, input.low, 3)),
      String(written(input.field, input.high, 3)),
      ...was,
      ...is,
      left,
    ]),
    present: null,
  };
}

/** What was assumed and not varied: no band is known for it, or it moves no heat. */
export function heldTable(filled: readonly FilledDefault[], varied: readonly Varied[]): Table {
  const moved = new Set(varied.map(({ path }) => path));
  const held = filled.filter(({ path }) => !moved.has(path) && !/^(prices|run)\b/.test(path));
  return {
    columns: [column('path', 'text'), column('input', 'text'), column('value', 'text')],
    rows: held.map(({ path, label, value }) => [path, label, value]),
    present: null,
  };
}

/** The top of the store: as the scenario stands, least, middle and most of all runs, and a line a run. */
export function topCurve(base: JobDone, done: readonly (JobDone | null)[]): Curve {
  const runs = done.flatMap((each, i) => (each?.watched ? [{ run: i + 1, top_C: each.watched.top_C }] : []));
  const at = base.watched?.time_s ?? [];
  const y = column('store_top_C', 'temperature');
  const ranked = at.map((_, i) => runs.map(({ top_C }) => top_C[i]).sort((a, b) => a - b));
  const pick = (share: number) =>
    ranked.map((values) => values[Math.round(share * (values.length - 1))] ?? null);
  return {
    x: column('time_s', 'time'),
    at,
    lines: [
      { name: 'stands', y, values: base.watched?.top_C ?? [] },
      { name: 'least', y, values: pick(0) },
      { name: 'most', y, values: pick(1) },
      ...runs.map(({ run, top_C }) => ({ name: `run ${run}`, y, values: top_C })),
    ],
    present: null,
    knee: null,
  };
}
