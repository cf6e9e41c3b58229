/** "How sure": sure, a little unsure, a lot, or between two ends; folded away beside the entry it is about. */
import { html, nothing, type TemplateResult } from 'lit';
import { ifDefined } from 'lit/directives/if-defined.js';
import { live } from 'lit/directives/live.js';
import type { OutlineEntry } from '../../../../sim/index.ts';
import { boxText, cardWords, troubleLine } from '../../../words/index.ts';
import { type DoubtEnd, reachText, type Sureness } from './doubt-spec.ts';
import { idOf } from './entry-view.ts';
import type { Hands } from './hands.ts';

const words = cardWords.doubt;
const all: readonly Sureness[] = ['sure', 'a little', 'a lot', 'between'];

export function doubtControl(entry: OutlineEntry, label: string, hands: Hands): TemplateResult {
  const id = `${idOf(entry.path)}-doubt`;
  const doubt = hands.doubtAt(entry.path);
  const chosen: Sureness = doubt?.unsure ?? 'sure';
  const named = (each: Sureness) => (each === 'sure' && entry.assumed?.band ? words.ownBand : words[each]);
  return html`<details class="doubt">
    <summary>${words.title}: ${named(chosen)}<span class="unseen">: ${label}</span></summary>
    <fieldset class="choices" aria-describedby="${id}-help">
      <legend class="unseen">${words.legend(label)}</legend>
      ${all.map(
        (each, i) =>
          html`<label>
            <input
              id=${i === 0 ? id : `${id}-${i}`}
              type="radio"
              name=${id}
              value=${each}
              .checked=${live(each === chosen)}
              @change=${() => hands.mark(entry, label, each)}
            />
            <span>${named(each)}</span>
          </label>`,
      )}
    </fieldset>
    ${doubt?.unsure === 'between' ? ends(entry, label, doubt, id, hands) : reach(entry, chosen, hands)}
    <p id="${id}-help">${words.help}</p>
  </details>`;
}

function reach(entry: OutlineEntry, chosen: Sureness, { units }: Hands): TemplateResult | typeof nothing {
  if (chosen === 'sure' || chosen === 'between') return nothing;
  const found = reachText(entry, chosen, units);
  return html`<p>${found ? words.reach(...found) : words.nothing}</p>`;
}

function ends(
  entry: OutlineEntry,
  label: string,
  doubt: { from: string; to: string },
  id: string,
  hands: Hands,
): TemplateResult {
  const wrong = hands.doubtTrouble?.path === entry.path ? hands.doubtTrouble : null;
  const box = (end: DoubtEnd) => {
    const enter = (event: Event) =>
      hands.markEnd(entry, label, end, (event.currentTarget as HTMLInputElement).value);
    return html`<label for="${id}-${end}">
      <span>${words[end]}<span class="unseen">: ${label}</span></span>
      <input
        id="${id}-${end}"
        class="range-box"
        type="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${wrong?.end === end ? 'true' : 'false'}
        aria-describedby=${ifDefined(wrong?.end === end ? `${id}-trouble` : undefined)}
        .value=${boxText(entry.field, doubt[end])}
        @change=${enter}
      />
    </label>`;
  };
  return html`<div class="range-boxes">${box('from')} ${box('to')}</div>
    ${wrong ? html`<p id="${id}-trouble" class="trouble">${troubleLine(wrong.trouble)}</p>` : nothing}`;
}
