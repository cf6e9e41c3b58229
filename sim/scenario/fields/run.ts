/** Fields of the run: what to simulate and how finely. */
import {
  byDefault,
  choice,
  count,
  date,
  derived,
  group,
  list,
  optional,
  plain,
  quantity,
  required,
  variants,
} from '../field.ts';
import { AMBIENT, WATER } from './shared.ts';

export const WEEKDAYS = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
] as const;

/** A year of seconds. */
const IN_RUN = [0, 366 * 86_400] as const;

const whileItLasts = {
  from: quantity(
    'begins, from the start of the run',
    'time',
    IN_RUN,
    '3 days',
    byDefault('0 s', 'D', 'fails from the start'),
  ),
  to: quantity('ends, from the start of the run', 'time', IN_RUN, '6 days', optional('at the run’s end')),
};

export const run = group(
  'run',
  {
    from: date('first day', byDefault('01-01', 'D', 'start of the year')),
    first_weekday: choice(
      'weekday of the first day',
      WEEKDAYS,
      derived('from the date, Monday if it names no year', 'D', 'calendar'),
    ),
    days: count('days', [1, 366], byDefault(7, 'D', 'a week shows cloudy and clear days')),
    interval: quantity(
      'a sample every',
      'time',
      [10, 86_400],
      '5 min',
      byDefault('5 min', 'D', 'fine enough to plot'),
    ),
    layers: count(
      'layers of the store',
      [3, 100],
      byDefault(20, 'D', 'measured for this kind of model: 20 layers were within 0.5 % of 160'),
    ),
    tolerance: plain(
      'relative tolerance of the integration',
      [1e-8, 1e-2],
      derived(
        '0.0001, and 0.002 for more than 60 days',
        'D',
        'measured for this kind of model: hundredths of a kelvin; 0.2 % of a year’s heat by any path',
      ),
    ),
    start: group(
      'store at the start',
      {
        bottom: quantity('water at the bottom', 'temperature', WATER, '100 F', required),
        top: quantity(
          'water at the top',
          'temperature',
          WATER,
          '120 F',
          derived('same as the bottom', 'D', 'a stirred store'),
        ),
      },
      derived('100 F at the bottom, 120 F at the top', 'D', 'a store in use'),
    ),
    faults: list(
      'what fails during the run',
      variants(
        'failure',
        'kind',
        {
          'collector pump': whileItLasts,
          engine: whileItLasts,
          household: whileItLasts,
          'cold spell': {
            ...whileItLasts,
            temperature: quantity('air outdoors no warmer than', 'temperature', AMBIENT, '-22 F', required),
          },
        },
        required,
      ),
      [0, 20],
      optional('nothing fails'),
    ),
  },
  byDefault({}, 'D', 'one week from the first of January'),
);
