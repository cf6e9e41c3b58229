/**
 * What things cost where the household buys them. Plain numbers in a currency of its own: the unit stands in the
 * field's key. Every default is invented, for show: it only puts the answers in an order until prices are typed in.
 */
import { type Band, byDefault, group, optional, plain, text } from '../field.ts';

const MOST = 1_000_000;

/** A price with an invented default; without a better one it may be a third less or half as much again. */
function price(label: string, each: number, measure?: string) {
  const band: Band = [`${round(each / 1.5)}`, `${round(each * 1.5)}`];
  const more = measure === undefined ? { band } : { band, measure };
  return plain(label, [0, MOST], byDefault(each, 'invented', 'an invented round number'), more);
}

function round(value: number): number {
  return Number(value.toPrecision(3));
}

const PUMP = 'Read it off the last receipt.';

export const prices = group(
  'prices',
  {
    currency: text('sign of the currency', byDefault('$', 'invented', 'any sign or short word'), {
      longest: 6,
    }),
    dated: text('when the prices were asked for', byDefault('invented', 'invented', 'nobody asked')),
    copper_per_kg: price('copper tube, a kilogram', 20, 'Price of one roll over its weight.'),
    pex_per_m: price('PEX tube, a metre', 2),
    fitting_per_joint: price('fittings, a joint', 6),
    foam_per_m2_25mm: price('foam sheet, a square metre of 25 mm (1 in)', 10),
    collector_per_m2: price('collectors with their mounting, a square metre', 250),
    collector_per_tube: plain(
      'evacuated tubes with their share of the manifold, a tube',
      [0, MOST],
      optional('the price by area holds for tubes too'),
    ),
    mixing_valve_each: price('mixing valve', 90),
    check_valve_each: price('check valve', 25),
    lid_seal_per_m: price('seal for the lid, a metre', 3),
    diesel_per_litre: price('diesel, a litre', 1.2, PUMP),
    gasoline_per_litre: price('gasoline, a litre', 1.1, PUMP),
    propane_per_litre: price('propane, a litre', 0.8, PUMP),
  },
  byDefault({}, 'invented', 'invented round numbers'),
);
