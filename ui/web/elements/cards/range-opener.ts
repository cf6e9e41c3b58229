/** "Try a range": two ends and a number of values, opened beside the entry they vary. */
import { html, nothing, type TemplateResult } from 'lit';
import { ifDefined } from 'lit/directives/if-defined.js';
import type { OutlineEntry } from '../../../../sim/index.ts';
import { boxText, cardWords, troubleLine } from '../../../words/index.ts';
import { idOf } from './entry-view.ts';
import type { Hands } from './hands.ts';
import type { RangeBox } from './range-spec.ts';

export function rangeOpener(entry: OutlineEntry, label: string, hands: Hands): TemplateResult {
  const words = cardWords.range;
  const id = `${idOf(entry.path)}-range`;
  const usual = hands.rangeOf(entry);
  const wrong = hands.rangeTrouble?.path === entry.path ? hands.rangeTrouble : null;
  // At the press: told by the fold itself it would come later, over what was typed since.
  const press = ({ currentTarget }: Event) => {
    const fold = (currentTarget as HTMLElement).parentElement as HTMLDetailsElement;
    if (!fold.open) hands.openRange(entry);
  };
  const run = (event: Event) => {
    const form = (event.currentTarget as HTMLElement).closest('.range') as HTMLElement;
    const typed = (box: RangeBox) => form.querySelector<HTMLInputElement>(`#${id}-${box}`)?.value ?? '';
    hands.tryRange(entry, label, { from: typed('from'), to: typed('to'), n: typed('n') });
  };
  const box = (key: RangeBox, name: string) =>
    html`<label for="${id}-${key}">
      <span>${name}</span>
      <input
        id="${id}-${key}"
        class="range-box"
        type="text"
        autocomplete="off"
        spellcheck="false"
        inputmode=${key === 'n' ? 'numeric' : 'text'}
        aria-invalid=${wrong?.box === key ? 'true' : 'false'}
        aria-describedby=${ifDefined(wrong?.box === key ? `${id}-trouble` : undefined)}
        .value=${key === 'n' ? usual.n : boxText(entry.field, usual[key])}
        @keydown=${(event: KeyboardEvent) => event.key === 'Enter' && run(event)}
      />
    </label>`;
  return html`<details class="range">
    <summary @click=${press}>${words.title}<span class="unseen">: ${label}</span></summary>
    <p>${words.help}</p>
    <div class="range-boxes">
      ${box('from', words.from)} ${box('to', words.to)} ${box('n', words.steps)}
      <button type="button" aria-label="${words.run}: ${label}" @click=${run}>${words.run}</button>
    </div>
    ${wrong ? html`<p id="${id}-trouble" class="trouble">${troubleLine(wrong.trouble)}</p>` : nothing}
  </details>`;
}
