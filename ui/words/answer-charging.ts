/** Words of the engine's coil. */
import { type Answer, minded } from '../../sim/index.ts';
import { answerTitles } from './answer-titles.ts';
import { type AnswerWords, limitWords, numberColumn } from './answers.ts';
import type { Say } from './say.ts';

function sentence(answer: Answer, say: Say): string {
  const { facts, headline } = answer;
  const load = say.quantity(facts.output_W.value, 'electric_power');
  if (headline === 'radiator_from_C') {
    return `At ${load} all the engine’s heat fits into the store until it is at ${say.banded(facts.radiator_from_C)}; above that the radiator takes over.`;
  }
  const share = `into a store of ${say.quantity(facts.tank_C.value, 'temperature')} go ${say.banded(facts.to_store_W)} of ${say.value(facts.jacket_W)}`;
  return minded(answer, 'radiator_always')
    ? `At ${load} the coil never takes all the engine’s heat: ${share}, and the radiator throws the rest away.`
    : `At ${load} the coil takes all the engine’s heat up to a boiling store: ${share}.`;
}

function reason({ facts, limit }: Answer, say: Say): string {
  const carries = `into ${say.quantity(facts.tank_C.value, 'temperature')} it carries ${say.banded(facts.to_store_W)}`;
  if (limit === 'coil') {
    return `${limitWords.coil}: ${carries}, while the coolant brings ${say.banded(facts.jacket_W)} and the radiator throws ${say.value(facts.radiator_W)} away.`;
  }
  return `${limitWords.engine}: ${carries}, all that the coolant brings but for the pipes’ loss; at its rated output ${say.value(facts.to_store_rated_W)}.`;
}

export const chargingWords: AnswerWords = {
  title: answerTitles.charging,
  sentence,
  reason,
  more: ({ facts }, say) =>
    facts.warm_return_from_C
      ? [
          `Coolant comes back at ${say.banded(facts.return_C)}; from a store of ${say.banded(facts.warm_return_from_C)} on it comes back as warm as the engine likes.`,
        ]
      : [
          `Coolant comes back at ${say.banded(facts.return_C)}, colder than the engine likes whatever the store.`,
        ],
  tables: [
    {
      key: 'tank',
      title: ({ facts }, say) =>
        `Heat into the store, at ${say.quantity(facts.output_W.value, 'electric_power')} and at rated output`,
      columns: [
        numberColumn('store', 'tank_C', 'temperature'),
        numberColumn('to store', 'to_store_W', 'power', 1),
        numberColumn('radiator', 'radiator_W', 'power', 1),
        numberColumn('returns', 'return_C', 'temperature'),
        numberColumn('engine', 'block_C', 'temperature'),
        numberColumn('coolant', 'coolant_flow_m3_s', 'flow', 1),
        numberColumn('rated: to store', 'to_store_rated_W', 'power', 1),
        numberColumn('radiator', 'radiator_rated_W', 'power', 1),
      ],
    },
  ],
  curves: [
    {
      key: 'tank',
      title: () => 'Heat into the store over its temperature',
      lines: { to_store_W: 'at its usual load', to_store_rated_W: 'at rated output' },
      knee: 'the radiator takes over',
    },
  ],
  headline: { radiator_from_C: 'store at which the radiator takes over', to_store_W: 'heat into the store' },
  cautions: {
    radiator_always: () =>
      'Even a cold store cannot take all the heat through this coil: more tube, spread turns or a second roll would.',
    radiator_never: () =>
      'The radiator never takes over before the store boils: keep it working all the same.',
    engine_cold: ({ facts }, say) =>
      `Coolant returns at ${say.banded(facts.return_C)}; an engine run cold wears faster and soots. Keep its own thermostat, never bypass it; a valve that mixes warm coolant into the return helps.`,
  },
};
