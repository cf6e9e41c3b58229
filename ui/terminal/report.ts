/** The report that `tankful run` prints: the days, the figures with what stands beside them, where the heat goes. */
import type { FigureBands, Result } from '../../sim/index.ts';
import {
  dateWords,
  eventLabel,
  nameText,
  reportWords,
  severityWords,
  speakIn,
  type UnitSystem,
} from '../words/index.ts';
import { doubtful } from './bands.ts';
import { cautionLines, licensedLines } from './caution-lines.ts';
import { dayLines } from './day-rows.ts';
import { figureLines, looseCautions, saidCautions } from './figures-table.ts';
import { ledgerLines } from './ledger-table.ts';
import type { Loaded } from './load.ts';
import { forScreen, paint, type Screen } from './screen.ts';
import { harmless, wrap } from './text.ts';

export interface ReportInput {
  file: string;
  loaded: Loaded;
  result: Result;
  /** Null where the bands were not worked out. */
  bands: FigureBands | null;
  units: UnitSystem;
}

export function reportText(input: ReportInput, screen: Screen): string {
  const { loaded, result, bands, units } = input;
  const { plant, notes } = loaded.read;
  const figures = { result, bands: bands?.bands ?? {}, units };
  const loose = looseCautions(result).sort(
    (a, b) => severityOrder.indexOf(a.severity) - severityOrder.indexOf(b.severity),
  );
  const sections = [
    headLines(input, screen),
    dayLines(result, plant, units, screen),
    figureLines(figures, screen),
    ledgerLines(result.ledger, screen),
    loose.length === 0
      ? []
      : [
          paint(screen, 'bold', reportWords.mind),
          ...saidCautions(loose, units, screen).flatMap((said) => cautionLines(said, screen)),
        ],
    eventLines(result, screen),
    [
      ...licensedLines(saidCautions(result.cautions, units, screen), screen),
      ...assumptionLines(input, screen),
      ...notes.flatMap(({ path, text }) => wrap(harmless(reportWords.note(path, text)), screen.width, '  ')),
    ],
  ];
  const text = sections
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n');
  return `${forScreen(text, screen)}\n`;
}

const severityOrder = Object.keys(severityWords);

function headLines({ result, loaded, units }: ReportInput, screen: Screen): string[] {
  const { plant } = loaded.read;
  const { run, collector, engine, store } = plant;
  const speak = speakIn(units, { plain: !screen.unicode });
  const parts = [
    reportWords.days(run.days, dateWords(run.first_day)),
    reportWords.store(store.shape.kind, speak.length(store.water_depth_m)),
    engine ? nameText(engine.name) : reportWords.noEngine,
    collector ? nameText(collector.name) : reportWords.noCollector,
  ];
  return [
    paint(screen, 'bold', harmless(result.name)),
    ...wrap(harmless(`${parts.join('; ')}.`), screen.width),
  ];
}

/** How often each part did what; the JSON says when. */
function eventLines({ events }: Result, screen: Screen): string[] {
  const counts = new Map<string, Map<string, number>>();
  for (const { part, name } of events) {
    const ofPart = counts.get(part) ?? new Map<string, number>();
    ofPart.set(name, (ofPart.get(name) ?? 0) + 1);
    counts.set(part, ofPart);
  }
  const lines = Array.from(counts, ([part, names]) => {
    const happened = Array.from(names, ([name, times]) => `${eventLabel(name)} ${reportWords.often(times)}`);
    return `  ${nameText(part)}: ${happened.join(', ')}`;
  });
  return lines.length === 0
    ? []
    : [
        paint(screen, 'bold', reportWords.happened),
        ...lines.flatMap((line) => wrap(harmless(line), screen.width, '    ')),
      ];
}

/** How much of it rests on what nobody entered, and what to measure first. */
function assumptionLines({ loaded, bands, file }: ReportInput, screen: Screen): string[] {
  const { filled } = loaded.read;
  if (filled.length === 0) return [];
  const doubts = doubtful(filled).length;
  const sentences = [reportWords.assumptions(filled.length, doubts, file)];
  if (bands === null && doubts > 0) sentences.push(reportWords.noBands);
  if (bands && bands.tried.length > 0) {
    sentences.push(reportWords.bands(bands.tried.length, bands.untried), ...measureSentences(bands));
  }
  return sentences.flatMap((sentence) => wrap(harmless(sentence), screen.width, '  '));
}

/** The assumptions that widen most bands, with how to measure them. */
function measureSentences({ bands }: FigureBands): string[] {
  const counts = new Map<string, { count: number; sentence: string }>();
  for (const { most } of Object.values(bands)) {
    if (most.measure === null) continue;
    const seen = counts.get(most.path) ?? {
      count: 0,
      sentence: reportWords.measureFirst(most.label, most.path, most.measure),
    };
    seen.count++;
    counts.set(most.path, seen);
  }
  return [...counts.values()]
    .sort((a, b) => b.count - a.count)
    .slice(0, 2)
    .map(({ sentence }) => sentence);
}
