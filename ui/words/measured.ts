/** Words of what an owner measured: a log held against the run, and small measurements. */
import type { RecipeKind } from '../../sim/index.ts';

interface RecipeWords {
  title: string;
  /** How it is done, in a few sentences. */
  how: string;
  /** What each field is called. */
  fields: Record<string, string>;
}

const temperatures = { from: 'Store at the start, stirred', to: 'Store at the end, stirred', room: 'Room' };

export const recipeWords: Readonly<Record<RecipeKind, RecipeWords>> = {
  bucket: {
    title: 'Bucket at the pump',
    how: 'Let the pump fill a bucket through an open hose and time it. Repeat it with a low battery.',
    fields: { volume: 'Filled', time: 'In' },
  },
  'shower bucket': {
    title: 'Bucket under the shower',
    how: 'Catch the shower as it is used, mixed, in a bucket and time it.',
    fields: { volume: 'Filled', time: 'In' },
  },
  'coil outlet': {
    title: 'Coil outlet',
    how: 'Stir the store and read it. Draw a steady flow for five minutes and read cold water and coil outlet at the end; leave out the first minute. Two flows and two store temperatures tell more than one.',
    fields: {
      flow: 'Flow through the coil',
      tank: 'Store, stirred',
      cold: 'Cold water',
      outlet: 'Coil outlet',
    },
  },
  'cool-down': {
    title: 'Overnight cool-down',
    how: 'A night without draws, sun and engine. Read the mean of three heights at both ends, and the room. It should fall by 3 °F (2 K) or more. One night cannot part what goes through the walls from vapour past the lid: tape the lid shut all round, leave the vent open, and repeat it.',
    fields: { ...temperatures, time: 'Between them' },
  },
  'heat-up': {
    title: 'Engine heat-up',
    how: 'Warm the engine first. Run it for an hour or two at a steady load with nothing drawn and no sun; stir before each reading.',
    fields: { ...temperatures, time: 'Ran for', load: 'Electrical load' },
  },
  'solar day': {
    title: 'Solar day',
    how: 'A day without draws and engine: stir and read the store in the morning and in the evening. Note the sky in words.',
    fields: { from: 'Store in the morning, stirred', to: 'Store in the evening, stirred', room: 'Room' },
  },
  level: {
    title: 'Level mark',
    how: 'Mark the level on a stick and read it again a week later, nothing added. A leak looks the same: a dry floor tells them apart.',
    fields: { fell: 'Fell by', time: 'In', store: 'Store meanwhile, mean', room: 'Room' },
  },
};

export const measuredWords = {
  title: 'Measured at the store',
  intro:
    'Readings of the real store say more than any default. Hold a log against the run, or make one small measurement.',
  logTitle: 'A log of temperatures',
  logHelp:
    'Paste rows with a head, five are enough: time, and probes named top, middle, bottom, or by height as at 10 in; with the room, so much the better. Or drop a file anywhere on the page.',
  readings: 'Readings',
  example: 'time,top (F),middle (F),bottom (F),room (F)\n21:00,141,139,131,55\n00:00,139,138,130,54',
  file: (name: string, lines: number) => `${name}, ${lines} lines.`,
  typeInstead: 'Type readings instead',
  coolDown: 'Nothing was drawn and the engine stood (overnight test)',
  ask: 'Hold it against the run',
  stop: 'Stop',
  outdated: 'Of the design as it was when this was asked.',
  put: 'Put these into the design as measured',
  putGesture: 'put measured values in',
  recipesTitle: 'Small measurements',
  work: 'Work it out',
  says: 'It says',
  settles: 'Settles',
  nothingSettled: 'It settles no input; hold it against what the run shows of such a day.',
  caution:
    'Hot water, hot pipes and a running engine: gloves, a second person, no reading is worth a burn. Where a pressure is read, stay clear of reliefs.',
  example_of: (text: string) => `as ${text}`,
  facts: {
    flow_m3_s: 'Flow',
    effectiveness: 'Share of the way to the store’s temperature',
    UA_W_K: 'Heat passed by the degree',
    loss_W_K: 'Lost by the degree',
    gain_W: 'Net gain of the store',
    heat_J: 'Brought, what was lost meanwhile included',
    per_m2_J: 'Of that by area of the collector, a square metre',
    kg_a_day: 'Vapour, a day',
    vapour_W: 'Heat that goes with it',
  } as Readonly<Record<string, string>>,
} as const;
