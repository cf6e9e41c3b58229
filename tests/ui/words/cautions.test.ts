import { describe, expect, it } from 'vitest';
import { cautionWords, isCaution, type Speak, sayCaution, speakIn } from '../../../ui/words/index.ts';

const promised = [
  ...['scald', 'scald_no_valve', 'trapped_coil', 'carbon_monoxide', 'coolant_poison', 'boil_over', 'boiling'],
  ...[
    'liner_limit',
    'foam_limit',
    'wall_limit',
    'engine_cold',
    'freezing_loop',
    'freezing_cistern',
    'legionella',
  ],
  ...['weight', 'wiring', 'estimate_only', 'stagnation', 'level_low', 'pump_at_limit', 'tap_pressure_low'],
  ...['tube_speed', 'short_cycling', 'back_feed', 'altitude_output', 'weather_generated'],
  ...['runs_dry', 'faults_played', 'hot_engine', 'plastic_tube', 'mixed_metals'],
];

/** Marks whatever number it is given. */
const marking: Speak = new Proxy({} as Speak, {
  get: (_, what) => (value: number) => `<${String(what)} ${value}>`,
});
const number = 12.5;

describe('cautionWords', () => {
  it('hold every caution that was promised', () => {
    expect(Object.keys(cautionWords).sort()).toEqual(promised.sort());
  });

  it.each(promised)('%s reads as sentences, with a number and without', (key) => {
    if (!isCaution(key)) throw new Error(key);
    const { title, says, todo } = cautionWords[key];
    expect(title).toMatch(/^[A-Z][^.]+$/);
    for (const value of [number, null]) {
      expect(says(value, marking)).toMatch(/^[A-Z<].+\.$/);
      expect(says(value, marking)).not.toMatch(/null|undefined| {2}| ,|\.\./);
    }
    expect(todo(marking)).toMatch(/^[A-Z].+\.$/);
  });

  it.each(promised)('%s certifies nothing', (key) => {
    if (!isCaution(key)) throw new Error(key);
    const { says, todo } = cautionWords[key];
    expect(`${says(null, marking)} ${todo(marking)}`).not.toMatch(
      /\b(is|are) safe|certif|guarantee|approved|complies/i,
    );
  });

  it('quote the number of the figure they stand beside', () => {
    for (const [key, { figure, says }] of Object.entries(cautionWords)) {
      if (figure !== null) expect(says(number, marking), key).toContain(` ${number}>`);
    }
  });
});

describe('sayCaution', () => {
  const scald = {
    key: 'scald',
    part: 'taps',
    severity: 'danger',
    figure: 'outlet_C_max',
    value: 60,
  } as const;

  it('says the number in the reader’s units', () => {
    expect(sayCaution(scald, speakIn('US')).says).toMatch(/^Water reaches 140 °F at the tap/);
    expect(sayCaution(scald, speakIn('SI')).says).toMatch(/^Water reaches 60 °C at the tap/);
  });
  it('keeps a number to itself that belongs to another figure', () => {
    const other = { ...scald, figure: 'scald_s', value: 90 };
    expect(sayCaution(other, speakIn('SI')).says).toMatch(/^The tap gives scalding water;/);
  });
  it('names code and licensed practice where they have a say', () => {
    expect(sayCaution(scald, speakIn('US')).licensed).toContain('Local code and licensed practice');
    expect(sayCaution({ ...scald, key: 'tube_speed' }, speakIn('US')).licensed).toBeNull();
  });
});

/** Times to a deep burn: Moritz & Henriques 1947, as the trade quotes them (trade notes, section 6, grade A). */
it.each(['scald', 'scald_no_valve'])('%s names the published times', (key) => {
  const { says } = sayCaution({ key, part: 'taps', severity: 'danger' }, speakIn('US'));
  expect(says).toContain('5 min at 120 °F, 15 s at 133 °F, 5 s at 140 °F, 1 s at 155 °F');
});

/** The copper trade's ceilings: 5 ft/s for hot water, 8 ft/s for cold. */
it('tube_speed names the trade’s round numbers', () => {
  const { says } = sayCaution({ key: 'tube_speed', part: 'coil', severity: 'note' }, speakIn('US'));
  expect(says).toContain('above 5 ft/s hot, 8 ft/s cold');
});

it('wiring names no machine that may not be there', () => {
  const { says } = sayCaution({ key: 'wiring', part: 'supply', severity: 'note' }, speakIn('US'));
  expect(says).not.toMatch(/generator|engine/);
});
