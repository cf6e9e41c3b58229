/** Which column of a plain weather table is what, and in which unit: read from its head. */
import { type ProblemList, quote } from './problems.ts';

/** What a column may hold. */
export type Measure = 'air' | 'sun' | 'direct' | 'diffuse' | 'dew point' | 'humidity' | 'wind' | 'albedo';

/** A column of numbers: kept value = (cell + offset) * factor. */
export interface MeasureColumn {
  measure: Measure;
  index: number;
  name: string;
  offset: number;
  factor: number;
}

export interface CsvHead {
  /** Columns joined by a blank to make the stamp: one, or date and time. */
  time: number[];
  /** What a stamp marks, where the head says so. */
  stamp: 'start' | 'end' | undefined;
  columns: MeasureColumn[];
  ignored: string[];
}

const TIME_NAMES = [
  'time',
  'date',
  'date time',
  'datetime',
  'timestamp',
  'local time',
  'date and time',
  'hour',
];

const NAMES: Record<Measure, string[]> = {
  air: [
    'air',
    'air temperature',
    'temperature',
    'temp',
    'outdoor temperature',
    'outside temperature',
    'outdoor',
    'outside',
    'dry bulb',
  ],
  sun: [
    'sun',
    'global sun',
    'global',
    'global horizontal',
    'global irradiance',
    'solar',
    'solar radiation',
    'irradiance',
    'radiation',
    'ghi',
  ],
  direct: ['direct', 'direct sun', 'direct normal', 'direct irradiance', 'beam', 'dni'],
  diffuse: ['diffuse', 'diffuse sun', 'diffuse horizontal', 'diffuse irradiance', 'dhi'],
  'dew point': ['dew point', 'dewpoint', 'dew point temperature', 'dew'],
  humidity: ['humidity', 'relative humidity', 'rh'],
  wind: ['wind', 'wind speed', 'windspeed'],
  albedo: ['albedo', 'ground reflectance'],
};

type Conversion = { offset: number; factor: number };
const times = (factor: number): Conversion => ({ offset: 0, factor });

const TEMPERATURE: Record<string, Conversion> = {
  c: times(1),
  f: { offset: -32, factor: 5 / 9 },
  k: { offset: -273.15, factor: 1 },
};
const IRRADIANCE: Record<string, Conversion> = {
  'w/m2': times(1),
  'kw/m2': times(1000),
  'wh/m2': times(1),
  'kwh/m2': times(1000),
  'btu/hft2': times(3.154591),
};
const SHARE: Record<string, Conversion> = { '%': times(0.01), '1': times(1), share: times(1) };
const SPEED: Record<string, Conversion> = {
  'm/s': times(1),
  mph: times(0.44704),
  'mi/h': times(0.44704),
  'km/h': times(1 / 3.6),
  kmh: times(1 / 3.6),
  kn: times(1852 / 3600),
  kt: times(1852 / 3600),
  knots: times(1852 / 3600),
  'ft/s': times(0.3048),
};

/** Units by measure, with the way they are shown in a message. */
const UNITS: Record<Measure, { known: Record<string, Conversion>; shown: string }> = {
  air: { known: TEMPERATURE, shown: 'C, F or K' },
  'dew point': { known: TEMPERATURE, shown: 'C, F or K' },
  sun: { known: IRRADIANCE, shown: 'W/m2, kW/m2, Wh/m2, kWh/m2 or Btu/(h ft2)' },
  direct: { known: IRRADIANCE, shown: 'W/m2, kW/m2, Wh/m2, kWh/m2 or Btu/(h ft2)' },
  diffuse: { known: IRRADIANCE, shown: 'W/m2, kW/m2, Wh/m2, kWh/m2 or Btu/(h ft2)' },
  humidity: { known: SHARE, shown: '% or share' },
  albedo: { known: SHARE, shown: '% or share' },
  wind: { known: SPEED, shown: 'm/s, mph, km/h, kn or ft/s' },
};

/**
 * Reads a head such as `time,air (F),sun (W/m2),dew point (C),wind (mph)`. Units stand in round or square
 * brackets; the time may carry `(start)` or `(end)` for what its stamp marks.
 *
 * @returns the columns, or undefined with problems added
 */
export function readHead(cells: string[], where: string, problems: ProblemList): CsvHead | undefined {
  const head: CsvHead = { time: [], stamp: undefined, columns: [], ignored: [] };
  let sound = true;
  cells.forEach((cell, index) => {
    const { name, unit } = nameAndUnit(cell);
    if (TIME_NAMES.includes(name)) {
      head.time.push(index);
      if (unit === 'start' || unit === 'end') head.stamp = unit;
      return;
    }
    const measure = measureOf(name);
    if (!measure) {
      if (cell !== '') head.ignored.push(cell);
      return;
    }
    const conversion = UNITS[measure].known[unit];
    if (!conversion) {
      problems.add(
        `${where}, column ${index + 1}`,
        `a unit of ${measure}: ${UNITS[measure].shown}`,
        unit === '' ? `${quote(cell)} without one` : quote(unit),
        `write it in brackets, such as ${measure} (${UNITS[measure].shown.split(/,| or/)[0]})`,
      );
      sound = false;
    } else if (head.columns.some((column) => column.measure === measure)) {
      problems.add(`${where}, column ${index + 1}`, `one column of ${measure}`, quote(cell), 'leave one out');
      sound = false;
    } else head.columns.push({ measure, index, name: cell, ...conversion });
  });
  return wantedColumns(head, cells, where, problems) && sound ? head : undefined;
}

function measureOf(name: string): Measure | undefined {
  return (Object.keys(NAMES) as Measure[]).find((key) => NAMES[key].includes(name));
}

/** What a head's cells name, whatever their units. */
export function measuresNamed(cells: readonly string[]): Measure[] {
  return cells.flatMap((cell) => measureOf(nameAndUnit(cell).name) ?? []);
}

function wantedColumns(head: CsvHead, cells: string[], where: string, problems: ProblemList): boolean {
  const has = (measure: Measure) => head.columns.some((column) => column.measure === measure);
  const named = (measure: Measure) => cells.some((cell) => NAMES[measure].includes(nameAndUnit(cell).name));
  const missing: string[] = [];
  if (head.time.length === 0) missing.push('time');
  if (!has('air') && !named('air')) missing.push('air (C)');
  if (!has('sun') && !named('sun')) missing.push('sun (W/m2)');
  if (missing.length > 0) {
    problems.add(
      where,
      `columns ${missing.join(', ')}`,
      quote(cells.join(', ')),
      'name them so; others that are read: direct, diffuse, dew point, humidity, wind, albedo',
    );
  }
  if (head.time.length > 2) {
    problems.add(
      where,
      'one column of time, or date and time',
      `${head.time.length}`,
      'leave the others out',
    );
  }
  return missing.length === 0 && head.time.length <= 2;
}

/** `Air_Temp [°F]` -> name `air temp`, unit `f`. */
function nameAndUnit(cell: string): { name: string; unit: string } {
  const parts = /^([^([]*)(?:[([]([^)\]]*)[)\]]?)?/.exec(cell);
  const name = (parts?.[1] ?? '')
    .toLowerCase()
    .replace(/[_\-./]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const unit = (parts?.[2] ?? '')
    .toLowerCase()
    .replace(/²|\^2/g, '2')
    .replace(/°|deg(rees?)?|[\s·*]/g, '')
    .replace('celsius', 'c')
    .replace('fahrenheit', 'f')
    .replace('kelvin', 'k')
    .replace('btu/ft2h', 'btu/hft2');
  return { name, unit };
}
