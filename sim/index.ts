/** The public surface of the simulation: the page, the terminal and the tests come through here. */
export type * from './answers/answer.ts';
export { breaksAnswer } from './answers/breaks/breaks-answer.ts';
export { bareScenario } from './answers/coil/bare-scenario.ts';
export { chargingAnswer } from './answers/coil/charging-answer.ts';
export { coilAnswer } from './answers/coil/coil-answer.ts';
export { doubtsAnswer } from './answers/doubts/doubts-answer.ts';
export { type Edit, edited } from './answers/edit.ts';
export { estimate, estimateError, forEstimate } from './answers/estimate.ts';
export { type FigureBands, figureBands } from './answers/figures/figure-bands.ts';
export { comparedCurve } from './answers/fit/compared-curve.ts';
export {
  type FitAnswer,
  type FittedInput,
  fitAnswer,
  fittedScenario,
} from './answers/fit/fit.ts';
export { RECIPES, type Recipe, type RecipeField, type RecipeKind } from './answers/fit/recipe-fields.ts';
export { type RecipeAnswer, recipeAnswer } from './answers/fit/recipes.ts';
export { whatTable } from './answers/fit/what-table.ts';
export { hoursAnswer } from './answers/hours/hours-answer.ts';
export { type DoJobs, doHere, doJob, type Job, type JobResult, jobByDays } from './answers/job.ts';
export { minded } from './answers/minds.ts';
export { nextAnswer } from './answers/next/next-answer.ts';
export {
  ADDABLE,
  type Addable,
  addition,
  duplication,
  type PartChange,
  type Refusal,
  removal,
} from './answers/part-edits.ts';
export {
  type RangeAnswer,
  type RangePoint,
  rangeAnswer,
} from './answers/range/range.ts';
export { seasonAnswer } from './answers/season/season-answer.ts';
export * from './answers/section/index.ts';
export * from './answers/sheet/index.ts';
export { showersAnswer } from './answers/showers/showers-answer.ts';
export { storeAnswer } from './answers/store/store-answer.ts';
export { collectorAnswer } from './answers/sun/collector-answer.ts';
export { IntegrationError } from './numerics/integrator.ts';
export type { PlantDescription } from './parts/description.ts';
export { filledWeight } from './parts/filled-weight.ts';
export * from './quantity/index.ts';
export { detailOf, type Stretch } from './run/detail.ts';
export type * from './run/result.ts';
export { type CautionKey, SEVERITIES, type Severity } from './run/severities.ts';
export { Simulation, simulate } from './run/simulation.ts';
export * from './scenario/index.ts';
