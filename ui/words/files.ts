/** Words about files and links: opening, saving, sharing, and what is wrong with one. */
import { numberFormat } from './locale.ts';
import { measuredWords } from './measured.ts';
import { sizeWords } from './sizes.ts';

const letters = numberFormat();

/** What a file is that is no text, by how it begins. */
const otherKinds = {
  zip: 'a packed folder or a spreadsheet (.xlsx, .ods, .zip)',
  spreadsheet: 'an old spreadsheet (.xls)',
  pdf: 'a PDF',
  picture: 'a picture',
  packed: 'a packed file (.gz)',
} as const;

/** What happens to files, and why one cannot be read. */
export const fileWords = {
  title: 'Files',
  close: 'Close',
  drop: 'Drop it: a design opens as a new one, weather goes into this design, a log is held against the run.',
  opened: (file: string) => `${file} is open as a new design.`,
  openedLink: 'The design of the link is open as a new one.',
  notSound: 'It cannot be run yet: what is wrong stands below.',
  weather: (file: string) => `The weather of this design now comes from ${file}.`,
  weatherFrom: (file: string) => `weather from ${file}`,
  log: (file: string) =>
    `${file} is a log of a store: it is held against the run under ${measuredWords.title}.`,
  kept: (file: string) => `${file} was not taken: this design may not be changed here just now.`,
  encoding: (encoding: string) => `Read as ${encoding}: check letters such as ° and é.`,
  refused: (file: string) => `${file} was not opened. Nothing on the page has changed.`,
  refusedLink: 'The link was not opened. Nothing on the page has changed.',
  tooMany: (most: number) => `Only the first ${most} files were looked at.`,
  saved: (file: string) => `Saved as ${file}.`,
  downloaded: (file: string) => `Handed to the browser as ${file}: it is where your downloads go.`,
  notSaved: (why: string) => `Not saved: ${why}. Try another place, or another name.`,
  aside: (file: string) =>
    `The weather file ${file} is not in it: a design names its weather, and does not hold it.`,
  saveAside: (file: string) => `Save ${file} too`,
  copied: (letters: string) =>
    `Link copied, ${letters} letters. It holds the whole design; no server sees it.`,
  notCopied: (letters: string) =>
    `The browser lets the page copy nothing. Here is the link, ${letters} letters: copy it by hand.`,
  linkName: 'Link to this design',
  ownAddress:
    'This page runs on your own computer, and its address means nothing on another: the part from #d= on works after the address of any other copy of the page.',
  longLink: (letters: string) =>
    `Some mail and chat programs cut links of more than ${letters} letters. Sending the file is safer.`,
  missing: (file: string) =>
    `This design takes its weather from ${file}, which is not at hand: links and designs name a weather file, and do not hold it.`,
  give: 'Give the weather file',
  make: 'Let the weather be made instead',
  made: 'weather made by latitude',
  long: (most: string, got: string) => ({
    expected: `a file of at most ${most}`,
    got,
    fix: 'choose another: a design is a few kB long, a year of hourly weather under 2 MB',
  }),
  empty: { expected: 'a design, weather or a log', got: 'an empty file', fix: 'choose another' },
  unreadable: {
    expected: 'a file the browser may read',
    got: 'a folder, or a file that was moved meanwhile',
    fix: 'choose the file again',
  },
  otherKind: (kind: keyof typeof otherKinds) => ({
    expected: 'a text file: JSON or CSV',
    got: otherKinds[kind],
    fix: 'choose the text file itself; a spreadsheet saves as CSV (UTF-8)',
  }),
  noText: {
    expected: 'a text file: JSON or CSV',
    got: 'bytes that are no text',
    fix: 'choose another; a spreadsheet saves as CSV (UTF-8)',
  },
  unknown: (line: string) => ({
    expected: 'a design (JSON), weather or a log (CSV with names and units in its first line)',
    got: `a first line "${line}"`,
    fix: 'name weather as in "time,air (F),sun (W/m2)", a log as in "time,top (F),bottom (F)"',
  }),
} as const;

/** The menu that saves a chart. */
export const chartWords = {
  menu: (title: string) => `Save: ${title}`,
  svg: 'Picture, sharp at any size (SVG)',
  png: 'Picture (PNG)',
  csv: 'Numbers, as in the table (CSV)',
  numbers: 'Numbers (CSV)',
  samples: 'Numbers, every sample shown (CSV)',
  failed: (why: string) => `The picture could not be made: ${why}. The numbers can still be saved.`,
  clock: 'since the first midnight',
  spell: { what: 'what ran', from: 'from', to: 'to' },
  group: 'which way',
  problem: 'why not',
  over: (name: string) => `Over ${name}`,
  layer: 'layer',
  from: 'from height',
  to: 'to height',
  water: 'water',
  foot: 'Computed by Tankful: an estimate of typical days, no approval of a design.',
} as const;

/** Why a link with a design cannot be read: parts of the one shape of an error. */
export const linkWords = {
  where: 'the link',
  empty: {
    expected: 'a design after #d=',
    got: 'nothing',
    fix: 'copy the whole link again, to its last letter',
  },
  long: (count: number, most: number) => ({
    expected: `at most ${letters.format(most)} letters`,
    got: letters.format(count),
    fix: 'ask for the design as a file',
  }),
  form: (got: string) => ({
    expected: 'a link of the form this page knows, #d=1',
    got: `the form "${got}"`,
    fix: 'load the page again to have its newest version, or ask for the design as a file',
  }),
  letters: {
    expected: 'letters, digits, - and _',
    got: 'something else, or a letter too few',
    fix: 'copy the whole link again: a message may have broken or bent it',
  },
  cut: {
    expected: 'a whole design',
    got: 'a part of one',
    fix: 'copy the whole link again, to its last letter, or ask for the design as a file',
  },
  changed: {
    expected: 'the letters that were sent',
    got: 'others',
    fix: 'copy the link again: a message may have bent it; or ask for the design as a file',
  },
  bomb: (bytes: number) => ({
    expected: `a design of at most ${sizeWords(bytes)}`,
    got: 'one that would unpack to more',
    fix: 'do not use this link; ask for the design as a file',
  }),
} as const;
