/** Fields of the cold water supply. */
import { byDefault, derived, group, list, quantity, required, variants } from '../field.ts';
import { surroundings } from './shared.ts';

const COLD = [0, 45] as const;

export const supply = group(
  'cold water supply',
  {
    cold: variants(
      'cold water',
      'kind',
      {
        fixed: {
          temperature: quantity(
            'temperature',
            'temperature',
            COLD,
            '45 F',
            byDefault('40 F', 'D', 'winter cistern'),
            {
              band: ['36 F', '55 F'],
              measure: 'Run the cold tap for a minute over any thermometer.',
            },
          ),
        },
        'by month': {
          temperature: list(
            'January to December',
            quantity('month', 'temperature', COLD, '45 F', required),
            [12, 12],
            required,
          ),
        },
        cistern: {
          volume: quantity('volume', 'volume', [0.02, 100], '300 gal', required),
          start: quantity(
            'temperature at the start',
            'temperature',
            COLD,
            '45 F',
            byDefault('40 F', 'D', 'winter cistern'),
            { band: ['36 F', '55 F'] },
          ),
          insulation: quantity(
            'insulation around it',
            'resistance',
            [0, 20],
            'R-2',
            byDefault('R-2', 'D', 'plastic or wooden tank, bare'),
            { band: ['R-1', 'R-10'] },
          ),
          stands: surroundings('where it stands', byDefault({ where: 'room' }, 'D', 'beside the store')),
          refill: quantity(
            'temperature of the water that refills it',
            'temperature',
            COLD,
            '45 F',
            derived('same as at the start', 'D', 'hauled or from the same spring'),
          ),
        },
      },
      byDefault({ kind: 'fixed' }, 'D', 'winter cistern'),
    ),
    pump: group(
      'pump',
      {
        open_flow: quantity(
          'flow with nothing in the way',
          'flow',
          [5e-6, 2e-3],
          '3 gpm',
          byDefault('3 gpm', 'B', '12 V demand pumps'),
          {
            band: ['2.5 gpm', '3.5 gpm'],
            measure: 'Time a bucket at the pump with an open hose: gpm = 300 / seconds for 5 gallons.',
          },
        ),
        cut_out: quantity(
          'cut-out pressure',
          'pressure',
          [2e4, 1e6],
          '45 psi',
          byDefault('45 psi', 'B', '12 V demand pumps'),
          {
            band: ['40 psi', '55 psi'],
            measure: 'Close every tap and read a gauge when the pump stops.',
          },
        ),
        power: quantity(
          'electric power',
          'electric_power',
          [0, 3000],
          '90 W',
          byDefault('90 W', 'B', '12 V demand pumps'),
          {
            band: ['60 W', '120 W'],
            measure: 'Amps times volts at the pump while it runs.',
          },
        ),
      },
      byDefault({}, 'B', '12 V demand pump'),
    ),
    lift: quantity(
      'height of the outlet above the cistern water',
      'length',
      [-50, 50],
      '6 ft',
      byDefault('6 ft', 'D', 'shower head above a floor-level cistern'),
      {
        band: ['0 ft', '15 ft'],
        measure: 'Tape from the water in the cistern up to the shower head.',
      },
    ),
  },
  byDefault({}, 'D', 'a 12 V pump from a cold cistern'),
);
