/** What the rest of the tool may use of the scenario room. */
export type { WeatherFiles } from './build/weather-file.ts';
export { withWeather } from './build/with-weather.ts';
export { describeDefaults, type FieldEntry, fieldEntries } from './catalogue.ts';
export { movedMarks } from './doubt-paths.ts';
export { isMeasured, mayBeMarked, reachOf, type Unsure } from './doubt-reach.ts';
export type { Mark } from './doubts.ts';
export type { Band, Grade } from './field.ts';
export { SCENARIO_FORMAT, SCENARIO_VERSION, type Scenario } from './fields/index.ts';
export type { FilledDefault } from './fill.ts';
export { parseJsonText } from './json-text.ts';
export { migrate } from './migrate.ts';
export * from './outline/index.ts';
export { type Note, type Problem, pathSteps, problemLine } from './problem.ts';
export { parseScenarioText, type ReadContext, type ReadScenario, readScenario } from './read.ts';
export { scenarioJsonSchema } from './scenario-schema.ts';
export type { Sketch, SketchedCoil } from './sketch.ts';
