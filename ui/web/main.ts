/** Opens the page: the first scenario runs at once, in a worker. */
import { catalogue } from './app/catalogue.ts';
import { openPage } from './app/page.ts';
import { TankfulPage } from './elements/tankful-page.ts';
import { createRunner } from './worker/runner.ts';

const runner = createRunner(
  () => new Worker(new URL('./worker/simulate.ts', import.meta.url), { type: 'module' }),
);
const element = new TankfulPage();
element.page = openPage(catalogue, runner);
document.body.append(element);
