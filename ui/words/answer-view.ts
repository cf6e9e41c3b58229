/** Words around an answer on the page: its curve, its tables, what would change it. */
export const answerViewWords = {
  present: 'as it is',
  presentRow: 'the design as it stands',
  knee: (at: string, begins: string) => `from ${at} on ${begins}`,
  curveHelp: 'Left and right by value, up and down by line.',
  curveSentence: (title: string, lines: string) => `${title}: ${lines}.`,
  thin: (many: number) => `each of ${many} runs`,
  from: (label: string, low: string, high: string) => `${label} from ${low} to ${high}`,
  over: (figure: string, input: string) => `${figure}, over ${input}`,
  curveOf: 'Curve of',
  showTable: 'Show as table',
  hideTable: 'Hide table',
  levers: (headline: string) => `What would change it most (${headline})`,
  input: 'Input',
  ends: ['At one end of what is believed', 'At the other'],
  at: (value: string, input: string) => `${value} at ${input}`,
  measureFirst: 'Measure first:',
  mind: 'Mind',
  taken: 'Taken for granted',
} as const;

/** What a curve runs over, by its column's key. */
export const columnNames: Readonly<Record<string, string>> = {
  area_m2: 'Area of the collector',
  day: 'Day',
  dull_days: 'Dull days',
  length_m: 'Length of tube',
  month: 'Month',
  sides_m2K_W: 'Resistance of the sides',
  tank_C: 'Store',
  time_s: 'Time',
  volume_m3: 'Water held',
};
