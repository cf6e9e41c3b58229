/** Tube as it is sold, or by its own diameters. */
import { TUBE_MATERIALS, TUBE_STANDARDS, type TubeStandard, tubeSizes } from '../../physics/tubes.ts';
import {
  choice,
  type Presence,
  quantity,
  type Required,
  required,
  type TextField,
  text,
  variants,
} from '../field.ts';

const DIAMETER = [0.001, 0.2] as const;

type Standards = { [S in TubeStandard]: { size: TextField<Required> } };

const standards = Object.fromEntries(
  TUBE_STANDARDS.map((standard) => [
    standard,
    {
      size: text('size', required, {
        examples: tubeSizes(standard),
        measure:
          'Caliper across the outside: plumbing tube measures 1/8 in more than its name, refrigeration tube measures its name.',
      }),
    },
  ]),
) as Standards;

export function tube<P extends Presence>(presence: P) {
  return variants(
    'tube',
    'kind',
    {
      ...standards,
      own: {
        material: choice('material', Object.keys(TUBE_MATERIALS), required),
        outside: quantity('outside diameter', 'length', DIAMETER, '5/8 in', required, {
          measure: 'Caliper across the outside.',
        }),
        inside: quantity('inside diameter', 'length', DIAMETER, '0.545 in', required, {
          measure: 'Caliper across the bore of a clean cut.',
        }),
      },
    },
    presence,
  );
}
