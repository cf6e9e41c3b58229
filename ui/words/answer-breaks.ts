/** Words of what breaks it. */
import type { Answer } from '../../sim/index.ts';
import { answerTitles } from './answer-titles.ts';
import { type AnswerWords, numberColumn, type RowByKey, rowsOf, type ShownColumn } from './answers.ts';
import { failureWords, notApplyingWords } from './failures.ts';
import { fixed } from './locale.ts';
import { noNumber, type Say } from './say.ts';

function applying(answer: Answer): string[] {
  return rowsOf(answer, 'failures').map(({ failure }) => String(failure));
}

function coilOf(answer: Answer): string {
  return String(rowsOf(answer, 'trapped')[0]?.coil ?? '');
}

function story(answer: Answer, failure: string, say: Say): string {
  return failureWords[failure]?.story(answer.facts, say, coilOf(answer)) ?? '';
}

const failure: ShownColumn = {
  head: () => ['fails', ''],
  cell: (row) => failureWords[String(row.failure)]?.title ?? String(row.failure),
  left: true,
};
const after: ShownColumn = {
  head: () => ['after', 'h'],
  cell: ({ after_s }: RowByKey) => (typeof after_s === 'number' ? fixed(after_s / 3600, 1) : noNumber),
};

/** So many clauses make a sentence. */
const MOST_BRIEFS = 3;

export const breaksWords: AnswerWords = {
  title: answerTitles.breaks,
  sentence: (answer, say) => {
    const told = Object.values(failureWords).flatMap(({ brief }) => brief?.(answer.facts, say) || []);
    const [first = 'Stopped before anything was through', ...others] = told.slice(0, MOST_BRIEFS);
    return `${[first[0].toUpperCase() + first.slice(1), ...others].join('; ')}.`;
  },
  reason: (answer) => {
    const [many, spared] = [applying(answer).length, rowsOf(answer, 'spared').length];
    return `${many} of ${many + spared} failures can happen to this plant; each is tried alone.`;
  },
  more: (answer, say) =>
    applying(answer).flatMap((key) => {
      const words = failureWords[key];
      const told = story(answer, key, say);
      if (!words || !told) return [];
      const mind = words.mind ? ` Mind: ${words.mind}.` : '';
      return [`${words.title}. ${told} What protects: ${words.protects}${mind}`];
    }),
  tables: [
    {
      key: 'failures',
      title: () => 'What fails, when it first does harm, and the temperature it leads to',
      // A coil that is shut off has a table of its own.
      rows: ({ failure }) => failure !== 'trapped',
      columns: [
        failure,
        after,
        numberColumn('reaches', 'reached_C', 'temperature'),
        numberColumn('without', 'plain_C', 'temperature'),
        numberColumn('more a day', 'more_K', 'temperature_difference', 1),
      ],
    },
    {
      key: 'trapped',
      title: () => 'Coils shut at both ends: warming that passes the tube’s rating, and what would tear it',
      columns: [
        { head: () => ['coil', ''], cell: ({ coil }) => String(coil), left: true },
        numberColumn('shut at', 'from_C', 'temperature'),
        numberColumn('rated', 'rated_Pa', 'pressure'),
        numberColumn('warming', 'rated_K', 'temperature_difference', 1),
        numberColumn('tears', 'burst_Pa', 'pressure'),
        numberColumn('warming', 'burst_K', 'temperature_difference', 1),
      ],
    },
    {
      key: 'spared',
      title: () => 'What cannot happen here',
      columns: [
        failure,
        {
          head: () => ['because', ''],
          cell: ({ why }) => notApplyingWords[String(why)] ?? String(why),
          left: true,
        },
      ],
    },
  ],
  curves: [
    {
      key: 'away',
      title: () => 'Top of the store over two weeks away',
      lines: { usual: 'somebody home', away: 'nobody home', limitless: 'and the high limit fails' },
    },
    {
      key: 'off',
      title: () => 'Store, mean, over three days of failure and three more',
      lines: { usual: 'nothing fails', off: 'engine off', power: 'no power' },
    },
  ],
  headline: {
    away_top_C: 'top of the store with nobody home',
    trapped_rated_K: 'warming to the tube’s rating',
    off_mean_C: 'store after three days without the engine',
    power_mean_C: 'store after three days without power',
    lid_more_K: 'what an open lid costs a day',
  },
  cautions: {
    open_lid: () =>
      'Open hot water. An open store steams, and hot water under no lid is a danger to children and animals: cover and lock it.',
    thermosiphon: () =>
      'Hot pipes. A loop that warms by itself also fills pipes with hot liquid where nobody expects it: treat every pipe as hot.',
    coolant: () => 'Hot engine. Never open a hot engine’s cap: what is under pressure flashes to steam.',
    freezing_pipe: () =>
      'Ice splits pipes. It does so unseen and floods the place when it thaws: shut the water off before thawing, and never thaw with a flame.',
  },
};
