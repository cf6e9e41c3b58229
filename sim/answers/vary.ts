/** A scenario with edits, read again: how an answer looks at its doubts without a run. */
import type { PlantDescription } from '../parts/description.ts';
import { type Mark, problemLine, type ReadContext, readScenario, type Scenario } from '../scenario/index.ts';
import type { Facts } from './band.ts';
import { edited } from './edit.ts';
import type { Job } from './job.ts';

/** A scenario and what it needs to be read. */
export interface Question {
  scenario: Scenario;
  context: ReadContext;
  /** Inputs one is unsure of beside those that the scenario marks, and in their place. */
  marks?: readonly Mark[];
}

/** The scenario, and what its reading made of it. @throws RangeError with every problem, a line each */
export function readQuestion({ scenario, context, marks = [] }: Question) {
  const read = readScenario(scenario, context);
  if (!read.ok) throw new RangeError(read.problems.map(problemLine).join('\n'));
  const others = read.marks.filter(({ path }) => !marks.some((mark) => mark.path === path));
  return { ...read, scenario, marks: [...others, ...marks] };
}

/** Facts at each job's edits; null where the scenario then no longer holds together or there is nothing to find. */
export function factsAt(
  { scenario, context }: Question,
  jobs: readonly Job[],
  facts: (plant: PlantDescription) => Facts,
  onProgress: (share: number) => void = () => {},
): (Facts | null)[] {
  return jobs.map((job, i) => {
    const read = readScenario(edited(scenario, job.edits), context);
    onProgress((i + 1) / jobs.length);
    if (!read.ok) return null;
    try {
      return facts(read.plant);
    } catch (error) {
      // An end of a band may be more than the plant can bear: the doubt then counts as untried.
      if (error instanceof RangeError) return null;
      throw error;
    }
  });
}
