/** Words of the doubts: how often and how far over many runs, what moves it, what would be worth measuring. */
import type { Answer } from '../../sim/index.ts';
import { answerTitles } from './answer-titles.ts';
import { type AnswerWords, numberColumn, type RowByKey, rowsOf, type ShownColumn } from './answers.ts';
import { weekdayNames } from './dates.ts';
import { fromSim } from './from-sim.ts';
import { inputInUnits } from './input-text.ts';
import { counted } from './locale.ts';
import { noNumber, type Say } from './say.ts';

function sentence(answer: Answer, say: Say): string {
  const { runs, varied, showers, store_mean_C } = answer.facts;
  if (!runs || runs.value === 0 || !store_mean_C) return 'Stopped before the first run was done.';
  const begin = `In ${counted(runs.value, 'run')} with ${counted(varied.value, 'unsure input')} varied`;
  return showers
    ? `${begin} ${showersCold(answer, say)}`
    : `${begin} the store was ${say.banded(store_mean_C)} on the mean.`;
}

/** "showers ran cold in 16: none to 12 of 42, ...". */
function showersCold(answer: Answer, say: Say): string {
  const { cold_runs, showers, showers_cold } = answer.facts;
  if (cold_runs.value === 0 || !showers_cold) return `no shower of ${showers.value} ran cold.`;
  const { low, high } = showers_cold;
  const many = low === high ? `${high}` : `${low === 0 ? 'none' : low} to ${high}`;
  const [first] = rowsOf(answer, 'showers').filter(({ rank }) => rank === 1);
  const most = first
    ? `; most often shower ${first.shower} (${whenOf(first, say)}), in ${first.cold_runs}`
    : '';
  return `a shower ran cold in ${cold_runs.value}: ${many} of ${showers.value} in a run${most}.`;
}

function whenOf({ weekday, at_s }: RowByKey, say: Say): string {
  return `${weekdayNames[Number(weekday)]} ${say.quantity(Number(at_s), 'clock')}`;
}

const headline: AnswerWords['headline'] = {
  cold_s: 'time in which water ran cold',
  store_mean_C: 'mean temperature of the store',
};

function reason(answer: Answer, say: Say): string {
  const fact = answer.facts[answer.headline];
  const [first] = rowsOf(answer, 'inputs').filter(({ rank }) => rank === 1);
  if (!fact || !first) return 'No input by itself moves it by as much as can be told.';
  const at = (value: number | string | null) => say.value({ ...fact, value: Number(value) });
  const what =
    first.path === WEATHER ? 'the weather of like years' : `${fromSim(String(first.input))} (${first.path})`;
  const end = (key: 'low' | 'high') =>
    first.path === WEATHER ? `seed ${first[key]}` : inputText(first, key, say);
  return `What moves the ${headline[answer.headline]} most by itself is ${what}: ${at(first.at_low)} at ${end('low')}, ${at(first.at_high)} at ${end('high')}.`;
}

const WEATHER = 'weather.seed';

/** An end of an input in the reader's units. */
function inputText(row: RowByKey, key: 'low' | 'high', say: Say): string {
  return inputInUnits(String(row.path), String(row[key]), say.units);
}

/** What a measurement is called. */
const recipes: Readonly<Record<string, string>> = {
  cool_down: 'An overnight cool-down test',
  outlet_test: 'A test of the household coil’s outlet',
  heat_up: 'A heat-up test with the engine',
};

function measuring(answer: Answer, say: Say): string[] {
  const fact = answer.facts[answer.headline];
  const [best] = rowsOf(answer, 'measurements');
  if (!fact || !best) return [];
  const { input, path, recipe, how, left } = best;
  const test = recipes[String(recipe)];
  const label = fromSim(String(input));
  const what = test ?? `Measuring one value, ${label} (${path}),`;
  const share = Number(left);
  if (share > LITTLE_LEFT)
    return [`${what} would narrow it more than any other measurement tried, and hardly at all.`];
  const ends = (from: number | string | null, to: number | string | null) =>
    [from, to].map((value) => say.value({ ...fact, value: Number(value) })).join(' to ');
  const known = `${test ? `the ${label}` : 'it'} then known to ${inputText(best, 'low', say)} to ${inputText(best, 'high', say)}`;
  return [
    `${what} would narrow it most, to ${say.quantity(share, 'share', 2)}: with ${known} the same runs give ${ends(best.from, best.to)} in place of ${ends(best.was_from, best.was_to)}, the odd ones at either end left out. ${fromSim(String(how))}`,
  ];
}

const LITTLE_LEFT = 0.95;

function whatVaried({ facts, tables, taken }: Answer): string[] {
  const { varied, marked, idle } = facts;
  if (!varied) return [];
  const assumed = varied.value - marked.value;
  const held = tables.held?.rows.length ?? 0;
  const parts = [
    marked.value > 0 ? `${marked.value} that you marked` : '',
    assumed > 0 ? `${counted(assumed, 'assumed value')} that came with a band` : '',
    taken?.includes('like_years') ? 'the weather' : '',
  ].filter(Boolean);
  const waits = idle.value > 0 ? ` ${counted(idle.value, 'mark')} that moves no heat had no part.` : '';
  return [
    `Varied: ${parts.join(', ')}. Not varied: what the file says without a mark, ${counted(held, 'assumed value')} without a band, and the formulas.${waits}`,
  ];
}

const text = (head: string, key: string): ShownColumn => ({
  head: () => [head, ''],
  cell: (row) => String(row[key] ?? noNumber),
  left: true,
});
const number = (head: string, key: string): ShownColumn => ({
  head: () => [head, ''],
  cell: (row) => String(row[key] ?? noNumber),
});

const ends = (head: string, key: 'low' | 'high'): ShownColumn => ({
  head: () => [head, ''],
  cell: (row, say) => inputText(row, key, say),
  left: true,
});

/** Ten lines are read, thirty are not. */
const MOST_ROWS = 10;
const few = ({ rank }: RowByKey) => rank !== null && Number(rank) <= MOST_ROWS;

/** In the headline's own unit. */
function figure(head: string, key: string, { headline: of, facts }: Answer): ShownColumn {
  const dimension = facts[of]?.dimension;
  if (!dimension || dimension === 'money') return number(head, key);
  return numberColumn(head, key, dimension, dimension === 'temperature' ? 1 : 0);
}

export const doubtsWords: AnswerWords = {
  title: answerTitles.doubts,
  sentence,
  reason,
  more: (answer, say) => [...measuring(answer, say), ...whatVaried(answer)],
  tables: [
    {
      key: 'showers',
      title: () => 'Showers that ran cold, most often first',
      rows: (row) => few(row) && Number(row.cold_runs) > 0,
      columns: [
        number('shower', 'shower'),
        { head: () => ['when', ''], cell: whenOf, left: true },
        { head: () => ['cold in', 'runs'], cell: ({ cold_runs }) => String(cold_runs) },
        numberColumn('longest', 'most_s', 'time', 1),
      ],
    },
    {
      key: 'inputs',
      title: (answer) => `What each input does by itself to the ${headline[answer.headline]}`,
      rows: few,
      columns: (answer) => [
        { ...text('input', 'path'), isPath: true },
        ends('from', 'low'),
        figure('gives', 'at_low', answer),
        ends('to', 'high'),
        figure('gives', 'at_high', answer),
      ],
    },
  ],
  curves: [
    {
      key: 'top',
      title: () => 'Top of the store',
      lines: { stands: 'as it stands', least: 'least of all runs', most: 'most' },
      thin: (name) => (name.startsWith('run ') ? name : null),
    },
  ],
  headline,
  cautions: {
    boils_in_some: ({ facts }) =>
      `In ${facts.boiled_runs.value} of ${facts.runs.value} runs the store boils: give it a vent that cannot block, an overflow, and a limit that stops what heats it.`,
    not_run: ({ facts }) =>
      `${counted(facts.asked.value - facts.runs.value, 'run')} of ${facts.asked.value} could not be made: some values between the ends do not go together.`,
  },
};
