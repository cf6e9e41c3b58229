/** Words of the coil's answer. */
import type { Answer, Banded } from '../../sim/index.ts';
import { answerTitles } from './answer-titles.ts';
import {
  type AnswerWords,
  limitWords,
  numberColumn,
  type RowByKey,
  rowsOf,
  type ShownColumn,
} from './answers.ts';
import { burnWords } from './cautions.ts';
import { fromSim } from './from-sim.ts';
import { counted, numberText } from './locale.ts';
import { noNumber, type Say } from './say.ts';
import { speakIn } from './speak.ts';
import { systemOf } from './units.ts';

/** `3/4 in plumbing L`: a tube's label, short enough for a table. */
export function shortTube(label: string): string {
  const short = label.replace(/ ?tube(, type)?/, '').replace('plain ', '');
  const [, size, kind] = /^(\S+ (?:in|mm)) (.+)$/.exec(short) ?? [];
  return kind === undefined ? fromSim(label) : `${size} ${fromSim(kind)}`;
}

/** `3/4 in plumbing L, 2x60 ft series`, with a star where it takes more than one winding, `!` where the store it needs is too hot. */
function coilName(row: RowByKey, say: Say): string {
  const rolls = Number(row.rolls);
  const length = say.number(row.roll_length_m as number, 'length');
  const join = row.join === null ? '' : ` ${fromSim(String(row.join))}`;
  return `${shortTube(String(row.tube))}, ${rolls}x${length} ${say.unit('length')}${join}${Number(row.windings) > 1 ? ' *' : ''}${row.too_hot_for === null ? '' : ' !'}`;
}

const columns: ShownColumn[] = [
  { head: () => ['coil', ''], cell: coilName, left: true },
  numberColumn('store', 'lowest_tank_C', 'temperature'),
  numberColumn('tap', 'tap_flow_m3_s', 'flow', 2),
  numberColumn('left', 'tap_pressure_Pa', 'pressure'),
  numberColumn('lost', 'pressure_drop_Pa', 'pressure', 1),
  numberColumn('holds', 'content_m3', 'volume', 1),
  {
    head: () => ['price', ''],
    cell: (row, say) => (row.price === null ? noNumber : say.money(row.price as number)),
  },
];

function sentence({ facts, headline, limit }: Answer, say: Say): string {
  const { wanted_C, tank_C } = facts;
  if (headline === 'lowest_tank_C') {
    const starved = limit === 'pump' ? ` with what the pump gives it, ${say.value(facts.tap_flow_m3_s)}` : '';
    return `The store must be at ${say.banded(facts.lowest_tank_C)} or warmer for a shower of ${say.quantity(wanted_C.value, 'temperature')}${starved}.`;
  }
  return `No store below boiling gives a shower of ${say.quantity(wanted_C.value, 'temperature')}: from ${say.quantity(tank_C.value, 'temperature')} the coil gives ${say.banded(facts.outlet_C)}.`;
}

function reason({ facts, limit }: Answer, say: Say): string {
  const { effectiveness, tank_C, flow_m3_s, cold_C, outlet_C } = facts;
  const gives = `from a store of ${say.quantity(tank_C.value, 'temperature')} it turns ${say.quantity(flow_m3_s.value, 'flow')} of ${say.quantity(cold_C.value, 'temperature')} into ${say.banded(outlet_C)}, ${say.banded(effectiveness)} of what an endless coil would give`;
  if (limit === 'pump') {
    return `${limitWords.pump}: it pushes only ${say.banded(facts.tap_flow_m3_s)} through coil, pipe and head; ${gives}.`;
  }
  if (limit === 'store') return `${limitWords.store}, more tube would hardly help: ${gives}.`;
  return `${limitWords[limit]}: ${gives}.`;
}

/** Same footage in series and in parallel: what they give and what they cost in pressure. */
function joined(answer: Answer, say: Say): string[] {
  const [series, parallel] = rowsOf(answer, 'joined');
  if (!series || !parallel) return [];
  const lost = (row: RowByKey) => Number(row.pressure_drop_Pa);
  const times = numberText(Number((lost(series) / lost(parallel)).toPrecision(2)));
  const needs = (row: RowByKey) =>
    row.lowest_tank_C === null
      ? 'more than boiling'
      : say.quantity(Number(row.lowest_tank_C), 'temperature', 3);
  return [
    `At the same flow ${counted(Number(series.rolls), 'roll')} in series lose ${times} times the pressure of the same in parallel (${say.quantity(lost(series), 'pressure', 2)} and ${say.quantity(lost(parallel), 'pressure', 2)}); the store they need is ${needs(series)} and ${needs(parallel)}.`,
  ];
}

/** The store that the layered figure is for: as a scenario starts, or of one temperature. */
function startWords({ bottom_C, top_C }: Answer['facts'], say: Say): string {
  const [bottom, top] = [bottom_C, top_C].map(({ value }) => say.quantity(value, 'temperature'));
  return bottom === top
    ? `With a store of ${top} throughout`
    : `With the store as the scenario starts, ${bottom} at the bottom and ${top} at the top,`;
}

function more(answer: Answer, say: Say): string[] {
  const { facts, curves } = answer;
  const knee = curves.length?.knee ?? null;
  return [
    `The first ${say.value(facts.content_m3)} are what stood in the coil; then the steady stream comes at ${say.value(facts.velocity_m_s)} through the tube, and the coil takes ${say.banded(facts.pressure_drop_Pa)}.`,
    `${startWords(facts, say)}${facts.valve_C ? ` and a mixing valve set to ${say.value(facts.valve_C)}` : ''} the hot line brings ${say.banded(facts.layered_C)} to the tap.`,
    ...(knee === null
      ? []
      : [
          `More stops paying at about ${say.quantity(knee, 'length', 2)} in all: there a further ${systemOf(say.units, 'length') === 'US' ? 'foot' : 'metre'} brings a quarter of what the first one brought.`,
        ]),
    ...joined(answer, say),
    ...(facts.price ? [`Its tube and joints cost ${say.banded(facts.price)}.`] : []),
  ];
}

/** The two tubes that go by one size, side by side. */
function namesake(answer: Answer, say: Say): string {
  const [own, other] = rowsOf(answer, 'namesake');
  const told = (row: RowByKey) =>
    `${shortTube(String(row.tube))} holds ${say.number(Number(row.content_m3), 'volume', 2)} ${say.unit('volume')}, loses ${say.quantity(Number(row.pressure_drop_Pa), 'pressure', 2)} and needs a store of ${row.lowest_tank_C === null ? 'more than boiling' : say.quantity(Number(row.lowest_tank_C), 'temperature', 3)}`;
  return `Two tubes go by this size: ${told(own)}; ${told(other)}. Put a caliper across the outside: plumbing tube measures 1/8 in more than its name, refrigeration tube measures its name.`;
}

const known = (fact: Banded | undefined, say: Say) => (fact ? say.banded(fact) : noNumber);

export const coilWords: AnswerWords = {
  title: answerTitles.coil,
  sentence,
  reason,
  more,
  tables: [
    {
      key: 'worth',
      title: ({ facts }, say) =>
        `Coils that nothing cheaper beats, for ${say.quantity(facts.flow_m3_s.value, 'flow')} at ${say.quantity(facts.wanted_C.value, 'temperature')}; > is the present one; * needs windings side by side; ! needs a store hotter than its tube is rated for, or near boiling. "store" is the coldest that will do.`,
      columns,
    },
  ],
  curves: [
    {
      key: 'length',
      title: ({ facts }, say) =>
        `Outlet over length of tube, store at ${say.quantity(facts.tank_C.value, 'temperature')}`,
      lines: { outlet_C: 'outlet' },
      knee: 'more stops paying',
    },
  ],
  headline: { lowest_tank_C: 'store', outlet_C: 'outlet' },
  cautions: {
    namesake,
    prices_invented: () =>
      'Prices are invented, for show, until you type your own under "prices": the order of the coils hangs on them.',
    no_store_hot_enough: () =>
      'Even a boiling store does not give this shower through this coil: add tube, or wish for less.',
    valve_below_wanted: ({ facts }, say) =>
      `The mixing valve lets through less than the ${say.quantity(facts.wanted_C.value, 'temperature')} wanted: no store helps.`,
    pump_at_limit: ({ facts }, say) =>
      `The tap gets ${known(facts.tap_flow_m3_s, say)}, less than wanted: put rolls in parallel, use wider tube, or a thriftier head.`,
    tap_pressure_low: ({ facts }, say) =>
      `${known(facts.tap_pressure_Pa, say)} is left at the tap; heaters and mixing valves want ${say.quantity(137_895, 'pressure')} or more.`,
    flow_beyond_pump: ({ facts }, say) =>
      `At ${say.value(facts.flow_m3_s)} the coil alone takes ${known(facts.pressure_drop_Pa, say)}, more than the ${say.value(facts.pump_most_Pa)} the pump can give: that flow cannot be. The tap gets ${known(facts.tap_flow_m3_s, say)}; put rolls in parallel, use wider tube, or a thriftier head.`,
    scald: ({ facts }, say) =>
      `Scalding water. It leaves the coil at up to ${say.value(facts.hottest_outlet_C)}; ${burnWords(speakIn(say.units))}. Only the mixing valve, at ${say.value(facts.valve_C)}, stands between it and the tap: set it no higher than ${say.quantity(48.9, 'temperature', 3)} and test at the tap.`,
    valve_assumed: ({ facts }, say) =>
      `A mixing valve set to ${say.value(facts.valve_C)} is assumed, and nothing given says that one is fitted: without it the tap gets what leaves the coil.`,
    plastic_tube: ({ facts }, say) =>
      `Plastic tube too hot. PEX is rated to about ${say.quantity(82.2, 'temperature', 3)}, and to more only at less pressure; this asks for a store of ${say.value(facts.hottest_store_C)}. Use metal tube.`,
    tube_speed: ({ facts }, say) =>
      `Water runs at ${known(facts.velocity_m_s, say)} through the tube; copper wears away above ${say.quantity(1.524, 'speed')} hot, ${say.quantity(2.4384, 'speed')} cold.`,
  },
};
