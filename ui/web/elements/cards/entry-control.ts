/** One entry of a card: its box or its choices, how it was understood, where it comes from, and what is wrong. */
import { html, nothing, type TemplateResult } from 'lit';
import { ifDefined } from 'lit/directives/if-defined.js';
import { live } from 'lit/directives/live.js';
import type { OutlineEntry, OutlineNode } from '../../../../sim/index.ts';
import {
  cardWords,
  fileText,
  fromSim,
  saysUnknown,
  sentenceCase,
  troubleLine,
} from '../../../words/index.ts';
import { cautionsAt } from './cautions-at.ts';
import { doubtControl } from './doubt-control.ts';
import { canDoubt } from './doubt-spec.ts';
import { type EntryView, entryView } from './entry-view.ts';
import type { Hands } from './hands.ts';
import { rangeOpener } from './range-opener.ts';
import { hasRange } from './range-spec.ts';

/** Choices that are seen at a glance; more of them hide behind a list. */
const mostSeen = 4;

export function entryControl(
  entry: OutlineEntry,
  label: string,
  siblings: readonly OutlineNode[],
  hands: Hands,
  { compact = false } = {},
): TemplateResult {
  const view = entryView(entry, label, siblings, hands.around);
  const { field } = entry;
  const choices = field.kind === 'flag' ? ['true', 'false'] : field.kind === 'choice' ? field.choices : null;
  const seen = choices !== null && choices.length <= mostSeen;
  const body = seen
    ? radios(entry, label, choices, view, hands)
    : html`<label for=${view.id}>${label} ${mark(view)}</label>
        <div class="entry-row">
          ${choices ? select(entry, label, choices, view, hands) : box(entry, label, view, hands)}
          ${compact ? nothing : forget(entry, label, view, hands)}
        </div>`;
  return html`<div class="entry ${view.mark ?? ''} ${view.trouble ? 'wrong' : ''}">
    ${body} ${beneath(view, entry, label, hands)}
    ${compact ? nothing : aids(entry, label, hands)}
    ${cautionsAt(entry.path, hands)}
  </div>`;
}

/** How to measure it, how sure one is of it, and what becomes of it over a range. */
function aids(entry: OutlineEntry, label: string, hands: Hands): TemplateResult | typeof nothing {
  const { measure, field } = entry;
  if (measure === null && !hasRange(field)) return nothing;
  const doubt = canDoubt(entry) ? doubtControl(entry, label, hands) : nothing;
  return html`<div class="aids">
    ${
      measure === null
        ? nothing
        : html`<details class="measure">
            <summary>${cardWords.measure}<span class="unseen">: ${label}</span></summary>
            <p>${fromSim(measure)}</p>
          </details>`
    }
    ${doubt} ${hasRange(field) ? rangeOpener(entry, label, hands) : nothing}
  </div>`;
}

/** Ids of what describes a control, in reading order; none of those that are not there. */
function described(view: EntryView): string | undefined {
  const parts = [
    view.trouble ? `${view.id}-trouble` : '',
    view.understood === null ? '' : `${view.id}-understood`,
    view.lines.length > 0 ? `${view.id}-lines` : '',
  ];
  return parts.filter(Boolean).join(' ') || undefined;
}

function mark({ mark }: EntryView): TemplateResult | typeof nothing {
  return mark === null ? nothing : html`<span class="mark">${cardWords[mark]}</span>`;
}

function box(entry: OutlineEntry, label: string, view: EntryView, hands: Hands): TemplateResult {
  const { id, text, trouble } = view;
  const { draft } = hands.around;
  const { field } = entry;
  const examples = field.kind === 'text' ? field.examples : undefined;
  const enter = (input: HTMLInputElement) => {
    if (field.kind === 'text' || !saysUnknown(input.value) || (entry.given && !view.forget)) {
      hands.enter(entry, label, input.value);
      return;
    }
    // What will stand in may be what stood here, of which the page would not write it anew.
    input.value = view.own;
    hands.restore(entry);
    if (view.forget) hands.forget(entry, label, view.forget.value);
  };
  const onKey = (event: KeyboardEvent) => {
    const input = event.currentTarget as HTMLInputElement;
    if (event.key === 'Enter') {
      // The browser would report a change as well.
      event.preventDefault();
      enter(input);
    } else if (event.key === 'Escape') {
      event.stopPropagation();
      // The box may hold what was never entered, of which the page knows nothing.
      input.value = view.own;
      hands.restore(entry);
    }
  };
  const onChange = (event: Event) => {
    const input = event.currentTarget as HTMLInputElement;
    // Left as it was found, an assumption stays one.
    if (input.value !== text) enter(input);
  };
  return html`<input
      id=${id}
      type="text"
      autocomplete="off"
      autocapitalize="none"
      spellcheck="false"
      enterkeyhint="done"
      inputmode=${field.kind === 'number' && !field.per ? 'decimal' : 'text'}
      list=${ifDefined(examples ? `${id}-examples` : undefined)}
      aria-describedby=${ifDefined(described(view))}
      aria-invalid=${trouble ? 'true' : 'false'}
      .value=${live(draft?.path === entry.path ? draft.text : text)}
      @input=${(event: Event) => hands.draft(entry, (event.currentTarget as HTMLInputElement).value)}
      @keydown=${onKey}
      @change=${onChange}
    />${
      examples
        ? html`<datalist id="${id}-examples">
            ${examples.map((example) => html`<option value=${example}></option>`)}
          </datalist>`
        : nothing
    }`;
}

function select(
  entry: OutlineEntry,
  label: string,
  choices: readonly string[],
  view: EntryView,
  hands: Hands,
): TemplateResult {
  const other = choices.includes(view.text) ? [] : [view.text];
  return html`<select
    id=${view.id}
    aria-describedby=${ifDefined(described(view))}
    aria-invalid=${view.trouble ? 'true' : 'false'}
    @change=${(event: Event) => choose(entry, label, (event.currentTarget as HTMLSelectElement).value, hands)}
  >
    ${[...other, ...choices].map(
      (choice) =>
        html`<option value=${choice} .selected=${live(choice === view.text)}>
          ${choice === '' ? cardWords.notGiven : fileText(entry.path, choice)}
        </option>`,
    )}
  </select>`;
}

function radios(
  entry: OutlineEntry,
  label: string,
  choices: readonly string[],
  view: EntryView,
  hands: Hands,
): TemplateResult {
  const chosen = choices.indexOf(view.text);
  return html`<fieldset class="choices" aria-describedby=${ifDefined(described(view))}>
    <legend>${label} ${mark(view)}</legend>
    ${choices.map((choice, i) => {
      // The first to be reached by its label's id is the one that a reader should land on.
      const id = i === Math.max(0, chosen) ? view.id : `${view.id}-${i}`;
      return html`<label>
        <input
          id=${id}
          type="radio"
          name=${view.id}
          value=${choice}
          .checked=${live(i === chosen)}
          @change=${() => choose(entry, label, choice, hands)}
        />
        <span>${entry.field.kind === 'flag' ? cardWords[choice === 'true' ? 'yes' : 'no'] : fileText(entry.path, choice)}</span>
      </label>`;
    })}
    ${forget(entry, label, view, hands)}
  </fieldset>`;
}

function choose(entry: OutlineEntry, label: string, choice: string, hands: Hands): void {
  if (entry.decides === null) hands.enter(entry, label, choice);
  else hands.decide(entry, label, choice);
}

function forget(
  entry: OutlineEntry,
  label: string,
  { forget }: EntryView,
  hands: Hands,
): TemplateResult | typeof nothing {
  if (!forget) return nothing;
  return html`<button
    type="button"
    class="quiet"
    aria-label="${forget.label}: ${label}"
    @click=${() => hands.forget(entry, label, forget.value)}
  >
    ${forget.label}
  </button>`;
}

function beneath(view: EntryView, entry: OutlineEntry, label: string, hands: Hands): TemplateResult {
  const { id, trouble, understood, lines, meant } = view;
  return html`${trouble ? html`<p id="${id}-trouble" class="trouble">${troubleLine(trouble)}</p>` : nothing}
  ${
    meant.length === 0
      ? nothing
      : html`<p class="meant">
          ${cardWords.use}
          ${meant.map((text) => {
            const take = () => {
              // The button goes with the trouble: its reader stands at the box again.
              document.getElementById(id)?.focus();
              hands.enter(entry, label, text);
            };
            return html`<button type="button" class="quiet" @click=${take}>${text}</button>`;
          })}
        </p>`
  }
  ${understood === null ? nothing : html`<p id="${id}-understood" class="understood">${equal(understood)}</p>`}
  ${
    lines.length === 0
      ? nothing
      : html`<p id="${id}-lines" class="lines">${lines.map((line) => html`${sentenceCase(line)} `)}</p>`
  }`;
}

/** A tube is named before its sizes and brings its own sign. */
function equal(understood: string): string {
  return understood.includes(' = ') ? understood : `= ${understood}`;
}
