/** Hears buttons, drops and links on the page, and loads the code for files when there is something for it to do. */
import { linkMark } from '../../app/files/link-mark.ts';
import type { TankfulFiles } from './tankful-files.ts';

/** Not with what comes near the window: it is loaded when there is something to say. */
export async function loadFiles(): Promise<void> {
  await import('./tankful-files.ts');
}

/** Hears all of it until the returned function is called. */
export function hearFiles(root: HTMLElement): () => void {
  const desk = async (act: (desk: TankfulFiles) => unknown) => {
    await loadFiles();
    const found = root.querySelector<TankfulFiles>('tankful-files');
    if (found) act(found);
  };
  const onClick = async ({ target }: Event) => {
    const button = (target as Element).closest<HTMLElement>('[data-save], button[data-file]');
    if (!button) return;
    if (button.dataset.file === 'save') await desk((to) => to.save());
    else if (button.dataset.file === 'link') await desk((to) => to.copyLink());
    else (await import('./save-menu.ts')).openSaveMenu(button);
  };
  const onChange = ({ target }: Event) => {
    const { dataset, files } = target as HTMLInputElement;
    if (dataset.file !== 'open' || !files) return;
    const chosen = [...files];
    // The same file may be chosen again.
    (target as HTMLInputElement).value = '';
    void desk((to) => to.open(chosen));
  };
  const onDrag = (event: DragEvent) => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    // Otherwise the browser would leave the page for the file.
    event.preventDefault();
    const { type, dataTransfer, relatedTarget } = event;
    const files = [...dataTransfer.files];
    if (type === 'drop') void desk((to) => to.drop(files));
    else if (type === 'dragenter' || (type === 'dragleave' && !relatedTarget))
      void desk((to) => to.hover(type === 'dragenter'));
  };
  const onHash = () => {
    if (location.hash.startsWith(linkMark)) void desk((to) => to.openLink(location.hash));
  };
  const drags = ['dragenter', 'dragover', 'dragleave', 'drop'] as const;
  root.addEventListener('click', onClick);
  root.addEventListener('change', onChange);
  for (const drag of drags) document.addEventListener(drag, onDrag);
  addEventListener('hashchange', onHash);
  onHash();
  return () => {
    root.removeEventListener('click', onClick);
    root.removeEventListener('change', onChange);
    for (const drag of drags) document.removeEventListener(drag, onDrag);
    removeEventListener('hashchange', onHash);
  };
}
