/** What the terminal refuses: parts of the one shape of an error. */
export const refusalWords = {
  commandLine: 'command line',
  command: { expected: 'a command with its options', fix: 'see tankful --help' },
  units: { expected: 'us or si', fix: 'leave it out for us' },
  oneForm: { expected: 'one of --json, --csv', got: 'both', fix: 'leave one out' },
  oneOutput: { expected: 'one of --json, --csv, --out', fix: '--out writes all of them' },
  both: (words: readonly string[]) => words.join(' and '),
  days: { expected: 'a whole number of days', fix: writtenAs('--days 7') },
  dull: { expected: 'a whole number of days, 1 to 6', fix: writtenAs('--dull 3') },
  rolls: { expected: 'a whole number of rolls, 1 to 50', fix: writtenAs('--rolls 2') },
  whole: (least: number, most: number) => `a whole number, ${least} to ${most}`,
  writtenAs,
  threads: {
    expected: (most: number) => `a whole number of threads, 1 to ${most}`,
    fix: 'leave it out for as many as there are cores',
  },
  tube: {
    expected: 'a size and what tube it is, as "3/8 in refrigeration" or "1/2 in plumbing L"',
    noKind: 'say which: refrigeration tube measures its name across the outside, plumbing tube 1/8 in more',
    noSize: 'put the size first',
  },
  noCoil: {
    where: 'taps, engine',
    expected: 'a household or an engine whose coil to look at',
    got: 'neither',
    fix: 'add "taps" or "engine" to the scenario',
  },
  bareCoil: {
    expected: (flags: readonly string[]) => `a scenario file, or ${flags.join(', ')}`,
    none: 'none of them',
    missing: (flags: readonly string[]) => `nothing for ${flags.join(', ')}`,
    fix: 'as in: tankful coil --tube "3/8 in refrigeration" --length "50 ft" --flow "2 gpm" --tank "140 F" --cold "45 F"',
  },
  noHousehold: {
    expected: 'a scenario with a household',
    got: 'none',
    fix: 'add "taps", or leave the option out',
  },
  noShowers: {
    expected: 'a scenario that names showers',
    got: 'none under "taps"',
    fix: 'add "showers", or leave it out',
  },
  noScenario: { expected: 'a scenario: one { ... }', got: 'something else', fix: 'choose a scenario file' },
  run: { where: 'the run', fix: 'change the scenario where the message points' },
  finish: 'to finish',
  thread: (problem: string) => `a run - expected to finish - got ${problem} - report it`,
  report: 'please report it together with the scenario file',
} as const;

function writtenAs(example: string): string {
  return `write it as in ${example}`;
}

/** Why a file cannot be read or written. */
export const terminalFileWords = {
  scenario: 'a scenario file (JSON text)',
  weather: 'a weather file (CSV text)',
  log: 'a log (CSV text)',
  device: { got: 'a device', fix: 'choose a file' },
  long: {
    expected: (what: string, most: string) => `${what} of at most ${most}`,
    fix: 'choose another file',
  },
  path: 'check the path',
  utf8: (what: string) => `${what} in UTF-8`,
  utf16: 'UTF-16',
  noUtf8: 'bytes that are no UTF-8',
  saveAgain: 'save it again as UTF-8',
  binary: { got: 'binary data', fix: 'choose the text file' },
  folder: { expected: 'a folder to write into', fix: 'choose another folder' },
} as const;

/** By the system's own code. */
export const fileReasons: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  ENOTDIR: 'a path through something that is no folder',
  EISDIR: 'a folder',
  EEXIST: 'a file of that name',
  EACCES: 'no permission',
  EPERM: 'no permission',
  EROFS: 'a place that cannot be written to',
  ENOSPC: 'no room left on the disk',
  ENAMETOOLONG: 'a name too long for the disk',
  ELOOP: 'links that lead round in a circle',
};
