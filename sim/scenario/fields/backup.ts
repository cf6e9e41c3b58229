/** Fields of the on-demand heater behind the household coil. */
import { byDefault, choice, group, optional, quantity, required, text } from '../field.ts';

export const FUELS = ['diesel', 'gasoline', 'propane'] as const;

export const backup = group(
  'backup heater',
  {
    name: text('name', byDefault('backup heater', 'D', 'its name')),
    fuel: choice('fuel', FUELS, byDefault('propane', 'D', 'most on-demand heaters')),
    efficiency: quantity(
      'efficiency',
      'share',
      [0.2, 1],
      '80 %',
      byDefault('80 %', 'D', 'vented on-demand heaters'),
      {
        band: ['70 %', '90 %'],
      },
    ),
    max_heat: quantity('largest heat into the water', 'power', [500, 100_000], '35 kBtu/h', required),
    set: quantity(
      'heats to',
      'temperature',
      [20, 80],
      '110 F',
      byDefault('110 F', 'D', 'a little above a shower'),
    ),
  },
  optional('no backup heater'),
);
