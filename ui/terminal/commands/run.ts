/** `tankful run FILE`: runs a scenario and shows what comes of it. */
import { type Command, Option } from 'commander';
import { type FigureBands, figureBands, type Result, type Scenario, simulate } from '../../../sim/index.ts';
import { commandWords, optionWords, refusalWords, reportWords, type UnitSystem } from '../../words/index.ts';
import { seriesAsCsv } from '../as-csv.ts';
import { resultAsJson } from '../as-json.ts';
import { writeAll } from '../files.ts';
import { type Loaded, loadScenario, type Overrides } from '../load.ts';
import { type Progress, progressOn } from '../progress.ts';
import { exitCodes, Refusal, refuse, Stopped, troubleOf } from '../refusal.ts';
import { reportText } from '../report.ts';
import type { Screen } from '../screen.ts';
import type { Terminal } from '../terminal.ts';

interface RunOptions extends Overrides {
  units?: string;
  json?: true;
  csv?: true;
  out?: string;
  plain?: true;
  bands?: boolean;
  progress?: true;
}

/** Bands repeat the run for every doubt, twice; beyond this they are worked out only when asked for. */
const longestWithBands_days = 14;

/** A report in a file is read anywhere. */
const page: Screen = { width: 80, unicode: true, colour: false };

export function runCommand(program: Command, terminal: Terminal): void {
  program
    .command('run')
    .description(commandWords.run)
    .argument('<file>', optionWords.file)
    .option('--days <number>', optionWords.days)
    .option('--from <date>', optionWords.from)
    .option('--weather <file>', optionWords.weather)
    .option('--units <system>', optionWords.units, 'us')
    .option('--json', optionWords.json)
    .option('--csv', optionWords.seriesCsv)
    .option('--out <folder>', optionWords.out)
    .option('--plain', optionWords.plain)
    .addOption(new Option('--bands', optionWords.bands))
    .addOption(new Option('--no-bands', optionWords.noBands))
    .option('--progress', optionWords.progress)
    .action((file: string, options: RunOptions) => run(file, options, terminal));
}

async function run(file: string, options: RunOptions, terminal: Terminal): Promise<void> {
  const units = unitsOf(options.units);
  checkTogether(options);
  const loaded = loadScenario(file, options);
  const started_s = terminal.now_s();
  const result = simulated(loaded, progressOn(terminal, reportWords.running, options.progress === true));
  const wall_s = terminal.now_s() - started_s;
  if (options.json) {
    terminal.out(resultAsJson(result, wall_s));
    return;
  }
  if (options.csv) {
    terminal.out(seriesAsCsv(result.series, units));
    return;
  }
  const bands = await bandsOf(loaded, result, options, terminal);
  const report = (screen: Screen) => reportText({ file, loaded, result, bands, units }, screen);
  if (options.out === undefined) terminal.out(report(terminal.screen(options.plain === true)));
  else {
    const paths = writeAll(options.out, {
      'result.json': resultAsJson(result, wall_s),
      'series.csv': seriesAsCsv(result.series, units),
      'report.txt': report(page),
    });
    terminal.out(`${paths.join('\n')}\n`);
  }
  if (bands?.stopped) throw new Stopped();
}

function unitsOf(word: string | undefined): UnitSystem {
  const units = word?.toUpperCase();
  if (units === 'US' || units === 'SI') return units;
  throw refuse('--units', refusalWords.units.expected, `"${word}"`, refusalWords.units.fix);
}

function checkTogether({ json, csv, out }: RunOptions): void {
  const chosen = [json ? '--json' : [], csv ? '--csv' : [], out !== undefined ? '--out' : []].flat();
  if (chosen.length > 1) {
    throw refuse(
      refusalWords.commandLine,
      refusalWords.oneOutput.expected,
      refusalWords.both(chosen),
      refusalWords.oneOutput.fix,
    );
  }
}

function simulated({ read }: Loaded, progress: Progress): Result {
  try {
    return simulate(read.plant, { onProgress: progress.onProgress });
  } catch (error) {
    const { where, fix } = refusalWords.run;
    throw new Refusal([troubleOf(error, where, fix)], exitCodes.runFailed);
  } finally {
    progress.end();
  }
}

async function bandsOf(
  { json, context }: Loaded,
  { figures, days }: Result,
  { bands, progress }: RunOptions,
  terminal: Terminal,
): Promise<FigureBands | null> {
  if (bands === false || (bands === undefined && days > longestWithBands_days)) return null;
  const drawn = progressOn(terminal, reportWords.workingBands, progress === true);
  const scenario = json as unknown as Scenario;
  const pool = terminal.openPool(scenario, context);
  try {
    const onProgress = (done: number, of: number) => drawn.onProgress(done / of);
    return await figureBands({ scenario, context, doJobs: pool.doJobs, figures, onProgress });
  } finally {
    drawn.end();
    await pool.close();
  }
}
