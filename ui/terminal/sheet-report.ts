/** The build sheet as a terminal shows it. */
import packageJson from '../../package.json' with { type: 'json' };
import type { Answer, BuildSheet, Caution, FilledDefault, Scenario, SectionFacts } from '../../sim/index.ts';
import {
  answerWords,
  assumptionLines,
  type Both,
  coilTable,
  dayText,
  fittingsBlock,
  givenBlock,
  givenWords,
  inBothUnits,
  panelsBlock,
  probesBlock,
  type SheetBlock,
  severityWords,
  sheetCautions,
  sheetCautionWords,
  sheetWords,
  storeBlock,
  tubeBlock,
  weightBlock,
} from '../words/index.ts';
import { forScreen, paint, type Screen } from './screen.ts';
import { harmless, wrap } from './text.ts';

export interface SheetTold {
  name: string;
  file: string;
  scenario: Scenario;
  facts: SectionFacts;
  sheet: BuildSheet;
  cautions: readonly Caution[];
  filled: readonly FilledDefault[];
  answers: readonly Answer[];
  currency: string;
  today: Date;
}

/** As many assumptions as a person reads through; `tankful check` lists them all. */
const mostAssumptions = 20;

export function sheetText(told: SheetTold, screen: Screen): string {
  const { name, facts, sheet, scenario, currency, today } = told;
  const both = inBothUnits({ plain: !screen.unicode, currency });
  const given = givenBlock(scenario, told.filled, both);
  const block = (each: SheetBlock) => blockLines(each, screen);
  const sections = [
    [
      paint(screen, 'bold', harmless(`${sheetWords.title}: ${name}`)),
      sheetWords.made(packageJson.version, dayText(today)),
      ...wrap(sheetWords.estimate, screen.width),
    ],
    block(storeBlock(sheet, facts, both)),
    coilLines(coilTable(sheet.coils, both), screen),
    block(probesBlock(sheet, both)),
    block(weightBlock(sheet, both)),
    block(tubeBlock(sheet, both)),
    block(panelsBlock(sheet, both)),
    block(fittingsBlock(sheet)),
    answerLines(told, both, screen),
    cautionLines(told, both, screen),
    given ? block(given) : [],
    assumed(told, both, screen),
  ];
  const text = sections.filter((lines) => lines.length > 0).map((lines) => lines.join('\n'));
  return forScreen(`${text.join('\n\n')}\n`, screen);
}

function said(text: string, screen: Screen): string[] {
  return wrap(harmless(`  ${text}`), screen.width, '    ');
}

/** A table's rows become sentences: a shed's paper is wide, a terminal is not. */
function blockLines({ title, lines, table }: SheetBlock, screen: Screen): string[] {
  const rows = (table?.rows ?? []).map(([first, ...cells]) => {
    const rest = cells.map((cell, i) => [table?.heads[i + 1], cell].filter(Boolean).join(' '));
    return `${first}: ${rest.join('; ')}`;
  });
  return [paint(screen, 'bold', title), ...[...rows, ...lines].flatMap((line) => said(line, screen))];
}

/** Each coil by itself. */
function coilLines({ title, lines, table }: SheetBlock, screen: Screen): string[] {
  const coils = (table?.heads ?? [])
    .slice(1)
    .flatMap((name, i) => [
      ...said(name, screen),
      ...(table?.rows ?? []).flatMap((row) =>
        wrap(harmless(`    ${row[0]}: ${row[i + 1]}`), screen.width, '      '),
      ),
    ]);
  return coils.length === 0
    ? []
    : [paint(screen, 'bold', title), ...coils, ...lines.flatMap((line) => said(line, screen))];
}

function answerLines({ answers }: SheetTold, { say }: Both, screen: Screen): string[] {
  const lines = answers.map((answer) => {
    const { title, sentence } = answerWords[answer.key];
    return `${title}. ${sentence(answer, say)}`;
  });
  return lines.length === 0
    ? []
    : [paint(screen, 'bold', sheetWords.answers), ...lines.flatMap((line) => said(line, screen))];
}

function cautionLines({ cautions, facts, sheet }: SheetTold, both: Both, screen: Screen): string[] {
  const { cause, standing } = sheetCautions(cautions, facts, sheet, both);
  return [
    paint(screen, 'bold', sheetCautionWords.title),
    sheetCautionWords.cause,
    ...cause.flatMap(({ severity, title, text }) =>
      said(`${severityWords[severity]}: ${title}. ${text}`, screen),
    ),
    sheetCautionWords.standing,
    ...standing.flatMap(({ title, text }) => said(`${title}. ${text}`, screen)),
  ];
}

function assumed({ filled, answers, scenario }: SheetTold, both: Both, screen: Screen): string[] {
  const all = assumptionLines(filled, answers, scenario, both);
  const shown = all.slice(0, mostAssumptions);
  const more = all.slice(mostAssumptions).reduce((sum, { count }) => sum + count, 0);
  return [
    paint(screen, 'bold', givenWords.assumptions),
    ...wrap(givenWords.intro(all.length), screen.width),
    ...shown.flatMap(({ line }) => said(line, screen)),
    ...(all.length > 0 ? wrap(givenWords.more(more), screen.width) : []),
  ];
}
