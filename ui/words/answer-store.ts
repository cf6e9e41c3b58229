/** Words of the store and its insulation. */
import type { Answer } from '../../sim/index.ts';
import { answerTitles } from './answer-titles.ts';
import { type AnswerWords, limitWords, numberColumn, type ShownColumn } from './answers.ts';
import { fromSim } from './from-sim.ts';
import { fixed } from './locale.ts';
import { noNumber, type Say } from './say.ts';

function sentence({ facts }: Answer, say: Say): string {
  const { drop_K, usual_C, full_C, fresh_C, carried_s, heat_up_s } = facts;
  if (!drop_K || !usual_C) return 'Stopped before the present store was through.';
  const at = (value: number) => say.quantity(value, 'temperature', 3);
  const beyond =
    full_C && full_C.value > usual_C.value + 1 ? `; to the full ${at(full_C.value)} it takes longer` : '';
  const heat =
    heat_up_s && fresh_C
      ? `; the engine takes ${say.banded(heat_up_s)} to heat it from fresh water of ${at(fresh_C.value)} until its middle is at the usual ${at(usual_C.value)}${beyond}`
      : '';
  const carries = carried_s ? `; from full it carries the household for ${say.banded(carried_s)}` : '';
  return `At its usual ${at(usual_C.value)} the store cools by ${say.banded(drop_K)} a day${carries}${heat}.`;
}

/** Less than this share through the loops is not worth a word. */
const LITTLE = 0.03;

function reason({ limit, facts }: Answer, say: Say): string {
  const { loss_W, vapour_share, loops_share } = facts;
  const lost = loss_W ? `: it loses ${say.banded(loss_W)}` : '';
  const vapour = vapour_share ? `, ${say.banded(vapour_share)} of that as vapour past the lid` : '';
  const loops =
    loops_share && loops_share.value > LITTLE
      ? `${vapour ? ' and ' : ', '}${say.banded(loops_share)} back through the coils’ loops, which check valves stop`
      : '';
  const whose: Partial<Record<Answer['limit'], string>> = {
    store: 'The lid is the limit',
    engine: 'The stopped engine’s loop is the limit',
  };
  return `${whose[limit] ?? limitWords.insulation}${lost}${vapour}${loops}.`;
}

function temperatures({ facts }: Answer, say: Say): string[] {
  const { usual_C, full_C, fresh_C } = facts;
  if (!usual_C || !full_C || !fresh_C) return [];
  const at = (value: number) => say.quantity(value, 'temperature', 3);
  return [
    `Usual is ${at(usual_C.value)}, the mean of the scenario’s own days; full is ${at(full_C.value)}, the hottest its top gets in them; fresh is ${at(fresh_C.value)}.`,
  ];
}

/** R-values count in one unit, which everybody leaves out. */
const resistance = (head: string, key: string): ShownColumn => ({
  ...numberColumn(head, key, 'resistance', 1),
  head: (say) => [head, say.units === 'SI' ? say.unit('resistance') : 'R'],
});
const days = (head: string, key: string): ShownColumn => ({
  head: () => [head, 'days'],
  cell: (row) => {
    const value_s = row[key];
    return typeof value_s === 'number' ? fixed(value_s / 86_400, 1) : noNumber;
  },
});
const hours = (head: string, key: string): ShownColumn => ({
  head: () => [head, 'h'],
  cell: (row) => {
    const value_s = row[key];
    return typeof value_s === 'number' ? fixed(value_s / 3600, 1) : noNumber;
  },
});

const thick: ShownColumn = {
  head: (say) => ['foam', say.units === 'SI' ? 'mm' : 'in'],
  cell: ({ sides_m }, say) => {
    const m = Number(sides_m);
    return say.units === 'SI' ? fixed(m * 1000, 0) : fixed(m / 0.0254, 1);
  },
};
const found: ShownColumn[] = [
  numberColumn('a day', 'drop_K', 'temperature_difference', 1),
  numberColumn('loses', 'loss_W', 'power', 2),
  days('carries', 'carried_s'),
  hours('heats in', 'heat_up_s'),
  {
    head: () => ['more foam', ''],
    cell: ({ foam_money }, say) =>
      typeof foam_money === 'number' && foam_money !== 0
        ? `${foam_money < 0 ? '-' : ''}${say.money(Math.abs(foam_money))}`
        : noNumber,
  },
];
const insulation: ShownColumn[] = [
  thick,
  resistance('sides', 'sides_m2K_W'),
  resistance('lid', 'lid_m2K_W'),
  resistance('bottom', 'bottom_m2K_W'),
];

export const storeAnswerWords: AnswerWords = {
  title: answerTitles.store,
  sentence,
  reason,
  more: temperatures,
  tables: [
    {
      key: 'insulation',
      title: () => 'Insulation and lid',
      columns: [
        ...insulation,
        { head: () => ['lid is', ''], cell: ({ lid }) => fromSim(String(lid)), left: true },
        ...found,
      ],
    },
    {
      key: 'size',
      title: () => 'Size, as high as it is; no numbers where the coils do not fit',
      columns: [numberColumn('holds', 'volume_m3', 'volume'), ...insulation, ...found],
    },
  ],
  curves: [
    {
      key: 'insulation',
      title: () => 'Degrees a day over the sides’ resistance, by lid',
      lines: { closed: 'closed', ajar: 'ajar', open: 'open' },
    },
  ],
  headline: { drop_K: 'degrees a day' },
  cautions: {
    open_lid: () =>
      'An open store steams, and hot water under no lid is a danger to children and animals: cover and lock it.',
  },
};
