/** Entry of the terminal program, and of the threads that it starts from the same file. */
import { workerData } from 'node:worker_threads';
import { isJobThread, serveJobs } from './job-thread.ts';
import { runProgram } from './program.ts';
import { processTerminal } from './terminal.ts';

if (isJobThread(workerData)) serveJobs(workerData);
else await program();

async function program(): Promise<void> {
  // `tankful run demo.json | head` closes the pipe early: that is no failure.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    throw error;
  });
  // Set rather than called, so that output still waiting is written.
  process.exitCode = await runProgram(process.argv.slice(2), processTerminal());
}
