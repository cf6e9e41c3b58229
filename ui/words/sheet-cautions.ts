/** The build sheet's cautions: those that the run gives cause for, with its numbers, then the rest, which always hold. */
import type { BuildSheet, Caution, SectionFacts } from '../../sim/index.ts';
import type { Both } from './both.ts';
import type { CautionKey } from './caution-titles.ts';
import { burnWords, sayCaution } from './cautions.ts';
import type { Speak } from './speak.ts';

interface Hazard {
  word: string;
  /** What the run shows of it, by the run's cautions; `value` is the caution's number, null if it has none. */
  cause: Partial<Record<CautionKey, (value: number | null, speak: Speak) => string>>;
  /** Whether a plant has what it is about. */
  there: (facts: SectionFacts) => boolean;
  /** What to do, whatever the run shows. */
  todo: (speak: Speak) => string;
}

const sentenceOf = (clause: string) => `${clause[0].toUpperCase()}${clause.slice(1)}.`;

/** A number where there is one. */
const at = (value: number | null, say: (value: number) => string, words: (said: string) => string) =>
  value === null ? '' : words(say(value));

const hazards: Hazard[] = [
  {
    word: 'Scald',
    cause: {
      scald: (C, { temperature }) => `Water comes to the tap${at(C, temperature, (T) => ` at ${T}`)}.`,
      scald_no_valve: (C, { temperature }) =>
        `No valve limits what reaches the tap${at(C, temperature, (T) => `, water of ${T}`)}.`,
    },
    there: ({ taps }) => taps !== null,
    todo: (speak) =>
      `${sentenceOf(burnWords(speak))} Mixing valve at the store, at ${speak.temperature(48.9)} or less, check valves on both its legs; test at the tap.`,
  },
  {
    word: 'Trapped coil',
    cause: {
      trapped_coil: (C, { temperature }) =>
        `Closed taps, valves or caps shut liquid in a coil${at(C, temperature, (T) => ` in a store of up to ${T}`)}; a few degrees burst it.`,
    },
    there: ({ coils }) => coils.length > 0,
    todo: () =>
      'Whatever can be shut in gets a relief with no valve before it, piped to a safe place, and room to expand. Never cap a relief.',
  },
  {
    word: 'Carbon monoxide',
    cause: {
      carbon_monoxide: (s, { time }) =>
        `The engine runs${at(s, time, (t) => ` for ${t} here`)}; it kills without a smell.`,
    },
    there: ({ engine }) => engine !== null,
    todo: ({ length }) =>
      `Engine out of living space, exhaust ${length(6.1)} or more from any opening, alarms with batteries where people sleep.`,
  },
  {
    word: 'Coolant',
    cause: { coolant_poison: () => 'It is ethylene glycol, a poison.' },
    there: ({ engine, collector }) => engine !== null || collector !== null,
    todo: () =>
      'One pinhole puts it into the store, a second into the tap. Inhibited propylene glycol or two walls, dye, a watched level, household water at the higher pressure; never drink from the store.',
  },
  {
    word: 'Boil-over',
    cause: {
      boil_over: (C, { temperature }) =>
        `The top of the store reaches${at(C, temperature, (T) => ` ${T}`)} near boiling, and nothing stops it.`,
      boiling: (kg, { mass }) => `The store boils${at(kg, mass, (m) => `: ${m} go as steam`)}.`,
    },
    there: () => true,
    todo: () =>
      'A vent that can neither ice up nor be blocked, an overflow to a drain, a high limit, a cover or dump for the day the pump stands still; the radiator kept working.',
  },
  {
    word: 'Liner, foam, wall',
    cause: {
      liner_limit: (C, { temperature }) =>
        `The liner gets past its limit${at(C, temperature, (T) => `: ${T}`)}.`,
      foam_limit: (C, { temperature }) =>
        `The foam gets past its limit${at(C, temperature, (T) => `: ${T}`)}.`,
      wall_limit: (C, { temperature }) =>
        `The wall gets past its limit${at(C, temperature, (T) => `: ${T}`)}.`,
    },
    there: () => true,
    todo: () =>
      'A pump or limit that fails can take them past. Lower the high limit; lay a pan with a leak alarm.',
  },
  {
    word: 'Freezing',
    cause: {
      freezing_loop: (C, { temperature }) =>
        `The collector’s loop falls${at(C, temperature, (T) => ` to ${T}`)} below its freezing point.`,
      freezing_cistern: (C, { temperature }) => `The cistern falls${at(C, temperature, (T) => ` to ${T}`)}.`,
    },
    there: () => true,
    todo: () =>
      'No trapped low spot, tested glycol or a slope to drain, pump and pipes sheltered; blow coils out before they stand cold.',
  },
  {
    word: 'Weight',
    cause: { weight: (kg, { mass }) => `Filled it weighs${at(kg, mass, (m) => ` ${m}`)} without its box.` },
    there: () => true,
    todo: () =>
      'On the ground, or on a floor that was checked; band the box, corners and middles burst; pan, drain, a lid locked against children.',
  },
  {
    word: 'Legionella',
    cause: {
      legionella: (C, { temperature }) =>
        `Household water stands in a coil${at(C, temperature, (T) => ` at ${T} at times`)}.`,
    },
    there: ({ taps }) => taps !== null,
    todo: ({ temperature }) =>
      `It grows from ${temperature(20)} to ${temperature(50)}. Short dead ends, flush after idle days, heat through above ${temperature(60)} at times; nothing here certifies it.`,
  },
  {
    word: 'Wiring',
    cause: { wiring: () => 'Pumps stand beside open water.' },
    there: () => true,
    todo: () =>
      'Fuse at the battery, cable for the starting current, ground-fault protection on mains, drip loops, no joint above the water, the generator isolated from any other supply.',
  },
];

const severities: Caution['severity'][] = ['danger', 'warning', 'note'];

export interface SheetCaution {
  severity: Caution['severity'];
  title: string;
  text: string;
}

export interface SheetCautions {
  /** The worst first. */
  cause: SheetCaution[];
  /** Without a severity: nothing was seen. */
  standing: Omit<SheetCaution, 'severity'>[];
}

/**
 * What hurts people is always told. Other dangers and warnings of the run follow; its notes, which are about figures,
 * stay with the figures.
 */
export function sheetCautions(
  cautions: readonly Caution[],
  facts: SectionFacts,
  { weight }: BuildSheet,
  { speak }: Both,
): SheetCautions {
  const told = hazards.map((hazard) => {
    const own = cautions.filter(({ key }) => key in hazard.cause);
    const causes = own.map(({ key, value = null }) =>
      // The sheet has one weight, with the coils and without the water they displace.
      hazard.cause[key as CautionKey]?.(key === 'weight' ? weight.filled_kg : value, speak),
    );
    const text = [...new Set(causes), hazard.todo(speak)].join(' ');
    return { hazard, worst: severities.find((each) => own.some(({ severity }) => severity === each)), text };
  });
  const others = cautions.filter(
    ({ key, severity }) => severity !== 'note' && !hazards.some(({ cause }) => key in cause),
  );
  const cause = [
    ...told.flatMap(({ hazard, worst, text }) =>
      worst === undefined ? [] : [{ severity: worst, title: hazard.word, text }],
    ),
    ...others.map((caution) => {
      const { title, says, todo } = sayCaution(caution, speak);
      return { severity: caution.severity, title, text: `${says} ${todo}`.trim() };
    }),
  ];
  return {
    cause: cause.sort((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity)),
    standing: told.flatMap(({ hazard, worst, text }) =>
      worst === undefined && hazard.there(facts) ? [{ title: hazard.word, text }] : [],
    ),
  };
}

export const sheetCautionWords = {
  title: 'Cautions',
  cause: 'With cause in this run:',
  standing: 'No cause seen in this run, and true all the same:',
} as const;
