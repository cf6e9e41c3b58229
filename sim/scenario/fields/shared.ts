/** Fields that several parts have: where a thing stands, what fills a loop, a run of pipe. */
import { byDefault, choice, derived, group, type Presence, quantity, required, variants } from '../field.ts';

/** Ambient air and ground anywhere a store might stand [C]. */
export const AMBIENT = [-50, 60] as const;
/** Water that may still be liquid in an open store [C]. */
export const WATER = [0, 100] as const;

/** A room with a daily swing, or outdoors with the weather's air. */
export function surroundings<P extends Presence>(label: string, presence: P) {
  return variants(
    label,
    'where',
    {
      room: {
        temperature: quantity(
          'mean air temperature',
          'temperature',
          AMBIENT,
          '55 F',
          byDefault('55 F', 'D', 'unheated shed in a cool season'),
          {
            band: ['40 F', '70 F'],
            measure:
              'Leave a thermometer beside it for a day and night and take the middle of the highest and lowest.',
          },
        ),
        swing: quantity(
          'daily swing, highest less lowest',
          'temperature_difference',
          [0, 50],
          '10 F',
          byDefault('10 F', 'D', 'shed with some insulation'),
          {
            band: ['0 F', '30 F'],
            measure: 'Highest less lowest reading of one day.',
          },
        ),
        warmest: quantity(
          'warmest time of day',
          'clock',
          [0, 86_400],
          '4:00 pm',
          byDefault('4:00 pm', 'D', 'rooms follow the afternoon air'),
        ),
        humidity: quantity('relative humidity', 'share', [0, 1], '50 %', byDefault('50 %', 'D', 'dry room'), {
          band: ['25 %', '80 %'],
        }),
      },
      outdoors: {},
    },
    presence,
  );
}

/** Water or a glycol mix; `kind` and `share` are what the part usually holds. */
export function fluid<P extends Presence>(label: string, usual: string, presence: P) {
  return group(
    label,
    {
      kind: choice('liquid', ['water', 'propylene glycol', 'ethylene glycol'], required),
      share: quantity('share of glycol', 'share', [0, 1], '50 %', derived(usual, 'D', 'the usual mix'), {
        band: ['30 %', '55 %'],
        measure: 'A glycol refractometer or float tester gives it from a few drops.',
      }),
      share_by: choice(
        'share counted by',
        ['volume', 'mass'],
        byDefault('volume', 'D', 'jugs are sold by volume'),
      ),
    },
    presence,
  );
}

/** Insulated pipe between a part and the store. */
export function pipeFields(length: string, outside: string) {
  return {
    length: quantity(
      'length, there and back',
      'length',
      [0, 300],
      '20 ft',
      byDefault(length, 'D', 'parts stand near each other'),
      {
        band: ['5 ft', '100 ft'],
        measure: 'Run a tape along the pipe, both ways.',
      },
    ),
    outside: quantity(
      'outside diameter',
      'length',
      [0.004, 0.1],
      '7/8 in',
      byDefault(outside, 'D', 'common pipe'),
    ),
    foam: quantity(
      'thickness of pipe insulation',
      'length',
      [0, 0.15],
      '1/2 in',
      byDefault('1/2 in', 'D', 'slip-on foam'),
      {
        band: ['0 in', '1 in'],
      },
    ),
    conductance: quantity(
      'heat lost per length and degree',
      'conductance_per_length',
      [0, 10],
      '0.25 W/(m K)',
      derived('from diameter and foam', 'D', 'conduction through the foam and a still-air film'),
    ),
  };
}
