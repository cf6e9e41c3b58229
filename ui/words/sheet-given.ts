/** What the build sheet rests on: measured inputs, those marked as unsure, and what was filled in. */
import { type Answer, byInfluence, type FilledDefault, givenInputs, type Scenario } from '../../sim/index.ts';
import type { Both } from './both.ts';
import { fitInputName } from './fit.ts';
import { fromSim } from './from-sim.ts';
import { inputMeaning, inputName } from './input-text.ts';
import { counted } from './locale.ts';
import type { SheetBlock } from './sheet.ts';

export const givenWords = {
  title: 'Measured, and in doubt',
  assumptions: 'Assumptions',
  intro: (count: number) =>
    count === 0
      ? 'Nothing was left to defaults.'
      : 'Left open by the file, most influential first. Grades: A handbook, standard or logged data; B long practice; C asserted; D common practice; invented: put in your own.',
  more: (count: number) =>
    count === 0
      ? 'These are all.'
      : `${counted(count, 'more stands', 'more stand')} in the file: tankful check lists them, and each part’s card.`,
} as const;

/** Whose input it is, in a word or two. */
function ownerOf(path: string, { coils = [] }: Scenario): string {
  const coil = /^coils\[(\d+)\]/.exec(path);
  if (coil) return `coil ${coils[Number(coil[1])]?.name ?? coil[1]}`;
  return path.split(/[.[]/, 1)[0];
}

const text = (path: string, value: string, both: Both) =>
  inputMeaning(path, value, both.plain) ?? fromSim(value);

/** Measured values as measured, doubtful ones as doubtful; null where the file has neither. */
export function givenBlock(
  scenario: Scenario,
  filled: readonly FilledDefault[],
  both: Both,
): SheetBlock | null {
  const given = givenInputs(scenario, filled);
  if (given.length === 0) return null;
  const coils = (scenario.coils ?? []).map(({ name }) => name);
  const lines = given.map(({ path, value, unsure, measured }) => {
    const name = measured ? fitInputName(path, coils) : `${ownerOf(path, scenario)}, ${inputName(path)}`;
    const shown = text(path, String(value), both);
    const band =
      unsure === null
        ? ''
        : typeof unsure === 'string'
          ? `, unsure ${unsure}`
          : `, between ${text(path, unsure.from, both)} and ${text(path, unsure.to, both)}`;
    return `${measured ? 'Measured or set' : 'In doubt'}: ${name} ${shown}${band}.`;
  });
  return { key: 'given', title: givenWords.title, lines };
}

/** One line an assumption, most influential first; those that say the same of several coils are one. */
export function assumptionLines(
  filled: readonly FilledDefault[],
  answers: readonly Answer[],
  scenario: Scenario,
  both: Both,
): { line: string; count: number }[] {
  const merged = new Map<string, { first: FilledDefault; owners: string[] }>();
  for (const each of byInfluence(filled, answers)) {
    const key = JSON.stringify([each.path.replace(/\[\d+\]/, '[]'), each.value, each.source]);
    const same = merged.get(key);
    if (same) same.owners.push(ownerOf(each.path, scenario));
    else merged.set(key, { first: each, owners: [ownerOf(each.path, scenario)] });
  }
  return Array.from(merged.values(), ({ first, owners }) => {
    const { path, label, value, band, grade, source } = first;
    const ends = band ? `, ${band.map((end) => text(path, end, both)).join(' to ')}` : '';
    const [one, ...others] = new Set(owners);
    const whose = [one, ...others.map((each) => each.replace(/^coil /, ''))].join(', ');
    return {
      line: `${whose}: ${fromSim(label)} ${text(path, value, both)}${ends} (${grade}: ${fromSim(source)})`,
      count: owners.length,
    };
  });
}
