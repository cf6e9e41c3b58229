/**
 * What things cost where the household buys them, in a currency of its own. A number alone is for the unit in the
 * field's key; a text says what it is for. Every default is invented, for show: it only puts the answers in an order
 * until prices are typed in.
 */
import type { SoldBy } from '../../quantity/index.ts';
import { type Band, byDefault, group, optional, plain, price, text } from '../field.ts';

const MOST = 1_000_000;

const PER = {
  litre: { dimension: 'volume', unit: 'L' },
  kg: { dimension: 'mass', unit: 'kg' },
  m: { dimension: 'length', unit: 'm' },
  m2: { dimension: 'area', unit: 'm2' },
} satisfies Record<string, SoldBy>;

/** A price with an invented default; without a better one it may be a third less or half as much again. */
function usual(each: number, measure: string | undefined, unit = '') {
  const band: Band = [`${round(each / 1.5)}${unit}`, `${round(each * 1.5)}${unit}`];
  return measure === undefined ? { band } : { band, measure };
}

function perOf(label: string, by: keyof typeof PER, each: number, measure?: string) {
  const source = byDefault(each, 'invented', 'an invented round number');
  return price(label, [0, MOST], PER[by], source, usual(each, measure, `/${PER[by].unit}`));
}

function eachOf(label: string, each: number) {
  return plain(
    label,
    [0, MOST],
    byDefault(each, 'invented', 'an invented round number'),
    usual(each, undefined),
  );
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
    copper_per_kg: perOf('copper tube', 'kg', 20, 'Price of one roll over its weight.'),
    pex_per_m: perOf('PEX tube', 'm', 2),
    fitting_per_joint: eachOf('fittings, a joint', 6),
    foam_per_m2_25mm: perOf('foam sheet, 25 mm (1 in) thick', 'm2', 10),
    collector_per_m2: perOf('collectors with their mounting', 'm2', 250),
    collector_per_tube: plain(
      'evacuated tubes with their share of the manifold, a tube',
      [0, MOST],
      optional('the price by area holds for tubes too'),
    ),
    mixing_valve_each: eachOf('mixing valve', 90),
    check_valve_each: eachOf('check valve', 25),
    lid_seal_per_m: perOf('seal for the lid', 'm', 3),
    diesel_per_litre: perOf('diesel', 'litre', 1.2, PUMP),
    gasoline_per_litre: perOf('gasoline', 'litre', 1.1, PUMP),
    propane_per_litre: perOf('propane', 'litre', 0.8, PUMP),
  },
  byDefault({}, 'invented', 'invented round numbers'),
);
