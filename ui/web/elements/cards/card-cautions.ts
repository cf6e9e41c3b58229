/** Which cautions stand in a card, and beside which of its values. */
import {
  type Caution,
  type OutlineNode,
  pathSteps,
  type Scenario,
  SEVERITIES,
} from '../../../../sim/index.ts';
import type { CautionKey } from '../../../words/index.ts';
import { nodesIn } from './card-plan.ts';

export interface PlacedCaution {
  /** Path of the value or the whole it stands beside. */
  path: string;
  caution: Caution;
}

/** Below their part: the value that raises the caution, or that a person would change on reading it. */
const places: Record<CautionKey, string> = {
  scald: 'mixing_valve.set',
  scald_no_valve: 'mixing_valve.fitted',
  trapped_coil: 'roll_length',
  carbon_monoxide: 'runs',
  hot_engine: 'thermostat',
  plastic_tube: 'tube',
  mixed_metals: 'wall',
  coolant_poison: '(coolant|fluid).kind',
  boil_over: 'insulation',
  boiling: 'insulation',
  liner_limit: 'liner',
  foam_limit: 'insulation.sides',
  wall_limit: 'wall',
  engine_cold: 'coldest_return',
  freezing_loop: 'fluid.kind',
  freezing_cistern: 'cold.start',
  legionella: 'roll_length',
  weight: 'water_depth',
  wiring: '(pump.open_flow|rated_output|pump_power)',
  estimate_only: '',
  stagnation: 'ceiling',
  level_low: 'make_up',
  runs_dry: 'make_up',
  pump_at_limit: 'pump.open_flow',
  tap_pressure_low: 'pump.cut_out',
  tube_speed: 'tube',
  short_cycling: 'runs',
  back_feed: 'mixing_valve.fitted',
  altitude_output: 'rated_output',
  weather_generated: 'kind',
  faults_played: 'faults',
};

/** Which part of the file a caution of a run is about. */
const parts: Readonly<Record<string, string>> = { cistern: 'supply', plant: '', weather: 'weather' };

/**
 * The cautions of a part: those that the last run gave, and those that hold of such a part before any run.
 * `nodes` are the values that the card shows.
 */
export function cautionsIn(
  part: string,
  scenario: Scenario,
  given: readonly Caution[],
  root: OutlineNode,
): PlacedCaution[] {
  const ran = given.filter((caution) => isAbout(caution, part, scenario));
  const standing = standingCautions(part, scenario, root).filter(
    ({ key }) => !ran.some((caution) => caution.key === key),
  );
  return [...ran, ...standing].map((caution) => ({ path: pathOf(part, caution.key, root), caution }));
}

function isAbout({ part: name, key }: Caution, part: string, scenario: Scenario): boolean {
  if (!(key in places) || places[key as CautionKey] === '') return false;
  const [kind, index] = pathSteps(part);
  if (kind === 'coils' && typeof index === 'number') return scenario.coils?.[index]?.name === name;
  if (kind === 'engine' || kind === 'collector') return (scenario[kind]?.name ?? kind) === name;
  return part === (parts[name] ?? name);
}

/** Dangers that come with a part as such: nobody has to run a year to be told of them. */
function standingCautions(part: string, scenario: Scenario, root: OutlineNode): Caution[] {
  const [kind] = pathSteps(part);
  const say = (key: CautionKey): Caution => ({ key, part, severity: SEVERITIES[key] });
  const liquid = valueAt(root, new RegExp(`^${part}\\.(?:coolant|fluid)\\.kind$`));
  const poison = liquid === 'ethylene glycol' ? [say('coolant_poison')] : [];
  switch (kind) {
    case 'store':
      return [say('weight')];
    case 'coils':
      return [say('trapped_coil')];
    case 'engine':
      return [say('carbon_monoxide'), ...poison];
    case 'collector':
      return [say('stagnation'), ...poison];
    case 'supply':
      return [say('wiring')];
    case 'taps': {
      const bare = scenario.taps?.mixing_valve?.fitted === false;
      return part === 'taps' ? [bare ? say('scald_no_valve') : say('back_feed')] : [];
    }
    default:
      return [];
  }
}

/** Where in the card: the value itself, else the nearest whole of it that is there, else the part. */
function pathOf(part: string, key: string, root: OutlineNode): string {
  const wanted = new RegExp(`^${part.replace(/[[\].]/g, '\\$&')}\\.${places[key as CautionKey]}$`);
  const found = nodesIn(root).find(({ path }) => wanted.test(path));
  return found?.path ?? part;
}

function valueAt(root: OutlineNode, wanted: RegExp): unknown {
  const found = nodesIn(root).find(({ path }) => wanted.test(path));
  return found?.kind === 'entry' ? found.value : undefined;
}
