/** Words of the command line alone. */
export * from './commands.ts';
export * from './refusals.ts';
export * from './reports.ts';
