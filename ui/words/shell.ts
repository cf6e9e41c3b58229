/** Words of the page itself: its rooms, what it shows just now, and a pinned design beside it. */
import { counted } from './locale.ts';

export const shellWords = {
  title: 'Tankful',
  sentence:
    'A homemade hot-water store, day by day: a small engine and the sun heat it, a household draws from it.',
  honesty:
    'Estimates, not approvals: a store that boils, scalds or bursts hurts people. Local code and licensed practice decide.',
  roomsName: 'Rooms of this page',
  rooms: { answers: 'Answers', section: 'Section', days: 'Days', heat: 'Where the heat goes' },
  /** Names short enough for a phone. */
  shortHeat: 'Heat',
  shortSheet: 'Sheet',
  design: 'Design',
  buildSheet: 'Build sheet',
  from: 'Start',
  days: 'Days',
  gestures: { from: 'first day', days: 'number of days' },
  units: 'Units',
  unitNames: { US: 'US: °F, Btu', SI: 'SI: °C, kWh', mixed: 'Mixed: °F, kWh' },
  /** What results are of: "Larch Hollow: Sat Jan 9 to Fri Jan 15, 7 days. 122 values were left to defaults." */
  shown: (name: string, first: string, last: string, days: number, defaults: number) =>
    `${name}: ${days > 1 ? `${first} to ${last}` : first}, ${counted(days, 'day')}.${
      defaults === 0 ? '' : ` ${counted(defaults, 'value was', 'values were')} left to defaults.`
    }`,
  running: 'Running',
  stop: 'Stop',
  again: 'Run again',
  moreTroubles: (many: number) => `${many} more`,
  lastGood: 'Last good run, not the design as it stands:',
  estimate: 'Quick estimate, coarser than a full run.',
  firstDays: (days: number, of: number) =>
    `Quick estimate of the first ${days} of ${of} days, coarser than a full run.`,
  atWork: 'The full run is under way.',
  pin: 'Pin this design',
  pinAgain: 'Pin this one instead',
  unpin: 'Take the pin out',
  compareTitle: 'Beside the pinned design',
  compareIntro: (name: string) => `Pinned: ${name}. It is drawn dashed wherever both can be seen.`,
  changedInputs: 'What was changed',
  noChange: 'Nothing yet: change something, and both stand side by side.',
  changedFigures: 'What came of it',
  sameFigures: 'No figure differs by as much as is shown.',
  changedAnswers: 'Answers',
  otherDays: 'The two runs are of other days: what differs is not the design alone.',
  input: 'Input',
  figure: 'Figure',
  answer: 'Answer',
  was: 'Pinned',
  is: 'Now',
  by: 'Difference',
  nothing: 'not said',
  figures: 'Figures',
  alsoMind: 'Also mind',
  ask: 'Work it out',
  toAsk: 'Still to ask:',
  askAgain: 'Work it out again',
  stopAnswer: 'Stop',
  rangeTitle: (label: string) => `Over a range: ${label}`,
  rangeOutdated: 'Of the design as it was when this was asked.',
  rangePresent: '(as it is)',
  rangeUndone: 'not run',
  failedAnswer: 'Could not be worked out:',
  stoppedAnswer: 'Stopped; worked out as far as it had come.',
  working: 'Working',
  worked: (done: number, of: number) => `${done} of ${of}`,
  left: (seconds: number) =>
    seconds < 120 ? `about ${seconds} s left` : `about ${Math.round(seconds / 60)} min left`,
  outdated: 'Of the design as it was:',
  newer: 'A newer version is ready.',
  useNewer: 'Use it now',
} as const;

/** "Coil: household, rolls". */
export function itemTitle(part: string, item: string): string {
  return `${part}, ${item}`;
}
