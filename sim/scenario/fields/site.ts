/** Fields of the place and its weather. */
import {
  byDefault,
  choice,
  count,
  derived,
  group,
  list,
  optional,
  type Presence,
  quantity,
  required,
  text,
  variants,
} from '../field.ts';

const CLIMATES = ['cloudy', 'average', 'clear'] as const;

export const site = group(
  'site',
  {
    latitude: quantity('latitude', 'latitude', [-Math.PI / 2, Math.PI / 2], '44 N', required, {
      measure: 'Read it off any map.',
    }),
    longitude: quantity(
      'longitude',
      'longitude',
      [-Math.PI, Math.PI],
      '73 W',
      derived('the middle of the time zone', 'D', 'clock noon near sun noon'),
    ),
    time_zone: quantity(
      'standard time, hours east of Greenwich',
      'time',
      [-13 * 3600, 14.5 * 3600],
      '-5 h',
      derived('the nearest whole hour to the longitude', 'D', 'zones are about 15 degrees wide'),
    ),
    altitude: quantity('altitude', 'length', [-450, 5500], '1200 ft', byDefault('0 ft', 'D', 'sea level'), {
      measure: 'Read it off a map: water boils about 1.8 F lower per 1000 ft.',
    }),
  },
  required,
);

const seed = count(
  'number that picks one of many like years',
  [0, 4_294_967_295],
  byDefault(1, 'D', 'any will do'),
);

function months<P extends Presence>(label: string, of: ReturnType<typeof month>, presence: P) {
  return list(`${label}, January to December`, of, [12, 12], presence);
}
function month(
  ...[label, dimension, range, example]: [
    string,
    'temperature' | 'temperature_difference' | 'insolation' | 'share' | 'speed',
    readonly [number, number],
    string,
  ]
) {
  return quantity(label, dimension, range, example, required);
}

export const weather = variants(
  'weather',
  'kind',
  {
    'by latitude': {
      climate: choice('sky', CLIMATES, byDefault('average', 'D', 'neither cloudy nor clear')),
      seed,
    },
    monthly: {
      air: months('mean air temperature', month('month', 'temperature', [-60, 50], '28 F'), required),
      swing: months(
        'daily swing, warmest less coldest',
        month('month', 'temperature_difference', [0, 30], '18 F'),
        derived('by latitude', 'D', 'rough table by latitude'),
      ),
      sun: months('sun on the level', month('month', 'insolation', [0, 5e7], '2.1 kWh/m2 per day'), required),
      humidity: months(
        'relative humidity',
        month('month', 'share', [0.02, 1], '70 %'),
        derived('by latitude', 'D', 'rough table by latitude'),
      ),
      wind: months(
        'wind',
        month('month', 'speed', [0, 30], '6 mph'),
        derived('by latitude', 'D', 'rough table by latitude'),
      ),
      snow: months(
        'share of days with snow on the ground',
        month('month', 'share', [0, 1], '80 %'),
        derived('three quarters in months below -1 C, else none', 'D', 'rough rule'),
      ),
      seed,
    },
    file: {
      file: text('weather file', required, { examples: ['winter.csv'] }),
      rest: choice(
        'sky of a made year that fills hours and columns the file lacks',
        CLIMATES,
        optional('a file must cover the year'),
      ),
      seed,
    },
  },
  byDefault({ kind: 'by latitude' }, 'D', 'rough table by latitude'),
);
