/** Fields of the engine generator and its coolant loop. */
import {
  byDefault,
  choice,
  days,
  derived,
  flag,
  group,
  list,
  optional,
  quantity,
  required,
  text,
  variants,
} from '../field.ts';
import { FUELS } from './backup.ts';
import { fluid, pipeFields, surroundings, WATER } from './shared.ts';

const CLOCK = [0, 86_400] as const;
const COOLANT = [40, 130] as const;
const POWER = [0, 100_000] as const;

const span = group(
  'span',
  {
    days: days('days', byDefault('every day', 'D', 'habit')),
    from: quantity('from', 'clock', CLOCK, '4:00 pm', required),
    to: quantity('to', 'clock', CLOCK, '7:00 pm', required),
  },
  required,
);

export const engine = group(
  'engine generator',
  {
    name: text('name', byDefault('engine', 'D', 'its name')),
    coil: text('name of the coil its coolant flows through', required),
    fuel: choice('fuel', FUELS, required),
    rated_output: quantity('rated electrical output', 'electric_power', [300, 50_000], '5 kW', required, {
      measure: 'Read the plate.',
    }),
    fuel_use: list(
      'fuel used at known outputs',
      group(
        'fuel use',
        {
          output: quantity('electrical output', 'electric_power', POWER, '2.5 kW', required),
          fuel: quantity('fuel used', 'flow', [1e-8, 1e-4], '0.4 gal/h', required),
        },
        required,
      ),
      [1, 10],
      derived(
        'a line from the rated output',
        'D',
        'small sets: full-load efficiency 29 % diesel, 21 % spark; no-load flow 17 % or 30 % of full load (from memory)',
      ),
      { measure: 'Fill to a mark, run an hour at a steady, noted load, refill to the mark.' },
    ),
    typical_load: quantity(
      'electrical load while it runs',
      'electric_power',
      POWER,
      '1.5 kW',
      derived('half the rated output', 'D', 'battery charging'),
      {
        measure: 'Read the charger’s amps and volts, or a plug-in meter.',
      },
    ),
    load_by_hour: list(
      'load by the clock instead',
      group(
        'step',
        {
          from: quantity('from', 'clock', CLOCK, '5:00 pm', required),
          output: quantity('electrical output', 'electric_power', POWER, '1.5 kW', required),
        },
        required,
      ),
      [1, 96],
      optional('the typical load holds all day'),
    ),
    jacket_share: quantity(
      'share of the fuel’s heat that reaches the coolant at rated load',
      'share',
      [0.05, 0.5],
      '25 %',
      derived('25 % diesel, 28 % otherwise', 'D', 'trade practice; no measurement of small sets was found'),
      {
        band: ['18 %', '33 %'],
        measure:
          'Heat-up test: run 1 to 2 hours at a steady load, stir the store, compare its gain with the fuel burnt.',
      },
    ),
    jacket_share_light: quantity(
      'share of the fuel’s heat that reaches the coolant at a quarter of rated load',
      'share',
      [0.05, 0.6],
      '30 %',
      derived(
        '1.2 times the rated share',
        'D',
        'rises towards low load: friction and wall losses fall less than the work',
      ),
      {
        band: ['20 %', '40 %'],
        measure: 'Repeat the heat-up test at a light load.',
      },
    ),
    exhaust_exchanger: flag(
      'exhaust exchanger fitted in the coolant loop',
      byDefault(false, 'D', 'few have one'),
    ),
    exhaust_share: quantity(
      'further share recovered from the exhaust',
      'share',
      [0, 0.3],
      '10 %',
      derived('10 % with an exhaust exchanger, else nothing', 'D', 'trade practice'),
      {
        band: ['5 %', '20 %'],
      },
    ),
    mass: quantity(
      'mass of the engine',
      'mass',
      [5, 2000],
      '60 kg',
      derived('25 kg and 6 kg per rated kW', 'D', 'small liquid-cooled sets'),
    ),
    coolant_volume: quantity(
      'coolant in engine, radiator and hoses',
      'volume',
      [2e-4, 0.2],
      '6 L',
      derived('2 L and half a litre per rated kW', 'D', 'small liquid-cooled sets'),
      {
        measure: 'Count the jugs when you fill it.',
      },
    ),
    coolant: fluid(
      'coolant',
      'half glycol by volume',
      byDefault({ kind: 'ethylene glycol' }, 'D', 'engine coolant'),
    ),
    coolant_flow: quantity(
      'coolant flow through the coil',
      'flow',
      [1e-6, 1e-2],
      '3 gpm',
      derived('carries the rated jacket heat at a rise of 11 F', 'A', 'recommended coolant rise 10 to 12 F'),
      {
        measure: 'Rise across the engine and heat give it; or read the pump’s label.',
      },
    ),
    thermostat: quantity(
      'thermostat begins to open',
      'temperature',
      COOLANT,
      '180 F',
      byDefault('180 F', 'B', 'stamps run 160 to 210 F'),
      {
        band: ['160 F', '195 F'],
        measure: 'Read the stamp, or hang it in a pot with a thermometer.',
      },
    ),
    thermostat_full: quantity(
      'thermostat fully open',
      'temperature',
      COOLANT,
      '198 F',
      derived('10 K above its opening', 'D', 'wax thermostats: 8 to 15 K (from memory)'),
    ),
    radiator: group(
      'radiator',
      {
        starts: quantity(
          'begins to take heat',
          'temperature',
          COOLANT,
          '200 F',
          derived('2 K above the thermostat fully open', 'D', 'after the coil has had its share'),
        ),
        full: quantity(
          'takes all it can',
          'temperature',
          COOLANT,
          '212 F',
          derived('8 K above its beginning', 'D', 'fan switch and thermostat'),
        ),
        conductance: quantity(
          'heat per degree above the air',
          'conductance',
          [1, 20_000],
          '300 W/K',
          derived(
            'carries 1.3 times the rated jacket heat in 40 C air',
            'D',
            'makers size for full load in hot air',
          ),
        ),
      },
      byDefault({}, 'D', 'the engine’s own radiator stays connected'),
    ),
    block_loss: quantity(
      'heat the block loses per degree',
      'conductance',
      [0, 500],
      '8 W/K',
      derived('8 W/K for 55 kg, growing with the surface', 'D', 'still air over a warm block'),
      {
        band: ['4 W/K', '20 W/K'],
      },
    ),
    check_valve: flag('check valve against thermosiphon', byDefault(false, 'D', 'few fit one')),
    standby_loss: quantity(
      'heat the stopped engine draws from the store per degree',
      'conductance',
      [0, 100],
      '4 W/K',
      derived(
        '4 W/K, none with a check valve',
        'D',
        'overnight tests with and without valves differ this much',
      ),
      {
        band: ['0 W/K', '10 W/K'],
        measure: 'Two overnight cool-down tests, loop open and loop valved off.',
      },
    ),
    coldest_return: quantity(
      'coldest coolant return the engine bears',
      'temperature',
      [0, 110],
      '140 F',
      byDefault('140 F', 'D', 'return above 60 to 65 C'),
      {
        band: ['120 F', '160 F'],
      },
    ),
    pipes: group(
      'pipes to the coil',
      pipeFields('20 ft', '7/8 in'),
      byDefault({}, 'D', 'the engine stands near the store'),
    ),
    stands: surroundings(
      'where it stands',
      byDefault({ where: 'room', temperature: '50 F' }, 'D', 'a shed of its own'),
    ),
    runs: variants(
      'runs',
      'kind',
      {
        // Without a span it stands: what a household would have without it.
        timetable: { spans: list('spans', span, [0, 50], required) },
        'call for heat': {
          below: quantity('starts when the store is below', 'temperature', WATER, '110 F', required),
          until: quantity('stops when the store reaches', 'temperature', WATER, '150 F', required),
          probe: quantity(
            'height of the probe above the inside bottom',
            'length',
            [0, 10],
            '24 in',
            derived('two thirds of the water depth', 'D', 'warns before the top runs out'),
          ),
          allowed: list(
            'allowed only in',
            span,
            [0, 50],
            byDefault([{ from: '7:00 am', to: '8:00 pm' }], 'B', 'quiet hours 8 pm to 7 am'),
          ),
        },
      },
      required,
    ),
  },
  optional('no engine'),
);
