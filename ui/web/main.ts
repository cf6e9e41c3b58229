/** Opens the page: the first scenario runs at once, in a worker. */
import { catalogue } from './app/catalogue.ts';
import { openPage } from './app/page.ts';
import { TankfulPage } from './elements/tankful-page.ts';
import { createPool } from './worker/pool.ts';
import { createRunner } from './worker/runner.ts';

/** Runs that answers need are shared out among so many; more than a small machine has cores gain nothing. */
const answerWorkers = Math.min(2, navigator.hardwareConcurrency || 1);

const startWorker = () => new Worker(new URL('./worker/simulate.ts', import.meta.url), { type: 'module' });
const element = new TankfulPage();
element.page = openPage({
  catalogue,
  runner: createRunner(startWorker),
  pool: createPool(startWorker, answerWorkers),
  now: () => performance.now(),
  builtIn: null,
});
document.body.append(element);
