/** Words of the engine's hours. */
import type { Answer } from '../../sim/index.ts';
import { answerTitles } from './answer-titles.ts';
import { type AnswerWords, limitWords, numberColumn, type ShownColumn } from './answers.ts';
import { monthNames } from './dates.ts';
import { bandedHours, hoursColumn } from './hours-text.ts';
import { fixed } from './locale.ts';
import { noNumber, type Say } from './say.ts';

type Row = (number | string | null)[];

/** Month rows by what they need: the most first; a month that nothing is enough for needs more than any. */
function monthsByNeed({ tables }: Answer): { month: string; hours_s: number | null }[] {
  const { columns, rows } = tables.months;
  const at = (key: string) => columns.findIndex((column) => column.key === key);
  // Without a share of cold showers a month was never computed.
  const known = rows.filter((row: Row) => row[at('cold_share')] !== null);
  return known
    .map((row: Row) => ({
      month: monthNames[Number(row[at('month')]) - 1],
      hours_s: row[at('hours_s')] as number | null,
    }))
    .sort((a, b) => (b.hours_s ?? Number.POSITIVE_INFINITY) - (a.hours_s ?? Number.POSITIVE_INFINITY));
}

function sentence(answer: Answer, say: Say): string {
  const { worst_s, mean_s } = answer.facts;
  const [worst] = monthsByNeed(answer);
  if (!worst) return 'Stopped before the first month was found.';
  if (!worst_s) return `In ${worst.month} even 12 hours a day do not keep the showers warm.`;
  const mean = mean_s ? `; over the year ${bandedHours(mean_s, say)} on the mean` : '';
  return `${bandedHours(worst_s, say)} of engine a day keep the showers warm in ${worst.month}, the month that needs most${mean}.`;
}

function reason({ limit, facts }: Answer): string {
  const whys: Partial<Record<Answer['limit'], string>> = {
    coil: facts.worst_s
      ? 'a good part of the engine’s heat goes to the radiator because the store takes it too slowly'
      : 'the store gets hot, and its water still comes out too cold',
    engine: 'the store takes what it brings, and it brings no more',
  };
  const why = whys[limit];
  return `${limitWords[limit]}${why ? `: ${why}` : ''}.`;
}

function extra({ facts, taken = [] }: Answer, say: Say): string[] {
  const { extra_year_s, extra_fuel_m3, extra_money, engine_kWh_money, backup_kWh_money } = facts;
  const beyond = taken.includes('charging_hours') ? ' beyond what charging runs it for' : '';
  const fuel =
    extra_year_s && extra_fuel_m3 && extra_money
      ? [
          extra_year_s.high < 1
            ? `None of it is${beyond || ' run'}: hot water costs no fuel of its own.`
            : `For hot water alone${beyond}: ${bandedHours(extra_year_s, say)} a year, ${say.banded(extra_fuel_m3)} of fuel, ${say.banded(extra_money)}.`,
        ]
      : [];
  const heat =
    engine_kWh_money && backup_kWh_money
      ? [
          `A kilowatt-hour brought into the store by an hour run for that alone costs ${say.banded(engine_kWh_money)} of fuel; from a backup heater ${say.banded(backup_kWh_money)}.`,
        ]
      : [];
  return [...fuel, ...heat];
}

const month: ShownColumn = {
  head: () => ['month', ''],
  cell: (row) => monthNames[Number(row.month) - 1],
  left: true,
};

export const hoursWords: AnswerWords = {
  title: answerTitles.hours,
  sentence,
  reason,
  more: extra,
  tables: [
    {
      key: 'months',
      title: ({ taken = [] }) =>
        `Hours a day that keep the showers warm${taken.includes('charging_hours') ? ', beside those that charging runs it for' : ''}`,
      columns: [
        month,
        {
          ...hoursColumn('needed', 'hours_s', 2),
          cell: ({ hours_s, cold_share }) => {
            if (typeof hours_s === 'number') return fixed(hours_s / 3600, 2);
            return cold_share === null ? noNumber : 'over 12';
          },
        },
        hoursColumn('charging', 'charging_s', 2),
        hoursColumn('extra', 'extra_s', 2),
        numberColumn('extra fuel', 'extra_fuel_m3', 'volume', 1),
        numberColumn('cold showers', 'cold_share', 'share'),
        numberColumn('from the sun', 'solar_share', 'share'),
      ],
    },
  ],
  curves: [
    {
      key: 'months',
      title: () => 'Hours a day by month',
      lines: { hours_s: 'needed', charging_s: 'charging' },
    },
  ],
  headline: { worst_s: 'hours in the month that needs most' },
  cautions: {},
};
