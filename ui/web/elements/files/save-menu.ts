/** The menu that saves a chart: one for all charts, beside the button that was pressed. */
import { html, render, type TemplateResult } from 'lit';
import { chartWords } from '../../../words/index.ts';
import { csvText } from '../../app/files/csv.ts';
import { saveFile } from '../../app/files/save-file.ts';
import type { Savable } from './savable.ts';
import { savableOf } from './savable-of.ts';
import { pngOf, type Standalone, standalone } from './standalone.ts';

interface Item {
  words: string;
  /** The file's ending, and what is in it. */
  ending: 'svg' | 'png' | 'csv';
  make(): Promise<Blob> | Blob;
}

const edge_px = 8;

/** Opens at the button; a press elsewhere, Escape or a choice closes it, and the button has the keyboard again. */
export function openSaveMenu(button: HTMLElement): void {
  const savable = savableOf(button);
  if (!savable) return;
  const menu = document.createElement('div');
  menu.className = 'save-menu';
  menu.popover = 'auto';
  menu.role = 'menu';
  menu.ariaLabel = chartWords.menu(savable.title);
  (button.closest('main') ?? document.body).append(menu);
  render(itemsView(savable, menu), menu);
  button.ariaExpanded = 'true';
  menu.addEventListener('toggle', ({ newState }) => {
    if (newState === 'open') return;
    button.ariaExpanded = null;
    if (menu.contains(document.activeElement) || document.activeElement === document.body) button.focus();
    menu.remove();
  });
  menu.addEventListener('keydown', (event) => step(menu, event));
  menu.showPopover();
  place(menu, button);
  menu.querySelector<HTMLElement>('[role=menuitem]')?.focus();
}

function itemsView(savable: Savable, menu: HTMLElement): TemplateResult {
  const { title, about, sheets, picture } = savable;
  const drawn = async (): Promise<Standalone> => {
    if (!picture) throw new Error(title);
    return standalone(await picture(), title, about);
  };
  const items: Item[] = [
    ...(picture
      ? [
          {
            words: chartWords.svg,
            ending: 'svg' as const,
            make: async () => new Blob([(await drawn()).text], { type: 'image/svg+xml' }),
          },
          { words: chartWords.png, ending: 'png' as const, make: async () => pngOf(await drawn()) },
        ]
      : []),
    ...sheets.map(({ words, sheet }) => ({
      words,
      ending: 'csv' as const,
      make: () => new Blob([csvText(sheet())], { type: 'text/csv' }),
    })),
  ];
  return html`${items.map(
    (item) =>
      html`<button type="button" role="menuitem" tabindex="-1" @click=${() => void choose(item, savable, menu)}>
        ${item.words}
      </button>`,
  )}`;
}

async function choose({ ending, make }: Item, { stem }: Savable, menu: HTMLElement): Promise<void> {
  try {
    const file = await make();
    menu.hidePopover();
    await saveFile(`${stem}.${ending}`, file);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    render(html`<p role="alert">${chartWords.failed(why)}</p>`, menu);
  }
}

/** Below the button, or above it where there is no room; inside the window. */
function place(menu: HTMLElement, button: HTMLElement): void {
  const at = button.getBoundingClientRect();
  const { width, height } = menu.getBoundingClientRect();
  const left = Math.min(at.left, document.documentElement.clientWidth - width - edge_px);
  const below = at.bottom + 4;
  const top = below + height + edge_px <= innerHeight ? below : Math.max(edge_px, at.top - height - 4);
  menu.style.left = `${Math.max(edge_px, left)}px`;
  menu.style.top = `${top}px`;
}

function step(menu: HTMLElement, event: KeyboardEvent): void {
  const items = [...menu.querySelectorAll<HTMLElement>('[role=menuitem]')];
  const at = items.indexOf(document.activeElement as HTMLElement);
  const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: -1 }[event.key];
  if (event.key === 'Tab') menu.hidePopover();
  if (to === undefined) return;
  event.preventDefault();
  items.at(to % items.length)?.focus();
}
