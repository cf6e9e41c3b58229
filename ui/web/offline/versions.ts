/** The page's side of its keeper (keep.ts): sends for it, and hears of newer versions. Nothing is reloaded unasked. */
import { asCode } from '../app/trusted.ts';

/**
 * Keeps the page for when there is no network. `ready` is called, perhaps never, when a newer version has been taken in;
 * calling what it is given changes over to it. Where a browser will not keep pages, nothing happens.
 */
export async function keepPage(ready: (changeOver: () => void) => void): Promise<void> {
  const { serviceWorker } = navigator;
  try {
    await serviceWorker.register(asCode(new URL('./offline.js', document.baseURI)));
  } catch {
    return;
  }
  const registration = await serviceWorker.ready;
  const changeOver = () => {
    const reload = () => location.reload();
    serviceWorker.addEventListener('controllerchange', reload, { once: true });
    // Another window may have changed over already.
    if (registration.waiting) registration.waiting.postMessage('use');
    else reload();
  };
  const look = () => {
    if (registration.waiting) ready(changeOver);
  };
  look();
  registration.addEventListener('updatefound', () =>
    registration.installing?.addEventListener('statechange', look),
  );
  registration.installing?.addEventListener('statechange', look);
  document.addEventListener('visibilitychange', () => {
    // Without a network there is nothing newer.
    if (!document.hidden) registration.update().catch(() => {});
  });
}
