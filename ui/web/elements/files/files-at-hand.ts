/** Files on the page before their code is there: buttons, drops and links, and the way to who knows them. */
import { html, type TemplateResult } from 'lit';
import { fileTools } from '../../../words/index.ts';
import { linkMark } from '../../app/files/link-mark.ts';
import { eitherName } from '../either-name.ts';
import type { TankfulFiles } from './tankful-files.ts';

/** A button's `data-file` names what it does. The file's own input stands in the page: browsers open it only at a press. */
export function filesTools(): TemplateResult {
  return html`<div class="file-tools" role="group" aria-label=${fileTools.group}>
    <label class="plain file-input">
      <input type="file" class="unseen" multiple accept=".json,.csv,.txt,.tsv,.dat" data-file="open" />
      <span>${eitherName(fileTools.open, fileTools.short.open)}</span>
    </label>
    <button type="button" class="plain" data-file="save" aria-label=${fileTools.save}>
      ${eitherName(fileTools.save, fileTools.short.save)}
    </button>
    <button type="button" class="plain" data-file="link" aria-label=${fileTools.link}>
      ${eitherName(fileTools.link, fileTools.short.link)}
    </button>
  </div>`;
}

/** Stands beside a chart that can be saved. */
export function saveButton(key: string, title: string): TemplateResult {
  return html`<button
    type="button"
    class="quiet save-chart"
    data-save=${key}
    aria-haspopup="menu"
    aria-label=${fileTools.saveChart(title)}
  >
    ${fileTools.saveChartShort}
  </button>`;
}

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
