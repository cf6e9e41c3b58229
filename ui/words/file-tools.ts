/** Buttons of files, which stand in the page; the rest of their words is loaded with the first file. */
export const fileTools = {
  group: 'Files',
  open: 'Open a file',
  save: 'Save to a file',
  link: 'Copy a link',
  /** For a phone. */
  short: { open: 'Open', save: 'Save', link: 'Link' },
  saveChart: (title: string) => `Save this chart: ${title}`,
  saveChartShort: 'Save',
} as const;
