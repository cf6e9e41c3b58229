/** What the page says beside the words it shares with paper and terminal. */
import { dateWords, storeWords } from '../../words/index.ts';
import type { TimeTick } from '../charts/frame.ts';
import type { DaysData } from './days-data.ts';
import type { Shown } from './page-state.ts';

export const pageWords = {
  title: 'Tankful',
  sentence:
    'How warm a homemade hot-water store stays, day by day, with a small engine and the sun heating it and a household drawing from it.',
  estimate:
    'Estimates, not approvals: a store that boils, scalds or bursts hurts people. Local code and licensed practice decide.',
  lastGood: 'Last good run, not the design as it stands:',
  scenario: 'Scenario',
  from: 'Start',
  days: 'Days',
  units: 'Units',
  unitNames: { US: 'US (°F, gal, Btu)', SI: 'SI (°C, L, kWh)', mixed: 'mixed (°F, gal, kWh)' },
  running: 'Running',
  stop: 'Stop',
  daysPanel: 'Days',
  temperatures: 'Store temperatures',
  byHeight: 'Temperature by height in the store',
  heat: 'Heat into the store (up) and out of it (down)',
  bands: 'each day’s mean, in a band from its lowest to its highest',
  ranCold: 'ran cold at the tap',
  hottestWanted: 'hottest wanted at the tap,',
  warmEnough: 'warm enough for every tap,',
  streams: { engine: 'engine', sun: 'sun', household: 'household', losses: 'losses' },
  /** Short names of channels, for the narrow columns of the readout. */
  channels: {
    outlet_C: 'at the tap',
    wanted_C: 'wanted',
    mixed_flow_m3_s: 'flow',
    air_C: 'outdoors',
    sun_W_m2: 'on the glass',
  },
  heatTitle: 'Heat, mean up to then',
  tapTitle: 'Tap',
  outsideTitle: 'Outdoors',
  scalds: '(scalds)',
  nothingDrawn: 'nothing drawn',
  cursorName: 'Moment shown',
  cursorHelp:
    'Point at the charts or focus them: arrow keys move by one sample, Page Up and Page Down by a day, Home and End to the ends.',
  showTable: 'Show as table',
  hideTable: 'Hide table',
  until: 'Until',
  tableCaption: (step_s: number) =>
    `One row ${step_s >= 86_400 ? 'a day' : 'an hour'}: temperatures at its end, heat as the mean over it, and how long water ran cold.`,
  figures: 'Figures',
  ledgerHead: { path: 'Path', energy: 'Energy', share: 'Share' },
  leastResidual: 'under 0.0001 %',
  alsoMind: 'Also mind',
} as const;

const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

/** "Sat" for a time after the run's first midnight. */
export function weekdayWords(firstWeekday: number, time_s: number): string {
  return weekdays[(firstWeekday + Math.floor(time_s / 86_400)) % 7];
}

/** What the results on the page are of. */
export function shownWords({ result, firstWeekday, filled }: Shown): string {
  const { name, first_day, days } = result;
  const last_s = (days - 1) * 86_400;
  const day = (time_s: number) =>
    `${weekdayWords(firstWeekday, time_s)} ${dateWords(first_day + time_s / 86_400)}`;
  const span = days === 1 ? `${day(0)}, 1 day` : `${day(0)} to ${day(last_s)}, ${days} days`;
  const defaults =
    filled.length === 0
      ? ''
      : ` ${filled.length} ${filled.length === 1 ? 'value was' : 'values were'} left to defaults.`;
  return `${name}: ${span}.${defaults}`;
}

/** Words under a tick: the day at midnight, the hour between; weekdays as long as days are told apart. */
export function tickWords({ result, firstWeekday }: Shown, { time_s, step_s, midnight }: TimeTick): string {
  if (!midnight) return `${String(Math.round((time_s % 86_400) / 3600)).padStart(2, '0')}:00`;
  const date = dateWords(result.first_day + time_s / 86_400);
  return step_s <= 86_400 ? `${weekdayWords(firstWeekday, time_s)} ${date.split(' ')[1]}` : date;
}

/** Each chart in a sentence, for those who do not see it. */
export const chartSentence = {
  temperature({ temperature: { lines, cold }, units }: DaysData): string {
    const ranges = lines.map(({ key, values }) => {
      const [low, high] = lowHigh(values);
      return `${storeWords[key as keyof typeof storeWords]} ${units.temperature.text(low)} to ${units.temperature.text(high)}`;
    });
    const ran = cold.length === 0 ? 'no water ran cold' : `water ran cold in ${cold.length} spells`;
    return `Store temperatures over the days: ${ranges.join(', ')}; ${ran}.`;
  },
  field({ fieldScale, usable, units }: DaysData): string {
    const warm = usable === null ? '' : `, with a line at ${units.temperature.text(usable)}`;
    return `Temperature by height and time, ${units.temperature.text(fieldScale.low)} to ${units.temperature.text(fieldScale.high)}${warm}.`;
  },
  heat({ heat: { streams }, units }: DaysData): string {
    const peaks = streams.map(({ key, values }) => {
      const high = Math.max(0, lowHigh(values)[1]);
      return `${pageWords.streams[key as keyof typeof pageWords.streams]} up to ${units.power.text(high)}`;
    });
    return `Heat into and out of the store: ${peaks.join(', ')}.`;
  },
};

function lowHigh(values: ArrayLike<number>): [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < values.length; i++) {
    if (values[i] < low) low = values[i];
    if (values[i] > high) high = values[i];
  }
  return [low, high];
}
