/** Words of the terminal's reports that stand nowhere else. */
import { figureBandWords } from '../figures.ts';
import { fromSim } from '../from-sim.ts';
import { counted } from '../locale.ts';

export const reportWords = {
  running: 'Running',
  workingBands: 'Working out the bands',
  sweep: (done: number, of: number, left: string) => `${done} of ${of}, about ${left} left`,
  days: (days: number, from: string) => `${counted(days, 'day')} from ${from}`,
  store: (kind: string, depth: string) => `${fromSim(kind)} with water ${depth} deep`,
  noEngine: 'no engine',
  noCollector: 'no collector',
  mind: 'Mind',
  happened: 'What happened',
  often: (times: number) => (times > 1 ? counted(times, 'time') : 'once'),
  note: (path: string, text: string) => `Note - ${path}: ${fromSim(text)}.`,
  assumptions: (filled: number, doubtful: number, file: string) =>
    `${counted(filled, 'assumption was', 'assumptions were')} filled in, ${doubtful} of them doubtful. List them: tankful check ${file}`,
  noBands: 'The bands were left out; --bands works them out.',
  bands: figureBandWords.told,
  measureFirst: (label: string, path: string, how: string) =>
    `Measure first: ${fromSim(label)} (${path}). ${fromSim(how)}`,
  share: 'share',
  /** A residual too small for decimals. */
  leastResidual: 'less than 0.0001 %',
  residual: (label: string, percent: string, through: string) =>
    `${label}: ${percent} of ${through} that passed through.`,
} as const;

export const summaryWords = {
  sound: (file: string, read: number, filled: number, doubtful: number) =>
    `${file} is sound: ${counted(read, 'quantity', 'quantities')} read, ${counted(filled, 'assumption')} filled in, ${doubtful} of them doubtful.`,
  understood: 'Understood',
  filledIn: 'Filled in',
  grades:
    'Grades: A handbook, standard or logged data; B long practice; C an assertion; D common practice; invented, for show.',
  perhaps: (band: string) => `, perhaps ${band}`,
  measureIt: (how: string) => `Measure it: ${fromSim(how)}`,
  values: (count: number) => counted(count, 'value'),
} as const;

/** Below an answer's tables. */
export const answerReportWords = {
  stopped: 'Stopped: what is missing was not computed.',
  levers: (headline: string) => `What would change it most (${headline})`,
  leverEnd: (value: string, at: string) => `${value} at ${at}`,
  measureFirst: (how: string) => `Measure first: ${fromSim(how)}`,
} as const;

export const rangeReportWords = {
  number: 'number',
  varied: (paths: readonly string[]) => `Varied: ${paths.join(' and ')}.`,
  stopped: (done: number, of: number) => `Stopped: ${done} of ${of} runs were done.`,
  failed: (failed: number, of: number) => `${failed} of ${of} could not be run:`,
  undone: 'not done',
} as const;
