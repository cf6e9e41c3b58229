/** Words of the next dollar: which change gains most for its money, and what is for safety and not weighed. */
import type { Answer, Banded } from '../../sim/index.ts';
import { answerTitles } from './answer-titles.ts';
import { type AnswerWords, numberColumn, type RowByKey, rowsOf, type ShownColumn } from './answers.ts';
import { counted } from './locale.ts';
import { noNumber, type Say } from './say.ts';

const changeWords: Readonly<Record<string, (what: string | number, say: Say) => string>> = {
  roll_series: (coil) => `a roll more in series, coil ${coil}`,
  roll_parallel: (coil) => `a roll more in parallel, coil ${coil}`,
  to_parallel: (coil) => `rolls in parallel, coil ${coil}`,
  spread: (coil) => `turns further apart, coil ${coil}`,
  foam: () => 'insulation half as thick again',
  close_lid: (lid) => (lid === 'open' ? 'a lid with 2 in of foam' : 'the lid closed, with a seal'),
  seal_lid: () => 'a seal around the lid',
  engine_valve: () => 'a check valve in the engine’s loop',
  loop_valve: () => 'a check valve in the collector’s loop',
  more_tubes: (tubes) => `${tubes} tubes more`,
  more_area: (area_m2, say) => `${say.quantity(Number(area_m2), 'area', 2)} of collector more`,
  hour_less: () => 'the engine an hour a day less',
  hour_more: () => 'the engine an hour a day more',
};

function named({ change, what }: RowByKey, say: Say): string {
  return changeWords[String(change)]?.(what ?? '', say) ?? String(change);
}

/** What a gain is a gain of. */
const gainWords: Readonly<Record<string, { of: string; head: string; missing: string }>> = {
  warm_m3_day: {
    of: 'more warm water a day',
    head: 'more warm a day',
    missing: 'Some of the water wanted warm came cold: warm water is what a change is weighed by.',
  },
  spared_money_year: {
    of: 'less fuel a year',
    head: 'fuel spared a year',
    missing: 'All the water wanted came warm: fuel is what a change is weighed by.',
  },
  heat_J_day: {
    of: 'more heat a day (drawn, or still in the store)',
    head: 'more heat a day',
    missing: 'No draw ran cold: heat drawn or still in the store is what a change is weighed by.',
  },
};

function gainKey({ facts }: Answer): string {
  return Object.keys(gainWords).find((key) => key in facts) ?? 'heat_J_day';
}

function banded(row: RowByKey, { facts, tables }: Answer, key = 'gain'): Banded | null {
  const [value, low, high] = [row[key], row[`${key}_low`], row[`${key}_high`]].map((each) =>
    typeof each === 'number' ? each : null,
  );
  if (value === null || low === null || high === null) return null;
  const found = tables.changes.columns.find((column) => column.key === key)?.dimension;
  const dimension = (found ?? 'money') as Banded['dimension'];
  return { value, low, high, numerical: facts.gain?.numerical ?? 0, dimension };
}

function gains(row: RowByKey, answer: Answer, say: Say): string {
  const gain = banded(row, answer);
  return gain ? `${say.banded(gain)} ${gainWords[gainKey(answer)].of}` : '';
}

function bought(row: RowByKey, answer: Answer, say: Say): string {
  const cost = banded(row, answer, 'cost');
  const fuel = Number(row.fuel_year);
  const parts = [
    cost && cost.high > 0 ? say.banded(cost) : '',
    fuel > 0 ? `${say.money(fuel)} of fuel a year` : '',
  ];
  return parts.filter(Boolean).join(' and ');
}

const ranked = (answer: Answer) => rowsOf(answer, 'changes').filter(({ rank }) => rank !== null);
const isFree = ({ cost_high, fuel_year }: RowByKey) => cost_high === 0 && Number(fuel_year) <= 0;

function sentence(answer: Answer, say: Say): string {
  if (Object.keys(answer.facts).length === 0) return 'Stopped before the present design was through.';
  const rows = ranked(answer);
  const paid = rows.find((row) => !isFree(row));
  const [free] = rows.filter(isFree);
  if (!paid && !free)
    return `None of ${counted(answer.facts.tried.value, 'change')} tried gains anything that can be told.`;
  const parts = [
    free ? `Before any money, ${named(free, say)}: ${gains(free, answer, say)}.` : '',
    paid
      ? `${free ? 'Then' : 'Most'} for the money, ${named(paid, say)} for ${bought(paid, answer, say)}: ${gains(paid, answer, say)}.`
      : '',
  ];
  return parts.filter(Boolean).join(' ');
}

function reason(answer: Answer): string {
  if (Object.keys(answer.facts).length === 0) return '';
  return gainWords[gainKey(answer)].missing;
}

function more(answer: Answer, say: Say): string[] {
  const { days, tried } = answer.facts;
  if (!days) return [];
  const rows = ranked(answer);
  const spares = rows.filter(({ fuel_year }) => Number(fuel_year) < 0);
  return [
    `${counted(tried.value, 'change')} tried, each by itself over the scenario’s ${counted(days.value, 'day')}; those without a number gain nothing that can be told, or do harm.`,
    ...spares.map(
      (row) => `With ${named(row, say)} ${say.money(-Number(row.fuel_year))} of fuel a year are spared.`,
    ),
  ];
}

const cellMoney = (head: string, unit: string, key: string): ShownColumn => ({
  head: () => [head, unit],
  cell: (row, say) => {
    const value = row[key];
    if (typeof value !== 'number') return noNumber;
    return `${value < 0 ? '-' : ''}${say.money(Math.abs(value))}`;
  },
});

function amount(head: string, unit: string, key: string, answer: Answer): ShownColumn {
  const dimension = answer.tables.changes.columns.find((column) => column.key === key)?.dimension;
  if (dimension === 'money') return cellMoney(head, unit, key);
  const shown = numberColumn(head, key, dimension === 'energy' ? 'energy' : 'volume', 1);
  return { ...shown, head: (say) => [head, `${shown.head(say)[1]}${unit && ` ${unit}`}`] };
}

const harmWords: Readonly<Record<string, string>> = { boils: 'boils', too_hot: 'too hot for a wall' };

const harmColumn: ShownColumn = {
  head: () => ['harm', ''],
  cell: ({ harm }) => harmWords[String(harm)] ?? '',
  left: true,
};

export const nextWords: AnswerWords = {
  title: answerTitles.next,
  sentence,
  reason: (answer) => reason(answer),
  more,
  tables: [
    {
      key: 'changes',
      title: (answer) => `Changes, by what they gain for the money (${gainWords[gainKey(answer)].head})`,
      columns: (answer) => {
        const harmed = rowsOf(answer, 'changes').some(({ harm }) => harm !== '');
        return [
          {
            head: () => ['change', ''],
            cell: (row, say) => `${row.rank === null ? noNumber : `${row.rank}.`} ${named(row, say)}`,
            left: true,
          },
          amount('gains', '', 'gain', answer),
          amount('from', '', 'gain_low', answer),
          amount('to', '', 'gain_high', answer),
          {
            head: () => ['costs', ''],
            cell: (row, say) => {
              const [low, high] = [row.cost_low, row.cost_high].map((each) =>
                each === null ? null : Number(each),
              );
              if (low === null || high === null) return 'no price';
              return high === 0 ? say.money(0) : `${say.money(low)} to ${say.money(high)}`;
            },
          },
          cellMoney('fuel', 'a year', 'fuel_year'),
          ...(harmed ? [harmColumn] : []),
        ];
      },
    },
  ],
  curves: [],
  headline: { gain: 'gain' },
  cautions: {
    already_boils: () =>
      'The design as it stands boils: put that right before anything that brings more heat.',
    already_too_hot: () =>
      'The design as it stands is hotter than its liner, insulation or wall bears: put that right before anything that brings more heat.',
    fit_mixing_valve: ({ facts }, say) =>
      `Before all of these, and not weighed against them: a mixing valve at the store${facts.mixing_valve ? `, about ${say.money(facts.mixing_valve.value)}` : ''}. Without one the tap can scald in seconds.`,
    fit_relief: () =>
      'Not weighed either, for it is for safety: a relief without a valve before it on every coil that can be shut off, piped to a safe place. A check valve shuts a coil off too.',
    vent_stays_open: () =>
      'A lid that is sealed needs a vent that cannot block or freeze: the store must never hold pressure.',
  },
};
