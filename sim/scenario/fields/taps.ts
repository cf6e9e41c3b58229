/** Fields of the household: what is drawn, when and how hot, and the pipe to the taps. */
import {
  byDefault,
  choice,
  count,
  days,
  derived,
  flag,
  group,
  list,
  optional,
  type Presence,
  quantity,
  required,
  text,
} from '../field.ts';
import { PATTERN_NAMES } from '../patterns.ts';
import { pipeFields, surroundings } from './shared.ts';
import { tube } from './tube.ts';

const CLOCK = [0, 86_400] as const;
const FLOW = [1e-6, 1e-3] as const;
const WANTED = [15, 80] as const;
const RATED = [2e4, 1e6] as const;
const BEHIND_SMALL_PUMP = 'a bucket test behind a small pump; a label says 80 psi';

function ratedPressure<P extends Presence<string>>(presence: P) {
  return quantity('pressure at which the head gives its flow', 'pressure', RATED, '20 psi', presence, {
    band: ['10 psi', '80 psi'],
    measure:
      'Read a gauge at the head while you time the bucket; for a flow read off a label write the pressure on the label.',
  });
}

const shower = group(
  'showers, one after another',
  {
    name: text('name', byDefault('shower', 'D', 'its name')),
    at: quantity('first starts at', 'clock', CLOCK, '7:00 am', required),
    days: days('days', byDefault('every day', 'D', 'habit')),
    people: count('people, one after another', [1, 50], byDefault(1, 'D', 'one person')),
    gap: quantity('pause between two', 'time', [0, 7200], '5 min', byDefault('5 min', 'D', 'changing over')),
    lasts: quantity(
      'minutes of running water',
      'time',
      [10, 7200],
      '8 min',
      byDefault('8 min', 'B', 'trade habit; published mean 7.8 min (from memory)'),
      {
        band: ['5 min', '12 min'],
        measure: 'Time three showers with a clock.',
      },
    ),
    flow: quantity(
      'flow at the head',
      'flow',
      FLOW,
      '1.75 gpm',
      byDefault('1.75 gpm', 'D', 'low-flow head behind a small pump'),
      {
        band: ['1.25 gpm', '2.5 gpm'],
        measure: 'Catch the shower in a bucket: gpm = 300 / seconds for 5 gallons.',
      },
    ),
    temperature: quantity(
      'wanted temperature',
      'temperature',
      WANTED,
      '105 F',
      byDefault('105 F', 'D', 'comfortable shower'),
      {
        band: ['100 F', '108 F'],
        measure: 'Hold a thermometer in the stream when it feels right.',
      },
    ),
    rated_pressure: ratedPressure(byDefault('20 psi', 'D', BEHIND_SMALL_PUMP)),
  },
  required,
);

const draw = group(
  'draw',
  {
    name: text('name', required),
    at: quantity('starts at', 'clock', CLOCK, '6:30 pm', required),
    days: days('days', byDefault('every day', 'D', 'habit')),
    lasts: quantity('how long it runs', 'time', [1, 86_400], '3 min', optional('a volume is given instead')),
    volume: quantity('how much is drawn', 'volume', [1e-5, 2], '4 gal', optional('a time is given instead')),
    flow: quantity('flow wanted', 'flow', FLOW, '1.5 gpm', required),
    temperature: quantity('wanted temperature', 'temperature', WANTED, '110 F', required),
    outlet: choice('outlet', ['tap', 'head'], byDefault('tap', 'D', 'throttled by hand')),
    rated_pressure: ratedPressure(derived('20 psi for a head', 'D', BEHIND_SMALL_PUMP)),
  },
  required,
);

export const taps = group(
  'household',
  {
    coil: text('name of the coil that heats its water', required),
    showers: list('showers', shower, [0, 50], byDefault([], 'D', 'none named')),
    draws: list('other draws', draw, [0, 200], byDefault([], 'D', 'none named')),
    pattern: group(
      'published day of draws',
      {
        name: choice('pattern', PATTERN_NAMES, required),
        starts: quantity(
          'clock time of the US patterns’ first draw',
          'clock',
          CLOCK,
          '6:30 am',
          byDefault(
            '6:30 am',
            'D',
            'the US patterns count from their start; the EU profiles name clock times',
          ),
        ),
      },
      optional('no published pattern'),
    ),
    mixing_valve: group(
      'mixing valve near the store',
      {
        fitted: flag('fitted', required),
        set: quantity(
          'hottest it lets through',
          'temperature',
          [30, 70],
          '120 F',
          byDefault('120 F', 'A', 'scald times: 5 minutes at 120 F'),
          {
            band: ['115 F', '125 F'],
            measure: 'Run only hot at the nearest tap when the store is hot and read a thermometer.',
          },
        ),
      },
      byDefault({ fitted: true }, 'A', 'a store runs hotter than skin bears'),
    ),
    pipe: group(
      'pipe to the taps',
      {
        length: pipeFields('30 ft', '5/8 in').length,
        tube: tube(byDefault({ kind: 'PEX', size: '1/2 in' }, 'D', 'common household pipe')),
        foam: pipeFields('30 ft', '5/8 in').foam,
        conductance: pipeFields('30 ft', '5/8 in').conductance,
        stands: surroundings(
          'where it runs',
          byDefault({ where: 'room', temperature: '65 F' }, 'D', 'inside the house'),
        ),
      },
      byDefault({}, 'D', 'a short run of half-inch pipe'),
    ),
  },
  optional('nobody draws water'),
);
