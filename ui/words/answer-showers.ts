/** Words of the showers' answer. */
import { type Answer, type Banded, minded } from '../../sim/index.ts';
import { answerTitles } from './answer-titles.ts';
import { type AnswerWords, limitWords, numberColumn } from './answers.ts';
import { burnWords } from './cautions.ts';
import { nameText } from './input-text.ts';
import { counted, formFor } from './locale.ts';
import { noNumber, type Say } from './say.ts';
import { speakIn } from './speak.ts';

/** Whole showers of a fact and of its band: the last one's warm share is no shower. */
function whole({ value, low, high }: Banded): string {
  const [many, least, most] = [value, low, high].map((each) => Math.floor(each + 1e-6));
  const text = counted(many, 'shower');
  return least === most ? text : `${text} (${least} to ${most})`;
}

function sentence(answer: Answer, say: Say): string {
  const { facts } = answer;
  const { showers, showers_dull, into_s, tried, dull_days, wanted_C, lasts_s, flow_m3_s } = facts;
  if (!showers) return 'The row of showers was not computed.';
  const each = `${say.quantity(lasts_s.value, 'time')} each, ${say.quantity(flow_m3_s.value, 'flow')} at ${say.quantity(wanted_C.value, 'temperature')}`;
  const now = minded(answer, 'never_ran_cold')
    ? `All ${tried.value} showers tried in a row stay warm now (${each})`
    : `${whole(showers)} in a row now (${each})`;
  const next =
    into_s && into_s.value > 0 ? `; the next turns cold after ${say.quantity(into_s.value, 'time', 2)}` : '';
  const then = showers_dull ? `; after ${counted(dull_days.value, 'dull day')} ${whole(showers_dull)}` : '';
  return `${now}${next}${then}.`;
}

function reason({ limit, facts }: Answer, say: Say): string {
  const whys: Partial<Record<Answer['limit'], string>> = {
    coil: 'it wants the store far hotter than the shower, and most of the heat stays where it is',
    store: 'what it holds above the shower’s temperature is soon used up',
    pump: 'it pushes less through coil, pipe and head than the shower asks for',
  };
  const why = whys[limit];
  const warm = facts.warm_s ? ` Warm water runs for ${say.banded(facts.warm_s)} in all.` : '';
  return `${limitWords[limit]}${why ? `: ${why}` : ''}.${warm}`;
}

function waits(answer: Answer, say: Say): string[] {
  if (answer.stopped || minded(answer, 'never_ran_cold')) return [];
  const { facts, tables } = answer;
  const asked = new Set(tables.waits.rows.map(([heating]) => heating));
  const told = (fact: Banded | undefined, how: string) =>
    fact ? `${say.quantity(fact.value, 'time', 2)} ${how}` : `not within two days ${how}`;
  const parts = [told(facts.wait_none_s, 'if nothing heats')];
  if (asked.has('engine')) parts.push(told(facts.wait_engine_s, 'with the engine started at once'));
  if (asked.has('planned'))
    parts.push(told(facts.wait_planned_s, 'with engine and sun as planned, from the household’s own hour'));
  return [`The next warm shower after that: ${parts.join('; ')}.`];
}

function feel({ facts }: Answer, say: Say): string[] {
  const { warm_up_s, slug_C, hottest_tap_C, steady_C, again_hottest_C, again_coldest_C } = facts;
  const temperature = (fact: Banded) => say.quantity(fact.value, 'temperature', 3);
  const first = warm_up_s
    ? `Turned on now, it is warm after ${say.quantity(warm_up_s.value, 'time', 2)}`
    : 'Turned on now, it never gets warm';
  return [
    `${first}; what stood in the coil comes at up to ${temperature(slug_C)}, the hot line brings up to ${temperature(hottest_tap_C)} to the tap and ${temperature(steady_C)} after eight minutes. Turned on again after a minute’s pause it brings ${temperature(again_coldest_C)} to ${temperature(again_hottest_C)}.`,
  ];
}

function ownDay({ facts }: Answer): string[] {
  const { day_showers, day_warm_showers } = facts;
  if (!day_showers || day_showers.value === 0) return [];
  return [
    `On the household’s worst day as the scenario runs it, ${day_warm_showers.value} of ${counted(day_showers.value, 'shower')} ${formFor(day_showers.value, { one: 'is', other: 'are' })} warm to the end.`,
  ];
}

export const showersWords: AnswerWords = {
  title: answerTitles.showers,
  sentence,
  reason,
  more: (answer, say) => [...waits(answer, say), ...feel(answer, say), ...ownDay(answer)],
  tables: [
    {
      key: 'dull',
      title: () => 'Showers in a row after dull days; > is the one told of above',
      columns: [
        numberColumn('dull days', 'dull_days', 'count'),
        numberColumn('warm showers', 'showers_whole', 'count'),
        numberColumn('and then', 'into_s', 'time', 1),
        numberColumn('warm water', 'warm_s', 'time', 1),
      ],
    },
    {
      key: 'day',
      title: () => 'The household’s worst day, as the scenario heats and draws',
      columns: [
        { head: () => ['draw', ''], cell: ({ draw }) => nameText(String(draw)), left: true },
        { head: () => ['at', ''], cell: ({ at_s }, say) => say.quantity(Number(at_s), 'clock') },
        numberColumn('lasts', 'lasts_s', 'time', 1),
        numberColumn('wanted', 'wanted_C', 'temperature'),
        {
          head: () => ['warm after', 's'],
          cell: ({ warm_up_s }) => (warm_up_s === null ? 'never' : String(warm_up_s)),
        },
        {
          head: () => ['cold for', 's'],
          cell: ({ cold_s }) => (cold_s === null ? noNumber : String(cold_s)),
        },
        numberColumn('coldest', 'lowest_C', 'temperature'),
        numberColumn('hottest', 'hottest_C', 'temperature'),
      ],
    },
  ],
  curves: [
    {
      key: 'feel',
      title: () => 'At the tap, second by second: on, off for a minute after 8 min, on again',
      lines: { hot_line_C: 'hot line at the tap' },
    },
  ],
  headline: { showers: 'showers' },
  cautions: {
    pause_scald: ({ facts }, say) =>
      `After a pause the hot line brings ${say.quantity(facts.again_hottest_C.value, 'temperature', 3)} to the tap at once: mix before stepping under, or set a thermostatic mixing valve lower.`,
    scald: ({ facts }, say) =>
      `Water reaches ${say.quantity(facts.hottest_tap_C.value, 'temperature', 3)} at the tap before a hand mixes it; ${burnWords(speakIn(say.units))}. Set the thermostatic mixing valve no higher than ${say.quantity(48.9, 'temperature', 3)} and test at the tap.`,
    never_ran_cold: () => 'None of the showers tried ran cold; how many more there are was not tried.',
    day_ran_cold: () => 'The household’s own showers run cold: see its worst day below.',
  },
};
