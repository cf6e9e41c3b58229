/** What `tankful check` says of a sound file: every quantity as understood, every default with where it comes from. */
import type { FilledDefault } from '../../sim/index.ts';
import { fromSim, inputMeaning, reportWords, summaryWords } from '../words/index.ts';
import { bandWords, doubtful } from './bands.ts';
import type { Loaded } from './load.ts';
import { forScreen, paint, type Screen } from './screen.ts';
import { tableLines } from './table.ts';
import { harmless, wrap } from './text.ts';

export function summaryText({ json, read }: Loaded, file: string, screen: Screen): string {
  const { plant, filled, notes } = read;
  const understood = understoodRows(json, !screen.unicode);
  const sections = [
    [
      paint(screen, 'bold', harmless(plant.name)),
      ...wrap(
        summaryWords.sound(file, understood.length, filled.length, doubtful(filled).length),
        screen.width,
      ),
    ],
    [paint(screen, 'bold', summaryWords.understood), ...tableLines(understood, ['left', 'left', 'left'])],
    [
      paint(screen, 'bold', summaryWords.filledIn),
      ...wrap(summaryWords.grades, screen.width),
      ...filled.flatMap((entry) => filledLines(entry, screen)),
    ],
    notes.flatMap(({ path, text }) => wrap(harmless(reportWords.note(path, text)), screen.width, '  ')),
  ];
  const text = sections
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n');
  return `${forScreen(text, screen)}\n`;
}

function filledLines(
  { path, label, value, source, grade, band, measure }: FilledDefault,
  screen: Screen,
): string[] {
  const head = `  ${path}: ${value}${band ? summaryWords.perhaps(bandWords(band)) : ''} (${grade}: ${fromSim(source)})`;
  const lines = wrap(harmless(`${head} - ${fromSim(label)}`), screen.width, '    ');
  return measure
    ? [...lines, ...wrap(`    ${summaryWords.measureIt(measure)}`, screen.width, '    ')]
    : lines;
}

/** A list of alike values, as of twelve months, takes one row. */
const longestSpelledOut = 3;

/** Path, text as written, value as understood; of the fields that are quantities or prices. */
function understoodRows(json: unknown, plain: boolean): string[][] {
  const rows: string[][] = [];
  const visit = (value: unknown, path: string, pattern: string): void => {
    if (typeof value === 'string' || typeof value === 'number') {
      const text = String(value);
      const meaning = inputMeaning(pattern, text, plain);
      if (meaning !== null) rows.push([`  ${path}`, harmless(text), meaning]);
    } else if (Array.isArray(value)) {
      const alike = value.length > longestSpelledOut && value.every((item) => typeof item === 'string');
      const meanings = alike ? value.map((item) => inputMeaning(`${pattern}[]`, item, plain)) : [];
      if (alike && meanings.every((meaning) => meaning !== null)) {
        rows.push([`  ${path}`, summaryWords.values(value.length), `${meanings[0]}, ...`]);
      } else {
        for (const [i, item] of value.entries()) visit(item, `${path}[${i}]`, `${pattern}[]`);
      }
    } else if (typeof value === 'object' && value !== null) {
      const within = (name: string, at: string) => (at === '' ? name : `${at}.${name}`);
      for (const [name, item] of Object.entries(value))
        visit(item, within(name, path), within(name, pattern));
    }
  };
  visit(json, '', '');
  return rows;
}
