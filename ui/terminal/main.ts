/** Entry of the terminal program. */
import { runProgram } from './program.ts';
import { processTerminal } from './terminal.ts';

// `tankful run demo.json | head` closes the pipe early: that is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

// Set rather than called, so that output still waiting is written.
process.exitCode = runProgram(process.argv.slice(2), processTerminal());
