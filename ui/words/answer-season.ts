/** Words of the season: a year by months. */
import type { Answer, Banded } from '../../sim/index.ts';
import { answerTitles } from './answer-titles.ts';
import { type AnswerWords, numberColumn, type ShownColumn } from './answers.ts';
import { dateWords, monthNames } from './dates.ts';
import { bandedHours, hoursColumn } from './hours-text.ts';
import { counted } from './locale.ts';
import { noNumber, type Say } from './say.ts';
import { spanText } from './units.ts';

function sentence({ facts }: Answer, say: Say): string {
  const { engine_s, fuel_m3, share, solar_heat_J, loss_J } = facts;
  if (!loss_J) return 'Stopped before the year was through.';
  const parts = [
    ...(engine_s && fuel_m3
      ? [`the engine runs ${bandedHours(engine_s, say)} and burns ${say.banded(fuel_m3)}`]
      : []),
    ...(solar_heat_J && share
      ? [`the sun brings ${say.banded(solar_heat_J)}, ${say.banded(share)} of the heat put in`]
      : []),
    `the store loses ${say.banded(loss_J)}`,
  ];
  return `In a year ${parts.join(', ')}.`;
}

function reason({ facts }: Answer, say: Say): string {
  const { showers, showers_cold, top_C_max, top_C_min } = facts;
  const cold =
    showers && showers.value > 0 && showers_cold
      ? `Of ${counted(showers.value, 'shower')} ${showers_cold.value === 0 ? 'none ran' : `${showers_cold.value} ran`} cold${coldBand(showers_cold)}. `
      : '';
  if (!top_C_max || !top_C_min) return cold.trim();
  const at = (value: number) => say.quantity(value, 'temperature', 3);
  return `${cold}The top of the store is between ${at(top_C_min.value)} and ${at(top_C_max.value)}.`;
}

/** ` (0 to 42)`: whole showers. */
function coldBand({ low, high }: Banded): string {
  const [least, most] = [Math.floor(low), Math.ceil(high)];
  return least === most ? '' : ` (${spanText(String(least), String(most))})`;
}

function more({ facts }: Answer, say: Say): string[] {
  const { make_up_kg, dry_s } = facts;
  const water = make_up_kg ? [`Water made up over the year: ${say.banded(make_up_kg)}.`] : [];
  return dry_s ? [...water, dryWords(dry_s.value)] : water;
}

/** The day of the year on which the store runs dry. */
function dryWords(dry_s: number): string {
  return `With nobody to make up its water the store would run dry on ${dateWords(dry_s / 86_400)}, counted from a full one on ${dateWords(0)}.`;
}

const month: ShownColumn = {
  head: () => ['month', ''],
  cell: (row) => monthNames[Number(row.month) - 1] ?? noNumber,
  left: true,
};
const whole = (head: string, key: string): ShownColumn => ({
  head: () => [head, ''],
  cell: (row) => (typeof row[key] === 'number' ? String(row[key]) : noNumber),
});

const columns: [key: string, column: ShownColumn][] = [
  ['engine_s', hoursColumn('engine', 'engine_s', 0)],
  ['fuel_m3', numberColumn('fuel', 'fuel_m3', 'volume', 1)],
  ['solar_heat_J', numberColumn('sun', 'solar_heat_J', 'energy')],
  ['solar_share', numberColumn('of it', 'solar_share', 'share')],
  ['showers_cold', whole('cold showers', 'showers_cold')],
  ['store_top_C_max', numberColumn('hottest', 'store_top_C_max', 'temperature')],
  ['store_top_C_min', numberColumn('coldest', 'store_top_C_min', 'temperature')],
  ['loss_J', numberColumn('lost', 'loss_J', 'energy')],
  ['make_up_kg', numberColumn('made up', 'make_up_kg', 'mass')],
];

export const seasonWords: AnswerWords = {
  title: answerTitles.season,
  sentence,
  reason,
  more,
  tables: [
    {
      key: 'months',
      title: () => 'The year by months',
      columns: ({ tables }) => [
        month,
        ...columns.flatMap(([key, column]) =>
          tables.months?.columns.some((each) => each.key === key) ? [column] : [],
        ),
      ],
    },
  ],
  curves: [
    {
      key: 'months',
      title: () => 'Heat by month',
      lines: {
        engine_heat_J: 'from the engine',
        solar_heat_J: 'from the sun',
        loss_J: 'lost from the store',
      },
    },
  ],
  headline: { fuel_m3: 'fuel in a year', solar_heat_J: 'heat from the sun in a year', loss_J: 'heat lost' },
  cautions: {
    runs_dry: ({ facts: { dry_s } }) =>
      `${dry_s ? dryWords(dry_s.value) : 'The store can run dry.'} A coil without water around it heats nothing: mark the level and look weekly, or fit a float.`,
  },
};
