/** Opens the page: what was solved when it was built stands at once; the workers wake afterwards. */
import { builtInId, unpackBuiltIn } from './app/built-in.ts';
import { catalogueOf, opening } from './app/catalogue.ts';
import { openPage } from './app/page.ts';
import { nothingKept } from './app/shelf/kept.ts';
import { asCode } from './app/trusted.ts';
import { TankfulPage } from './elements/tankful-page.ts';
import { latePool } from './worker/late-pool.ts';
import { createRunner } from './worker/runner.ts';

/** Runs that answers need are shared out among so many; more than a small machine has cores gain nothing. */
const answerWorkers = Math.min(2, navigator.hardwareConcurrency || 1);

/** Reading what stands there comes first. */
const wakeAfter_ms = 300;

const startWorker = () =>
  new Worker(asCode(new URL('./worker/simulate.ts', import.meta.url)), { type: 'module' });
const solved = document.getElementById(builtInId);
const builtIn = solved?.textContent ? unpackBuiltIn(solved.textContent) : null;
const element = new TankfulPage();
const page = openPage({
  catalogue: catalogueOf(builtIn?.scenarios ?? []),
  opening,
  runner: createRunner(startWorker),
  pool: latePool(async () => (await import('./worker/pool.ts')).createPool(startWorker, answerWorkers)),
  now: () => performance.now(),
  later(act, ms) {
    const timer = setTimeout(act, ms);
    return () => clearTimeout(timer);
  },
  builtIn,
});
element.page = page;
document.body.append(element);
// First the picture, then the shelf, then the work.
requestAnimationFrame(() =>
  setTimeout(() =>
    wakeShelf().catch(() => {
      // Its code did not come: that nothing is kept is said all the same.
      page.store.set({ kept: { ...nothingKept, saved: { at: 'failed', why: 'refused' } } });
    }),
  ),
);
requestAnimationFrame(() =>
  setTimeout(() => {
    page.wake();
    if (import.meta.env.PROD) void keep();
  }, wakeAfter_ms),
);

async function wakeShelf(): Promise<void> {
  const [{ wakeInBrowser }] = await Promise.all([
    import('./app/shelf/wake.ts'),
    import('./elements/shelf/tankful-kept.ts'),
  ]);
  await wakeInBrowser(page);
}

/** Where the page is one of an installable site. */
async function keep(): Promise<void> {
  if (!document.querySelector('link[rel=manifest]')) return;
  await import('./elements/shell/tankful-newer.ts');
  document.body.append(document.createElement('tankful-newer'));
}
