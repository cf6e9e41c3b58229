/** A fit as a terminal shows it: what was found, what cannot be, probes, measured over simulated. */
import { comparedCurve, type FilledDefault, type FitAnswer } from '../../sim/index.ts';
import {
  csvCell,
  fitCautions,
  fitInputName,
  fitSentence,
  fitValue,
  fitWords,
  type Say,
} from '../words/index.ts';
import { curveLines } from './curve-chart.ts';
import { forScreen, paint, type Screen } from './screen.ts';
import { tableLines } from './table.ts';
import { harmless, wrap } from './text.ts';

export interface FitTold {
  answer: FitAnswer;
  coils: readonly string[];
  filled: readonly FilledDefault[];
  /** Where the fitted scenario was written, or null. */
  wrote: string | null;
}

export function fitText({ answer, coils, filled, wrote }: FitTold, say: Say, screen: Screen): string {
  const nameOf = (path: string) => fitInputName(path, coils);
  const said = (text: string) => wrap(harmless(text), screen.width);
  const inputs = answer.inputs.map(({ path, before, value, low, high, form, told }) => [
    harmless(nameOf(path)),
    fitValue(before.value, form),
    ...(told ? [value, low, high].map((each) => fitValue(each, form)) : ['', '', '']),
    told ? fitWords.told : fitWords.untold,
  ]);
  const kelvin = (value: number) => say.quantity(value, 'temperature_difference', 2);
  const probes = answer.probes.map(({ name, offset_K, offsetDoubt_K, rms_K, drift_K_day }) => [
    harmless(name),
    kelvin(-offset_K),
    kelvin(offsetDoubt_K),
    kelvin(rms_K),
    drift_K_day === null ? '-' : kelvin(drift_K_day),
  ]);
  const sections = [
    [paint(screen, 'bold', fitWords.title), ...said(fitSentence(answer, say, nameOf))],
    [
      paint(screen, 'bold', fitWords.inputs),
      ...tableLines([fitWords.heads, ...inputs], ['left', 'right', 'right', 'right', 'right', 'left']),
    ],
    ...answer.probes.map(({ name }, probe) => {
      const lines = { measured: fitWords.measured(name), simulated: fitWords.simulated(name) };
      return curveLines(comparedCurve(answer, probe), { title: fitWords.compared, lines }, say, screen);
    }),
    [
      paint(screen, 'bold', fitWords.probes),
      ...tableLines([fitWords.probeHeads, ...probes], ['left', 'right', 'right', 'right', 'right']),
    ],
    fitCautions(answer, filled, nameOf).flatMap((each) =>
      wrap(harmless(`  ! ${each}`), screen.width, '    '),
    ),
    [
      ...(answer.settled ? [] : said(fitWords.unsettled)),
      ...(answer.ignored.length > 0 ? said(fitWords.ignored(answer.ignored)) : []),
      ...said(wrote === null ? fitWords.hint : fitWords.wrote(wrote)),
    ],
  ];
  const shown = sections.filter((lines) => lines.length > 0).map((lines) => lines.join('\n'));
  return forScreen(`${shown.join('\n\n')}\n`, screen);
}

/** Measured beside simulated, a line a reading. */
export function fitCsv({ compared, probes }: FitAnswer): string {
  const lines = compared.map(({ time_s, probe, measured_C, simulated_C }) =>
    [time_s, csvCell(probes[probe].name), measured_C.toFixed(3), simulated_C.toFixed(3)].join(','),
  );
  return `${['time (s),probe,measured (C),simulated (C)', ...lines].join('\n')}\n`;
}
