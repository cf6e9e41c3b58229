import { describe, expect, it } from 'vitest';
import { parseScenarioText, problemLine } from '../../../sim/scenario/index.ts';
import { brokenFiles, textOf } from './files.ts';

/** What each broken example must be told: where, and words of the message. */
const messages: Record<string, [path: string, words: string][]> = {
  backup: [['backup', 'got no "taps"']],
  bright: [['weather.sun[5]', 'of what arrives above the air']],
  'coil-fit': [
    ['coils[0].to', 'room for 9 turns'],
    ['coils[1].coil_diameter', 'at most 35.13 in (892.2 mm)'],
    ['coils[2].to', 'where the last turn ends'],
    ['coils[3].to', 'swap the two heights'],
    ['coils[4].pitch', 'cannot lie closer than touching'],
    ['coils[5].coil_diameter', 'six tube diameters'],
  ],
  'coil-names': [
    ['collector.coil', '"sun", which engine uses'],
    ['taps.coil', 'did you mean "house"?'],
    ['coils[1].name', '"house", as coils[0]'],
  ],
  collector: [
    ['collector.fluid.share', 'at most 60 % glycol by mass'],
    ['collector.incidence.lengthwise', 'as many factors as angles, 3 - got 2'],
    ['collector.incidence.crosswise[0]', 'factors count from straight sun'],
    ['collector.incidence.angle', 'rise from 0'],
    ['collector.off', 'less than "on", 4 K - got 6 K'],
    ['collector.horizon[1].direction', 'each direction once'],
  ],
  comma: [['line 8, column 3', 'remove the comma before }']],
  dates: [
    ['run.from', '29 February is left out'],
    ['run.first_weekday', '"Monday", "Tuesday"'],
    ['run.days', 'whole number from 1 to 366 - got the number 400'],
  ],
  doubts: [
    ['doubts[0].input', 'did you mean "store.bridges"?'],
    ['doubts[1].input', 'a quantity or a number of a part - got "store.lid", a choice'],
    ['doubts[2].input', 'what the run is computed with'],
    ['doubts[4].input', 'each input once'],
    ['doubts[5].to', 'more than "from", 2.5 - got "1.2"'],
    ['doubts[6].from', 'add the unit'],
    ['doubts[6].to', 'got "700 F"'],
    ['doubts[7].unsure', '"a lot" of 0 in, which is nothing - name the lowest and the highest'],
  ],
  'doubts-words': [
    ['doubts[0].unsure', '"a little", "a lot", "between" - got "a lott" - did you mean "a lot"?'],
    ['doubts[1].from', 'write it in double quotes'],
    ['doubts[1].to', 'add it'],
    ['doubts[2].input', 'add it'],
    ['doubts[3].from', 'unknown name "from"'],
  ],
  'draw-volume': [
    ['taps.draws[0].lasts', 'got both - remove one'],
    ['taps.draws[1].lasts', 'got neither - add "lasts"'],
    ['taps.draws[2].volume', 'one second to one day - got 1500000 s'],
  ],
  draws: [
    ['taps.showers[0].people', 'whole number from 1 to 50 - got the number 2.5'],
    ['taps.showers[0].minutes', 'unknown name "minutes"'],
    ['taps.draws[0].at', '0:00 to 24:00'],
    ['taps.draws[0].days', 'got "Funday"'],
    ['taps.pattern.name', 'did you mean "US medium use"?'],
    ['taps.mixing_valve.fitted', 'true or false'],
  ],
  empty: [
    ['site', 'with latitude'],
    ['store', 'with inside'],
  ],
  engine: [
    ['engine.fuel_use', 'swap the two points'],
    ['engine.typical_load', 'at most the rated 6000 W and a tenth - got 9000 W'],
    ['engine.coolant.share', '77 % by mass'],
    ['engine.runs.until', 'at least 1 K above "below"'],
    ['engine.runs.probe', 'under the water, 0.81 m deep - got 0.89 m'],
    ['engine.runs.allowed[0].to', 'a later time than "from"'],
    ['engine.thermostat_full', 'hotter than it begins to open, 180 F (82.2 C)'],
    ['engine.exhaust_share', 'set "exhaust_exchanger" to true'],
  ],
  huge: [
    ['run.days', 'got the number 1e+21'],
    ['run.layers', 'from 3 to 100'],
    ['run.tolerance', 'got the number 0'],
    ['store.inside.length', '"1e999 m"'],
    ['store.inside.width', '10 m'],
    ['store.inside.height', '"-3 ft"'],
    ['store.bridges', 'from 1 to 6'],
    ['coils[0].rolls', 'from 1 to 50'],
    ['coils[0].roll_length', '500 m'],
  ],
  list: [['', 'got a list of 2 - choose a scenario file']],
  months: [['weather.air', 'a list [ ... ] of 12 - got a list of 11']],
  names: [
    ['weather.kind', 'did you mean "monthly"?'],
    ['store.inside.shape', '"lying cylinder", "tote" - got "cube"'],
    ['store.insulation.sides[0].material', 'did you mean "polyiso"?'],
    ['store.insulation.sides[0].colour', 'unknown name "colour"'],
    ['store.lid', '"closed", "ajar", "open" - got "shut"'],
    ['store.watr_depth', 'did you mean "water_depth"?'],
    ['coils[0].tube.kind', 'got "plumbing" - did you mean "plumbing'],
    ['stroe', 'did you mean "store"?'],
  ],
  faults: [
    ['run.faults[1].kind', '"collector pump", "engine", "household", "cold spell" - got "boiler"'],
    ['run.faults[2].temperature', 'add it'],
    ['run.faults[3].from', 'add the unit'],
  ],
  newer: [['version', 'left as it is']],
  'no-coil': [
    ['collector.coil', 'a coil under "coils"'],
    ['taps.coil', 'add a coil of that name'],
  ],
  place: [
    ['site.time_zone', 'west of Greenwich both are negative'],
    ['site.latitude', 'give a weather file'],
  ],
  prices: [
    ['prices.currency', '1 to 6 characters - got "dollars" - shorten it'],
    ['prices.copper_per_kg', 'got "$20" - say for how much, as in "20/lb" or "20/kg"'],
    ['prices.diesel_per_gallon', 'unknown name "diesel_per_gallon"'],
    ['prices.mixing_valve_each', 'from 0 to 1000000 - got the number -90'],
    ['prices.foam_per_m2_25mm', 'got "10,50" - write it without a comma, as in "4.50/ft2"'],
  ],
  prototype: [
    ['site.__proto__', 'unknown name "__proto__"'],
    ['weather.kind', 'got "__proto__"'],
    ['store.inside.shape', 'got "toString"'],
    ['store.toString', 'unknown name "toString"'],
    ['__proto__', 'unknown name "__proto__"'],
    ['constructor', 'unknown name "constructor"'],
  ],
  radiator: [
    ['engine.fuel_use', 'check the units of fuel and output'],
    ['engine.typical_load', 'got both'],
    ['engine.load_by_hour', 'each clock time once'],
    ['engine.radiator.full', 'hotter than it begins'],
  ],
  shapes: [
    ['site', '{ ... } with latitude, longitude'],
    ['store.inside', '"tote" - got "48 in x 36 in x 36 in" - write it in braces'],
    ['store.water_depth', 'got a list of 1 - write it, as in "32 in"'],
    ['store.insulation.sides', 'got an object { ... } - write it in square brackets'],
    ['coils', 'a list [ ... ] of 0 to 8 - got an object'],
    ['engine', 'got the boolean true - write it in braces'],
    ['taps', 'take it out of the list'],
  ],
  supply: [
    ['supply.cold.temperature', 'a list [ ... ] of 12 - got a list of 11'],
    ['supply.cold.temperature[2]', '32 °F (0 °C) to 113 °F (45 °C) - got "30 F"'],
    ['supply.pump.open_flow', '"psi" measures a pressure'],
    ['supply.pump.cut_out', '"gpm" measures a flow'],
    ['supply.pump.power', 'the unit "A" is unknown'],
    ['supply.lift', 'got the number 6 - add the unit'],
  ],
  tube: [
    ['coils[0].tube.size', '3/4 in, 1 in'],
    ['coils[1].tube.inside', 'less than the outside, 0.5 in (12.7 mm) - got 0.625 in (15.9 mm)'],
    ['coils[2].join', '"series" or "parallel"'],
  ],
  twice: [['line 18, column 5', '"water_depth" stands here twice: keep one']],
  'two-engines': [
    ['engine', 'there can be only one'],
    ['collector.kind', 'got nothing'],
    ['collector.size', 'add it'],
  ],
  units: [
    ['site.latitude', 'N or S'],
    ['site.altitude', 'add the unit'],
    ['run.interval', 'add the unit'],
    ['run.start.bottom', 'got "hot"'],
    ['store.inside.length', 'got the number 48 - add the unit'],
    ['store.inside.width', 'measures a pressure'],
    ['store.inside.height', 'without a comma'],
    ['store.water_depth', 'do you mean "in"?'],
    ['store.stands.temperature', '60 °C) - got "400 F"'],
    ['store.stands.humidity', 'got "half"'],
  ],
  water: [
    ['store.water_depth', 'at most the inside height, 1200 mm (47.24 in) - got 1300 mm (51.18 in)'],
    ['store.vapour_escape', 'say that the lid is ajar'],
    ['engine.coolant.share', 'no glycol in water'],
  ],
  'weather-file': [['weather.file', 'got "valley.csv" - give the file']],
  weekday: [
    ['run.first_weekday', 'Saturday, as the calendar has it - got "Monday"'],
    ['run.interval', 'at most 200000 samples'],
  ],
};

describe('a broken example', () => {
  it.each(brokenFiles())('%s is told all that is wrong, and nothing else', (name) => {
    const read = parseScenarioText(textOf(name));
    if (read.ok) throw new Error(`${name} was read`);
    const expected = messages[name.replace('_broken.json', '')];
    expect(read.problems.map(({ path }) => path).sort()).toEqual(expected.map(([path]) => path).sort());
    for (const [path, words] of expected) {
      const found = read.problems.filter((problem) => problem.path === path).map(problemLine);
      expect(found.join('\n')).toContain(words);
    }
  });

  it('has its row here, and each row its file', () => {
    expect(
      Object.keys(messages)
        .map((name) => `${name}_broken.json`)
        .sort(),
    ).toEqual(brokenFiles());
  });

  it.each(brokenFiles())('%s fills every part of every message', (name) => {
    const read = parseScenarioText(textOf(name));
    for (const problem of read.ok ? [] : read.problems) {
      const { expected, got, fix } = problem;
      for (const part of [expected, got, fix]) expect(part).toMatch(/\S/);
      expect(problemLine(problem)).toMatch(/^\S.* - expected /);
      expect(problemLine(problem)).not.toMatch(/undefined|NaN|\[object|\n/);
      expect(problemLine(problem).length).toBeLessThan(700);
    }
  });
});
