/** Known instants at which the equations change: hours of weather, draws, timetable and load steps. */
import { faultEdges } from '../parts/faults.ts';
import type { Plant } from './plant.ts';

const DAY = 86_400;

/** All edges of one day of the run (midnight to midnight, both included), ascending [s]. */
export function edgesOfDay(plant: Plant, day: number): number[] {
  const start = day * DAY;
  const edges = new Set<number>([start, start + DAY]);
  for (let hour = 1; hour < 24; hour++) edges.add(start + hour * 3600);
  const add = (second: number) => {
    if (second > 0 && second < DAY) edges.add(start + second);
  };
  const { engine } = plant;
  if (engine) {
    for (const step of engine.description.load) add(step.from_s);
    for (const span of engine.description.runs.spans) {
      add(span.from_s);
      add(span.to_s);
    }
  }
  for (const { from_s, to_s } of plant.openings) {
    if (from_s >= start + DAY) break;
    add(from_s - start);
    add(to_s - start);
  }
  for (const edge of faultEdges(plant.description.run.faults)) add(edge - start);
  return [...edges].sort((a, b) => a - b);
}
