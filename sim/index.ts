/** The public surface of the simulation: the page, the terminal and the tests come through here. */
export { IntegrationError } from './numerics/integrator.ts';
export type { PlantDescription } from './parts/description.ts';
export * from './quantity/index.ts';
export type * from './run/result.ts';
export { Simulation, simulate } from './run/simulation.ts';
export * from './scenario/index.ts';
