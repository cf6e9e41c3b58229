/** Fields of the solar collector and its loop. */
import {
  byDefault,
  choice,
  count,
  derived,
  flag,
  group,
  list,
  optional,
  plain,
  quantity,
  required,
  text,
  variants,
} from '../field.ts';
import { fluid, pipeFields, WATER } from './shared.ts';

const ANGLE = [0, Math.PI / 2] as const;
const FACTOR = [0, 2] as const;
const angles = () => list('angles', quantity('angle', 'angle', ANGLE, '30 deg', required), [2, 30], required);
const factors = (label: string) => list(label, plain('factor', FACTOR, required), [2, 30], required);

export const collector = group(
  'solar collector',
  {
    name: text('name', byDefault('collector', 'D', 'its name')),
    coil: text('name of the coil its loop flows through', required),
    kind: choice('kind', ['evacuated tubes', 'flat plate'], required),
    size: variants(
      'size',
      'by',
      {
        tubes: {
          tubes: count('number of tubes', [1, 2000], required),
          absorber_each: quantity(
            'absorber area of one tube',
            'area',
            [0.005, 1],
            '0.08 m2',
            byDefault(
              '0.08 m2',
              'D',
              'inner tube 47 mm by 1.7 m of a common 58 mm by 1.8 m tube (from memory)',
            ),
            {
              band: ['0.06 m2', '0.1 m2'],
              measure: 'Inner tube’s diameter times the length of its dark coating.',
            },
          ),
        },
        area: {
          area: quantity('area', 'area', [0.05, 2000], '40 ft2', required),
          basis: choice('area is', ['gross', 'aperture', 'absorber'], required),
        },
      },
      required,
    ),
    rating: group(
      'rating, on the same area',
      {
        eta0: plain('share of the sun kept when no warmer than the air', [0.05, 0.95], required, {
          measure: 'Read the collector’s test certificate.',
        }),
        a1: quantity('heat lost per degree', 'loss_coefficient', [0, 15], '1.3 W/(m2 K)', required),
        a2: quantity('heat lost per degree squared', 'loss_second', [0, 0.2], '0.006 W/(m2 K2)', required),
      },
      derived(
        'typical for the kind and the area it is counted on',
        'D',
        'typical certificates (from memory); optical 0.6 to 0.7 on absorber area',
      ),
    ),
    incidence: variants(
      'slanting sun',
      'kind',
      {
        single: { b0: plain('b0 of 1 - b0 (1/cos - 1)', [0, 0.6], required) },
        'two-way': {
          angle: angles(),
          lengthwise: factors('factors along the tubes'),
          crosswise: factors('factors across the tubes'),
        },
      },
      derived('typical for the kind', 'D', 'typical certificates (from memory)'),
    ),
    diffuse_modifier: plain(
      'share of diffuse light kept, against straight sun',
      [0.3, 1.5],
      derived('0.92 flat plate, 1.0 tubes', 'D', 'typical certificates (from memory)'),
      { band: ['0.85', '1.15'] },
    ),
    heat_capacity: quantity(
      'heat capacity per area',
      'heat_capacity_per_area',
      [500, 200_000],
      '8 kJ/(m2 K)',
      derived('7.5 kJ/m2K flat plate, 10 tubes', 'D', 'typical certificates (from memory)'),
    ),
    ceiling: quantity(
      'hottest it gets when idle in full sun',
      'temperature',
      [60, 400],
      '220 C',
      derived(
        '180 C flat plate, 250 C tubes',
        'D',
        'measured stagnation of tubes 220 to 300 C (from memory)',
      ),
    ),
    tilt: quantity(
      'tilt from the flat',
      'angle',
      ANGLE,
      '60 deg',
      derived('latitude and 15 degrees', 'D', 'winter use'),
      { measure: 'A level with an angle dial on the frame.' },
    ),
    facing: quantity(
      'faces',
      'angle',
      [0, 2 * Math.PI],
      'south',
      derived('the equator', 'D', 'as most are set'),
      { measure: 'Compass, corrected for the local declination.' },
    ),
    horizon: list(
      'hills and trees',
      group(
        'point of the skyline',
        {
          direction: quantity('direction', 'angle', [0, 2 * Math.PI], 'SE', required),
          height: quantity('height above the level', 'angle', ANGLE, '15 deg', required),
        },
        required,
      ),
      [0, 72],
      byDefault([], 'D', 'open skyline'),
      { measure: 'Sight along a level with an angle dial from the collector, every 15 degrees.' },
    ),
    shade: list(
      'share of each month’s sun lost to snow or shade on the glass',
      quantity('month', 'share', [0, 1], '10 %', required),
      [12, 12],
      derived('none', 'D', 'clean and swept glass'),
    ),
    fluid: fluid(
      'liquid in the loop',
      '40 % glycol by volume',
      derived('propylene glycol in a filled loop, water in a drain-back loop', 'D', 'the usual choice'),
    ),
    loop: choice('loop', ['filled', 'drain-back'], byDefault('filled', 'D', 'most common')),
    pump_flow: quantity(
      'flow when the pump runs',
      'flow',
      [1e-6, 5e-3],
      '1 gpm',
      derived(
        '0.045 gpm per tube or 0.03 gpm per square foot',
        'C',
        'builders’ ranges 0.026-0.066 and 0.02-0.04',
      ),
      {
        measure: 'Read the loop’s flow glass, or time the drain-back into a bucket.',
      },
    ),
    pump_power: quantity(
      'pump’s electric power',
      'electric_power',
      [0, 1000],
      '15 W',
      byDefault('15 W', 'D', 'one owner measured 6 W, another’s needed more than 45 W of panels'),
      {
        band: ['6 W', '45 W'],
        measure: 'Amps times volts at the pump.',
      },
    ),
    on: quantity(
      'pump starts this much above the store',
      'temperature_difference',
      [0.1, 40],
      '8 K',
      byDefault('8 K', 'B', 'differential controllers: on at 8 K'),
    ),
    off: quantity(
      'pump stops this much above the store',
      'temperature_difference',
      [0, 30],
      '4 K',
      byDefault('4 K', 'B', 'differential controllers: off at 4 K'),
    ),
    high_limit: quantity(
      'pump stays off above this store top',
      'temperature',
      WATER,
      '185 F',
      byDefault('185 F', 'D', 'below boiling at altitude'),
    ),
    pipes: group(
      'pipes to the collector',
      {
        ...pipeFields('40 ft', '5/8 in'),
        outdoor_share: quantity(
          'share of them outdoors',
          'share',
          [0, 1],
          '50 %',
          byDefault('50 %', 'D', 'half in, half out'),
        ),
      },
      byDefault({}, 'D', 'collector near the store'),
    ),
    check_valve: flag(
      'check valve against thermosiphon at night',
      byDefault(true, 'D', 'pump stations have one'),
    ),
    night_loss: quantity(
      'heat drawn back at night per degree',
      'conductance',
      [0, 100],
      '3 W/K',
      derived(
        '3 W/K, none with a check valve or a drained loop',
        'D',
        'overnight tests with and without valves',
      ),
      {
        band: ['0 W/K', '10 W/K'],
        measure: 'Two overnight cool-down tests, loop open and loop valved off.',
      },
    ),
  },
  optional('no collector'),
);
