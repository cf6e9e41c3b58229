/** A fuel by its name in the file, and an engine's fuel line. */
import type { Fuel } from '../../parts/description.ts';
import { FUELS, type FuelLine, usualFuelLine } from '../../physics/combustion.ts';
import type { Desk } from '../desk.ts';
import { engine as field } from '../fields/engine.ts';
import type { ScenarioValues } from '../fields/index.ts';
import { percent } from './shared.ts';

type EngineRead = NonNullable<ScenarioValues['engine']>;

export function fuelNamed(name: keyof typeof FUELS): Fuel {
  const { lower_heating_value_J_kg, density_kg_m3 } = FUELS[name];
  return { name, lower_heating_value_J_kg, density_kg_m3 };
}

/** Fuel mass flow as a line over output: through the given points (least squares), or as small sets usually do. */
export function fuelLine(desk: Desk, read: EngineRead, fuel: Fuel): FuelLine | null {
  const usual = usualFuelLine(
    read.fuel === 'diesel' ? 'diesel' : 'spark',
    read.rated_output,
    fuel.lower_heating_value_J_kg,
  );
  const points = desk.complete(field, ['engine'], 'fuel_use', read.fuel_use, () => {
    const value = [0.25, 1].map((share) => {
      const output = share * read.rated_output;
      return { output, fuel: flowAt(usual, output) / fuel.density_kg_m3 };
    });
    return { value };
  });
  const line = lineThrough(
    points.map((point) => ({ output: point.output, flow_kg_s: point.fuel * fuel.density_kg_m3 })),
    usual,
  );
  const refuse = (got: string, fix: string) => {
    desk.problem(
      ['engine', 'fuel_use'],
      'fuel that grows with the output from something above nothing',
      got,
      fix,
    );
    return null;
  };
  if (line === null)
    return refuse('the same output twice', 'measure at two different loads, or give one point');
  if (line.slope_kg_J <= 0) return refuse('fuel that falls as the output rises', 'swap the two points');
  if (line.no_load_kg_s < 0)
    return refuse(
      'a line that reaches nothing before no load',
      'measure again at a low load: an idling engine burns fuel too',
    );
  const efficiency = read.rated_output / (flowAt(line, read.rated_output) * fuel.lower_heating_value_J_kg);
  if (efficiency < 0.02 || efficiency > 0.45) {
    return refuse(
      `${percent(efficiency)} of the fuel turned into electricity at rated output`,
      'small sets reach 15 to 30 %: check the units of fuel and output',
    );
  }
  return line;
}

/** Fuel mass flow [kg/s] at an output [W]. */
export function flowAt(line: FuelLine, output_W: number): number {
  return line.no_load_kg_s + line.slope_kg_J * output_W;
}

/** Least-squares line; through one point the usual line, scaled to meet it; null where all outputs are one. */
function lineThrough(
  points: readonly { output: number; flow_kg_s: number }[],
  usual: FuelLine,
): FuelLine | null {
  if (points.length === 1) {
    const scale = points[0].flow_kg_s / flowAt(usual, points[0].output);
    return { no_load_kg_s: scale * usual.no_load_kg_s, slope_kg_J: scale * usual.slope_kg_J };
  }
  const mean = (of: (p: (typeof points)[number]) => number) =>
    points.reduce((sum, p) => sum + of(p), 0) / points.length;
  const [output, flow] = [mean((p) => p.output), mean((p) => p.flow_kg_s)];
  const spread = mean((p) => (p.output - output) ** 2);
  if (spread < 1) return null;
  const slope_kg_J = mean((p) => (p.output - output) * (p.flow_kg_s - flow)) / spread;
  return { no_load_kg_s: flow - slope_kg_J * output, slope_kg_J };
}
