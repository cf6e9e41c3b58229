/** Run when the page is built: solves the opening scenario and works out the answers that the page opens with. */
import demo from '../../../scenarios/demo.json';
import {
  type Answer,
  chargingAnswer,
  coilAnswer,
  doHere,
  readScenario,
  type Scenario,
  sectionFacts,
  showersAnswer,
  simulate,
} from '../../../sim/index.ts';
import { answerWords, sayIn, type Units } from '../../words/index.ts';
import { packBuiltIn, type SaidAnswer } from '../app/built-in.ts';

const files = import.meta.glob<Scenario>(['../../../scenarios/*.json', '!../../../scenarios/*_broken.json'], {
  eager: true,
  import: 'default',
});
const scenarios = Object.entries(files).map(([path, { name, note = '' }]) => ({
  id: path.replace(/^.*\/|\.json$/g, ''),
  name,
  note,
}));

/** The text that stands in the page. */
export async function solveDemo(): Promise<string> {
  const scenario = demo as unknown as Scenario;
  const context = {};
  const read = readScenario(scenario, context);
  if (!read.ok)
    throw new Error('scenarios/demo.json - expected a sound scenario - got problems - run npm test');
  const { plant, sketch, filled, notes } = read;
  const shown = {
    facts: sectionFacts(plant, sketch),
    result: simulate(plant),
    firstWeekday: plant.run.first_weekday,
    filled,
    notes,
  };
  const answers = [
    await showersAnswer({ scenario, context, doJobs: doHere(scenario, context) }),
    coilAnswer({ scenario, context }),
    chargingAnswer({ scenario, context }),
  ];
  return packBuiltIn(shown, answers.map(told), scenarios);
}

function told(answer: Answer): SaidAnswer {
  const said = (units: Units) => answerWords[answer.key].sentence(answer, sayIn(units));
  return { ...answer, said: { US: said('US'), SI: said('SI'), mixed: said('mixed') } };
}
