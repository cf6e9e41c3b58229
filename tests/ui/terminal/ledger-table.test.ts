import { describe, expect, it } from 'vitest';
import type { Ledger } from '../../../sim/index.ts';
import { ledgerLines } from '../../../ui/terminal/ledger-table.ts';
import type { Screen } from '../../../ui/terminal/screen.ts';

const screen: Screen = { width: 80, unicode: true, colour: false };
const kWh = 3.6e6;

/** 30 in, 24 out, 6 stored, and 4 above freezing in cold water, which pass through and are no heat to spend; kBtu by 1 kWh = 3.412142 kBtu (NIST SP 811). */
const ledger: Ledger = {
  paths: [
    { key: 'sun_to_collector', energy_J: 6 * kWh, side: 'in' },
    { key: 'fuel_to_coolant', energy_J: 24 * kWh, side: 'in' },
    { key: 'household_to_taps', energy_J: 19 * kWh, side: 'out' },
    { key: 'household_cold_in', energy_J: 4 * kWh, side: 'in' },
    { key: 'store_conducted', energy_J: 9 * kWh, side: 'out' },
    { key: 'store_boiled', energy_J: 0, side: 'out' },
    { key: 'engine_to_store', energy_J: 20 * kWh, side: 'inside' },
  ],
  stored_change_J: 6 * kWh,
  residual_J: 0,
  residual_percent: 0,
  throughput_J: 30 * kWh,
};

describe('ledgerLines', () => {
  it('lists what came in and what became of it, largest first', () => {
    expect(ledgerLines(ledger, screen)).toEqual([
      'Where the heat goes',
      '                                         kWh   kBtu    share',
      'Into the plant',
      '  Fuel heat into the coolant            24.0   81.9   80.0 %',
      '  Sun caught by the collector            6.0   20.5   20.0 %',
      'All in                                  30.0  102.4  100.0 %',
      'Out of the plant',
      '  Hot water to the taps                 15.0   51.2   50.0 %',
      '  Store walls, lid and floor             9.0   30.7   30.0 %',
      'All out                                 24.0   81.9   80.0 %',
      'More in store than at the start          6.0   20.5   20.0 %',
      'From part to part (not in the balance)',
      '  Engine to store                       20.0   68.2   66.7 %',
      'Unaccounted for: less than 0.0001 % of 30.0 kWh that passed through.',
      'Shares are of all that came in, with what the plant gave up where it cooled',
      'down. Heat of the household’s water counts from its cold water up.',
    ]);
  });

  it('counts what the store gave up among what was spent', () => {
    const paths = ledger.paths.filter(({ key }) => key !== 'fuel_to_coolant');
    const lines = ledgerLines({ ...ledger, paths, stored_change_J: -18 * kWh }, screen);
    expect(lines).toContain('  Sun caught by the collector            6.0  20.5   25.0 %');
    expect(lines).toContain('Less in store than at the start         18.0  61.4   75.0 %');
  });

  it('tells of what ran backwards on the side it ran to', () => {
    const warmed = [{ key: 'store_conducted', energy_J: -5 * kWh, side: 'out' as const }];
    const lines = ledgerLines({ ...ledger, paths: warmed, stored_change_J: 5 * kWh }, screen);
    expect(lines.slice(2, 5).map((line) => line.replace(/ {2,}/g, ' ').trim())).toEqual([
      'Into the plant',
      'Store walls, lid and floor 5.0 17.1 100.0 %',
      'All in 5.0 17.1 100.0 %',
    ]);
  });

  it('says a residual that can be seen', () => {
    expect(ledgerLines({ ...ledger, residual_J: 0.001234 * 30 * kWh }, screen).join('\n')).toContain(
      '0.12 % of 30.0 kWh',
    );
  });

  it('shows a path without words by its key', () => {
    const paths = [{ key: 'new_path', energy_J: kWh, side: 'in' as const }];
    expect(ledgerLines({ ...ledger, paths }, screen).join('\n')).toContain('  new_path');
  });
});
