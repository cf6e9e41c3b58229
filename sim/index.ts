/** The public surface of the simulation: the page, the terminal and the tests come through here. */
export type * from './answers/answer.ts';
export { type HoursQuestion, hoursAnswer } from './answers/hours/hours-answer.ts';
export {
  type DoJobs,
  doHere,
  doJob,
  type Edit,
  edited,
  type Job,
  type JobResult,
} from './answers/job.ts';
export {
  ADDABLE,
  type Addable,
  addition,
  duplication,
  type PartChange,
  type Refusal,
  removal,
} from './answers/part-edits.ts';
export * from './answers/section/index.ts';
export { IntegrationError } from './numerics/integrator.ts';
export type { PlantDescription } from './parts/description.ts';
export * from './quantity/index.ts';
export { detailOf, type Stretch } from './run/detail.ts';
export type * from './run/result.ts';
export { Simulation, simulate } from './run/simulation.ts';
export * from './scenario/index.ts';
