/** Fields of one coil immersed in the store. */
import { byDefault, choice, count, derived, group, list, plain, quantity, required, text } from '../field.ts';
import { tube } from './tube.ts';

const HEIGHT = [0, 10] as const;

export const coil = group(
  'coil',
  {
    name: text('name', required),
    tube: tube(required),
    rolls: count('rolls', [1, 50], byDefault(1, 'D', 'one roll')),
    roll_length: quantity('length of one roll', 'length', [0.3, 500], '50 ft', required, {
      measure: 'Read the tag, or count turns and multiply by pi times the coil’s diameter.',
    }),
    join: choice(
      'rolls joined in',
      ['series', 'parallel'],
      derived('one roll needs no word for it', 'D', 'with several rolls the file must say'),
    ),
    coil_diameter: quantity(
      'diameter of the turns, middle to middle of the tube',
      'length',
      [0.03, 5],
      '24 in',
      derived('0.6 of the narrower inside width', 'D', 'keeps the turns some 8 in off the walls'),
      {
        measure: 'Tape across the coil from the outside of one side to the inside of the other.',
      },
    ),
    spacing: choice(
      'turns',
      ['touching', 'finger gap', 'spread'],
      byDefault('finger gap', 'D', 'as a roll is pulled apart by hand'),
    ),
    pitch: quantity(
      'from turn to turn, middle to middle',
      'length',
      [0.003, 2],
      '1 1/2 in',
      derived(
        'tube diameter, plus 3/4 in for a finger gap, plus 2 in when spread',
        'D',
        'what the words say',
      ),
      {
        measure: 'Tape over ten turns and divide by ten.',
      },
    ),
    side_by_side: count(
      'windings side by side or one inside another',
      [1, 20],
      byDefault(1, 'D', 'one helix'),
    ),
    from: quantity(
      'lowest turn above the inside bottom',
      'length',
      HEIGHT,
      '4 in',
      derived('one eighth of the water depth', 'D', 'trade: off the bottom, with room below for sediment'),
    ),
    to: quantity(
      'highest turn above the inside bottom',
      'length',
      HEIGHT,
      '30 in',
      derived('where the last turn ends', 'D', 'turns times their pitch'),
    ),
    fed_from: choice(
      'its water enters at',
      ['bottom', 'top'],
      derived('bottom for the household’s coil, top for a source’s', 'D', 'counter to the layers'),
    ),
    fouling: quantity(
      'scale inside',
      'fouling',
      [0, 0.005],
      '0.0001 m2 K/W',
      byDefault(
        '0.0001 m2 K/W',
        'D',
        'treated water in service (from memory of tables for shell-and-tube exchangers)',
      ),
      {
        band: ['0 m2 K/W', '0.0004 m2 K/W'],
      },
    ),
    bundling: plain(
      'share of the outside film left by neighbouring turns',
      [0.2, 1],
      derived('0.5 touching, 0.75 finger gap, 0.9 spread', 'D', 'trade practice; no field data is known'),
    ),
    outside_film: plain(
      'outside film of a real store against the formula',
      [0.2, 2],
      byDefault(0.8, 'D', 'spans the published coil measurements, 0.5 to 1.2'),
      {
        band: ['0.5', '1.2'],
        measure:
          'Coil outlet test: stirred store, steady flow for 5 minutes, log the cold, the outlet and the store.',
      },
    ),
    friction: plain(
      'pressure lost in its turns against the formula',
      [0.3, 3],
      derived(
        '1, the formula as it is',
        'D',
        'published formulas for coils lie from 6 % below this one to 10 to 25 % above, 45 % just before the flow turns turbulent',
      ),
      {
        measure:
          'Pressure gauges before and after the coil at a flow taken by the bucket; over what is computed for that flow.',
      },
    ),
    bore: plain(
      'bore against its table',
      [0.7, 1.3],
      derived(
        '1, the table as it is',
        'D',
        'standards let the wall be a tenth thicker or thinner, PEX only thicker (from memory)',
      ),
      { measure: 'Caliper across the bore of a clean cut, over the bore of the table.' },
    ),
    inside_film: plain(
      'inside film against the formula',
      [0.3, 2],
      byDefault(1, 'D', 'published formulas differ by a fifth'),
      {
        band: ['0.8', '1.2'],
      },
    ),
  },
  required,
);

export const coils = list('coils', coil, [0, 8], byDefault([], 'D', 'none'));
