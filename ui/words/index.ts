/** Words on screen and on paper: one catalogue for page, print and terminal. */
export * from './cautions.ts';
export * from './channels.ts';
export * from './dates.ts';
export * from './errors.ts';
export * from './events.ts';
export * from './figures.ts';
export * from './ledger.ts';
export * from './speak.ts';
export * from './units.ts';
