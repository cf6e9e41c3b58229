/** `tankful coil FILE`, or `tankful coil --tube ... --length ... --flow ... --tank ... --cold ...` without a file. */
import type { Command } from 'commander';
import {
  type Answer,
  bareScenario,
  chargingAnswer,
  coilAnswer,
  type Edit,
  edited,
  type FilledDefault,
  type ReadContext,
  readScenario,
  type Scenario,
} from '../../../sim/index.ts';
import {
  chargingWords,
  coilWords,
  commandWords,
  optionWords,
  refusalWords,
  reportWords,
} from '../../words/index.ts';
import {
  type AnswerOptions,
  answerOptions,
  checkForm,
  quantityOption,
  refusalOf,
  tell,
  unitsOf,
} from '../answer-options.ts';
import { loadScenario } from '../load.ts';
import { type Progress, progressOn } from '../progress.ts';
import { Refusal, refuse } from '../refusal.ts';
import type { Terminal } from '../terminal.ts';
import { tubeOf } from '../tube-words.ts';

interface CoilOptions extends AnswerOptions {
  tube?: string;
  length?: string;
  rolls?: string;
  join?: string;
  turns?: string;
  spacing?: string;
  flow?: string;
  tank?: string;
  cold?: string;
  wanted?: string;
}

/** Options by the path of the file that each stands for, as the reader's problems name it. */
const paths = {
  '--tube': 'tube',
  '--length': 'roll_length',
  '--rolls': 'rolls',
  '--join': 'join',
  '--turns': 'coil_diameter',
  '--spacing': 'spacing',
} as const;

export function coilCommand(program: Command, terminal: Terminal): void {
  const command = program
    .command('coil')
    .description(commandWords.coil)
    .argument('[file]', optionWords.fileOrNone)
    .option('--tube <tube>', optionWords.tube)
    .option('--length <length>', optionWords.length)
    .option('--rolls <number>', optionWords.rolls)
    .option('--join <how>', optionWords.join)
    .option('--turns <diameter>', optionWords.turns)
    .option('--spacing <word>', optionWords.spacing)
    .option('--flow <flow>', optionWords.flow)
    .option('--tank <temperature>', optionWords.tank)
    .option('--cold <temperature>', optionWords.cold)
    .option('--wanted <temperature>', optionWords.wanted)
    .option('--weather <file>', optionWords.weather);
  answerOptions(command).action((file: string | undefined, options: CoilOptions) =>
    coil(file, options, terminal),
  );
}

interface Asked {
  scenario: Scenario;
  context: ReadContext;
  tank_C?: number;
  flow_m3_s?: number;
}

function coil(file: string | undefined, options: CoilOptions, terminal: Terminal): void {
  unitsOf(options.units);
  checkForm(options);
  const asked = file === undefined ? bareQuestion(options) : fileQuestion(file, options);
  const read = readScenario(asked.scenario, asked.context);
  if (!read.ok) throw problemsOf(read.problems, file);
  const { plant, filled } = read;
  const progress = progressOn(terminal, reportWords.workingBands, false);
  try {
    const own = plant.taps === null ? null : coilAnswer({ ...asked, onProgress: progress.onProgress });
    const charging = plant.engine === null ? null : chargingAnswer(chargingQuestion(asked, progress));
    progress.end();
    const { currency } = plant.prices;
    print({ name: plant.name, filled, currency }, own, charging, options, terminal);
  } catch (error) {
    throw flagged(refusalOf(error));
  } finally {
    progress.end();
  }
}

/** What the answer calls by its own name came from an option. */
const flags: Readonly<Record<string, string>> = { tank: '--tank', flow: '--flow' };

function flagged(error: unknown): unknown {
  if (!(error instanceof Refusal)) return error;
  return new Refusal(error.troubles.map((each) => ({ ...each, where: flags[each.where] ?? each.where })));
}

function chargingQuestion({ scenario, context, tank_C }: Asked, { onProgress }: Progress) {
  return { scenario, context, onProgress, ...(tank_C === undefined ? {} : { tank_C }) };
}

interface Named {
  name: string;
  filled: readonly FilledDefault[];
  currency: string;
}

function print(
  named: Named,
  own: Answer | null,
  charging: Answer | null,
  options: CoilOptions,
  terminal: Terminal,
): void {
  if (own) {
    const told = { ...named, answer: own, words: coilWords, mainTable: 'candidates' };
    const others = charging ? [{ answer: charging, words: chargingWords }] : [];
    const more = { ...steadyKeys(own), charging: charging ?? undefined };
    tell({ ...told, others, more }, options, terminal);
  } else if (charging) {
    tell({ ...named, answer: charging, words: chargingWords, mainTable: 'tank' }, options, terminal);
  } else {
    const { where, expected, got, fix } = refusalWords.noCoil;
    throw refuse(where, expected, got, fix);
  }
}

/** The coil's own steady figures as plain numbers, with the units that others count in. */
function steadyKeys({ facts }: Answer): Record<string, number> {
  const { outlet_C, effectiveness, UA_W_K, pressure_drop_Pa, velocity_m_s, heat_W, content_m3, mass_kg } =
    facts;
  return {
    outlet_C: outlet_C.value,
    effectiveness: effectiveness.value,
    UA_W_K: UA_W_K.value,
    pressure_drop_kPa: pressure_drop_Pa.value / 1000,
    velocity_m_s: velocity_m_s.value,
    heat_W: heat_W.value,
    content_m3: content_m3.value,
    mass_kg: mass_kg.value,
  };
}

const TANK = [0, 100] as const;
const FLOW = [1e-6, 1e-3] as const;

function bareQuestion(options: CoilOptions): Asked {
  const { tube, length, flow, tank, cold } = options;
  const needed = { '--tube': tube, '--length': length, '--flow': flow, '--tank': tank, '--cold': cold };
  const missing = Object.entries(needed).flatMap(([flag, value]) => (value === undefined ? [flag] : []));
  if (
    tube === undefined ||
    length === undefined ||
    flow === undefined ||
    tank === undefined ||
    cold === undefined
  ) {
    const { bareCoil } = refusalWords;
    const flags = Object.keys(needed);
    throw refuse(
      refusalWords.commandLine,
      bareCoil.expected(flags),
      missing.length === flags.length ? bareCoil.none : bareCoil.missing(missing),
      bareCoil.fix,
    );
  }
  const { join, turns, spacing, wanted } = options;
  const given = { join, coil_diameter: turns, spacing, wanted };
  const bare = {
    tube: tubeOf(tube),
    length,
    flow,
    tank,
    cold,
    ...(options.rolls === undefined ? {} : { rolls: rollsOf(options.rolls) }),
    ...Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)),
  };
  const flow_m3_s = quantityOption('--flow', flow, 'flow', FLOW, '2 gpm');
  const tank_C = quantityOption('--tank', tank, 'temperature', TANK, '140 F');
  return { scenario: bareScenario(bare), context: {}, tank_C, flow_m3_s };
}

/** A file with another coil, cold or shower in it, as options say. */
function fileQuestion(file: string, options: CoilOptions): Asked {
  const { json, context, read } = loadScenario(file, options);
  const { taps, coils } = read.plant;
  const index = coils.findIndex(({ name }) => name === taps?.coil);
  const edits: Edit[] = [];
  const needsHousehold = (flag: string) => {
    const { expected, got, fix } = refusalWords.noHousehold;
    if (index < 0) throw refuse(flag, expected, got, fix);
  };
  for (const [flag, key] of Object.entries(paths)) {
    const given = options[flag.slice(2) as keyof CoilOptions];
    if (typeof given !== 'string') continue;
    needsHousehold(flag);
    const value = key === 'tube' ? tubeOf(given) : key === 'rolls' ? rollsOf(given) : given;
    edits.push({ path: `coils[${index}].${key}`, value });
  }
  if (options.cold !== undefined)
    edits.push({ path: 'supply.cold', value: { kind: 'fixed', temperature: options.cold } });
  const showers = (json.taps as { showers?: unknown[] } | undefined)?.showers ?? [];
  for (const [flag, key] of [
    ['--flow', 'flow'],
    ['--wanted', 'temperature'],
  ] as const) {
    const given = options[key === 'flow' ? 'flow' : 'wanted'];
    if (given === undefined) continue;
    if (showers.length === 0) {
      const { expected, got, fix } = refusalWords.noShowers;
      throw refuse(flag, expected, got, fix);
    }
    for (let i = 0; i < showers.length; i++) edits.push({ path: `taps.showers[${i}].${key}`, value: given });
  }
  const scenario = edited(json as unknown as Scenario, edits);
  if (options.tank === undefined) return { scenario, context };
  return { scenario, context, tank_C: quantityOption('--tank', options.tank, 'temperature', TANK, '140 F') };
}

function rollsOf(text: string): number {
  if (/^\d{1,2}$/.test(text) && Number(text) > 0) return Number(text);
  throw refuse('--rolls', refusalWords.rolls.expected, `"${text}"`, refusalWords.rolls.fix);
}

/** The reader's problems, under the option's name where one stands for the path. */
function problemsOf(
  problems: readonly { path: string; expected: string; got: string; fix: string }[],
  file: string | undefined,
): Refusal {
  return new Refusal(
    problems.map(({ path, ...rest }) => {
      const key = path.replace(/^coils\[\d+\]\./, '').split('.')[0];
      const option = Object.entries(paths).find(([, each]) => each === key)?.[0];
      const flags: [start: string, flag: string][] = [
        ['supply.cold', '--cold'],
        ['run.start', '--tank'],
        ['taps.showers[0].flow', '--flow'],
        ['taps.showers[0].temperature', '--wanted'],
      ];
      const flag = option ?? flags.find(([start]) => path.startsWith(start))?.[1];
      return { ...rest, where: flag ?? (file === undefined ? path : `${file}: ${path}`) };
    }),
  );
}
