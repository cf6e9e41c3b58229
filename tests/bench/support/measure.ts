/**
 * The measurements themselves, built into one file and run by a Node of their own: the code as it is shipped, in a
 * process that has compiled nothing yet. Prints one line of JSON.
 */
import { readFileSync } from 'node:fs';
import { type PlantDescription, readScenario, simulate } from '../../../sim/index.ts';

export interface Timed {
  /** By the clock on the wall. */
  ms: number;
  /** Of the processors, compiling included: hardly minds the neighbours. */
  cpu_ms: number;
  run: { evaluations: number; steps: number; restarts: number };
}

export interface Measured {
  /** The week a person waits for: nothing compiled, the scenario not read. */
  cold: Timed;
  read_ms: number;
  /** The fastest of many weeks afterwards. */
  warm: Timed;
  year: Timed;
  /** One turn of a fixed piece of arithmetic on this machine now [ns]. */
  turn_ns: number;
}

const WEEKS = 25;
const TURNS = 20_000_000;

function plantOf(path: string, days: number): PlantDescription {
  const json = JSON.parse(readFileSync(path, 'utf8'));
  const read = readScenario({ ...json, run: { ...json.run, days, interval: days > 30 ? '1 h' : '5 min' } });
  if (!read.ok) throw new Error(`${path} - expected a sound scenario - got ${read.problems[0]?.path}`);
  return read.plant;
}

function cpu_ms(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function timed(plant: PlantDescription): Timed {
  const [started, worked] = [performance.now(), cpu_ms()];
  const { run } = simulate(plant);
  return { ms: performance.now() - started, cpu_ms: cpu_ms() - worked, run };
}

/** Dependent roots: neither memory nor a clever compiler makes them faster. */
function turn_ns(): number {
  const worked = cpu_ms();
  let x = 1;
  for (let i = 0; i < TURNS; i++) x = Math.sqrt(x + i) * 1.0000001;
  const ns = ((cpu_ms() - worked) * 1e6) / TURNS;
  return x > 0 ? ns : Number.NaN;
}

function fastest(runs: Timed[]): Timed {
  return runs.reduce((best, run) => (run.cpu_ms < best.cpu_ms ? run : best));
}

const path = process.argv[2];
const started = performance.now();
const week = plantOf(path, 7);
const read_ms = performance.now() - started;
const cold = timed(week);
const turns = [turn_ns()];
const warm = fastest(Array.from({ length: WEEKS }, () => timed(week)));
turns.push(turn_ns());
const year = timed(plantOf(path, 365));
turns.push(turn_ns());
const measured: Measured = { cold, read_ms, warm, year, turn_ns: Math.min(...turns) };
process.stdout.write(`${JSON.stringify(measured)}\n`);
