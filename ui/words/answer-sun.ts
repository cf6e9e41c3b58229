/** Words of the collector. */
import type { Answer } from '../../sim/index.ts';
import { answerTitles } from './answer-titles.ts';
import { type AnswerWords, limitWords, numberColumn, type ShownColumn } from './answers.ts';
import { dateWords, monthNames } from './dates.ts';
import { bandedHours, hoursColumn } from './hours-text.ts';
import { counted, fixed } from './locale.ts';
import { noNumber, type Say } from './say.ts';

const DAY_S = 86_400;

function sentence({ facts }: Answer, say: Say): string {
  const { heat_J, share, dull_day_J, dull_from_day, area_m2 } = facts;
  if (!heat_J || !area_m2) return 'Stopped before the present collector’s year was over.';
  const part = share ? `, ${say.banded(share)} of the heat put into the store` : '';
  const from = dull_from_day ? `, from ${dateWords(dull_from_day.value)} on,` : '';
  const dull = dull_day_J ? `; in the dullest week${from} ${say.banded(dull_day_J)} a day` : '';
  return `${say.quantity(area_m2.value, 'area')} of collector bring ${say.banded(heat_J)} a year${part}${dull}.`;
}

function reason({ limit, facts }: Answer, say: Say): string {
  const why =
    limit === 'store'
      ? `${limitWords.store}: for more than a day in the year the collector stands hot because the store is at its high limit.`
      : `${limitWords.sun}.`;
  const knee = facts.stops_paying_m2
    ? `From ${say.quantity(facts.stops_paying_m2.value, 'area', 2)} on, more area brings less than half of what as much brought at first.`
    : 'Up to three times its size, more area still brings more than half of what as much brought at first.';
  return `${why} ${knee}`;
}

function spared({ facts, taken = [] }: Answer, say: Say): string[] {
  const { spared_s, spared_fuel_m3, spared_money, spared_beyond_s, payback_years, payback_beyond_years } =
    facts;
  if (!spared_fuel_m3 || !spared_money) {
    return ['It spares no fuel: neither an engine nor a backup heater would otherwise make the heat.'];
  }
  const years = payback_years ? `; it pays for itself in ${say.banded(payback_years)} years` : '';
  const engine = spared_s ? `${bandedHours(spared_s, say)} of engine, ` : '';
  const timetable = taken.includes('spared_by_hours');
  const alone = `Against no collector it spares a year ${engine}${say.banded(spared_fuel_m3)} of fuel, ${say.banded(spared_money)}${years}${timetable ? ', if the engine then runs only as long as warm showers need it' : ''}.`;
  if (!timetable || !spared_beyond_s) return [alone];
  const never = !payback_beyond_years;
  const beyond = `If charging runs the engine by its timetable anyway, ${bandedHours(spared_beyond_s, say)} of that are spared${never ? ' and it never pays' : `, and it takes ${say.banded(payback_beyond_years)} years`}.`;
  return [alone, beyond];
}

function away({ facts, tables }: Answer, say: Say): string[] {
  const { away_top_C, away_limitless_C, boils_s, dead_collector_C } = facts;
  if (!away_top_C || !dead_collector_C) return [];
  const degrees = (value: number) => say.quantity(value, 'temperature', 3);
  const boils = boils_s
    ? `boils within ${counted(Math.round(boils_s.value / DAY_S), 'day')}`
    : `reaches ${away_limitless_C ? degrees(away_limitless_C.value) : noNumber} and does not boil within a month`;
  const over = tables.sizes.columns.some(({ key }) => key === 'liner_over_s') ? 'liner' : 'wall';
  const hot = facts.over_s
    ? ` Over the year the ${over} is hotter than its limit for ${bandedHours(facts.over_s, say)}.`
    : '';
  return [
    `With nobody home at midsummer the store reaches ${degrees(away_top_C.value)}; with its high limit failing it ${boils}; with the pump dead the collector stands at ${degrees(dead_collector_C.value)}.${hot}`,
  ];
}

const money = (head: string, key: string): ShownColumn => ({
  head: () => [head, ''],
  cell: (row, say) => {
    const amount = row[key];
    return typeof amount === 'number' ? say.money(amount) : noNumber;
  },
});

/** The columns of a size, by their keys; a scenario without an engine, or with its collector by area, lacks some. */
const SIZES: [key: string, column: ShownColumn][] = [
  ['area_m2', numberColumn('area', 'area_m2', 'area', 1)],
  ['tubes', { head: () => ['tubes', ''], cell: ({ tubes }) => String(tubes) }],
  ['heat_J', numberColumn('heat', 'heat_J', 'energy')],
  ['share', numberColumn('of all', 'share', 'share')],
  ['dull_day_J', numberColumn('dull day', 'dull_day_J', 'energy', 1)],
  ['spared_s', hoursColumn('spared', 'spared_s', 0)],
  ['spared_fuel_m3', numberColumn('fuel', 'spared_fuel_m3', 'volume')],
  ['spared_money', money('money', 'spared_money')],
  ['price', money('costs', 'price')],
  [
    'payback_years',
    {
      head: () => ['pays in', 'years'],
      cell: ({ payback_years }) => (typeof payback_years === 'number' ? fixed(payback_years, 1) : noNumber),
    },
  ],
  ['liner_over_s', hoursColumn('liner hot', 'liner_over_s', 0)],
  ['wall_over_s', hoursColumn('wall hot', 'wall_over_s', 0)],
  ['store_top_C_max', numberColumn('hottest', 'store_top_C_max', 'temperature')],
];

function sizeColumns({ tables }: Answer): ShownColumn[] {
  const there = new Set(tables.sizes.columns.map(({ key }) => key));
  return SIZES.flatMap(([key, column]) => (there.has(key) ? [column] : []));
}

/** A column a size, headed by its area. */
function monthColumns({ tables }: Answer): ShownColumn[] {
  const month: ShownColumn = {
    head: () => ['month', ''],
    cell: (row) => monthNames[Number(row.month) - 1],
    left: true,
  };
  const sizes = tables.months.columns.flatMap(({ key, at }): ShownColumn[] => {
    if (!at) return [];
    const heat = numberColumn('', key, 'energy');
    return [{ ...heat, head: (say) => [say.quantity(at.value, at.dimension, 2), say.unit('energy')] }];
  });
  return [month, ...sizes];
}

export const collectorWords: AnswerWords = {
  title: answerTitles.collector,
  sentence,
  reason,
  more: (answer, say) => [...spared(answer, say), ...away(answer, say)],
  tables: [
    {
      key: 'sizes',
      title: () => 'Size by size, over a year; heat on a day of the dullest week',
      columns: sizeColumns,
    },
    { key: 'months', title: () => 'Heat by month, size by size', columns: monthColumns },
  ],
  curves: [
    {
      key: 'size',
      title: () => 'Heat a year over the collector’s area',
      lines: { heat_J: 'heat' },
      knee: 'more stops paying',
    },
    { key: 'months', title: () => 'Heat by month, the collector as it is', lines: { heat_J: 'heat' } },
  ],
  headline: { heat_J: 'heat a year' },
  cautions: {},
};
