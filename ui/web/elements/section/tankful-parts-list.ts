/** The list of parts: what the drawing does by hand, by keyboard and by ear: open, add, duplicate, remove. */
import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import {
  ADDABLE,
  type Addable,
  addition,
  duplication,
  type Problem,
  type Refusal,
  removal,
  type Scenario,
  type SectionFacts,
} from '../../../../sim/index.ts';
import {
  addableWords,
  type ListedPart,
  listedParts,
  partListWords,
  partTitle,
  refusalText,
  systemOf,
  type Units,
} from '../../../words/index.ts';
import { tell } from '../../app/events.ts';
import { LightElement } from '../light-element.ts';

@customElement('tankful-parts-list')
export class TankfulPartsList extends LightElement {
  @property({ attribute: false }) scenario!: Scenario;
  @property({ attribute: false }) facts: SectionFacts | null = null;
  @property({ attribute: false }) units: Units = 'US';
  @property({ attribute: false }) problems: readonly Problem[] = [];
  /** Path of the part whose card is open. */
  @property({ attribute: false }) openedPart: string | null = null;

  /** Path of the part that is about to be removed. */
  @state() private asking: string | null = null;
  /** What was asked for and cannot be done: a part's path, or a kind to add. */
  @state() private refused: { of: string; why: Refusal } | null = null;
  /** Where the keyboard goes once the list is drawn anew. */
  private focusNext: string | null = null;

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has('scenario')) return;
    this.asking = null;
    this.refused = null;
  }

  protected override updated(): void {
    if (this.focusNext === null) return;
    this.querySelector<HTMLElement>(this.focusNext)?.focus();
    this.focusNext = null;
  }

  override render(): TemplateResult {
    const parts = listedParts(this.scenario, this.facts, this.units);
    return html`
      <section class="panel parts" aria-labelledby="parts-title">
        <h2 id="parts-title">${partListWords.title}</h2>
        <p class="help">${partListWords.intro}</p>
        <ul class="part-list">
          ${repeat(
            parts,
            ({ path }) => path,
            (part) => this.item(part),
          )}
        </ul>
        ${this.adding()}
      </section>
    `;
  }

  private item({ path, name, facts }: ListedPart): TemplateResult {
    const title = partTitle(path, name);
    const wrong = this.problems.filter((problem) => within(problem.path, path)).length;
    const open = this.openedPart === path;
    return html`<li class=${/^taps\./.test(path) ? 'part nested' : 'part'} data-path=${path}>
      <button
        type="button"
        class="part-open"
        aria-current=${open ? 'true' : nothing}
        @click=${() => tell(this, 'open-part', { path: open ? null : path })}
      >
        <span class="part-title">${title}</span>
        <span class="part-facts">${facts}</span>
        ${wrong > 0 ? html`<span class="part-wrong">${partListWords.wrong(wrong)}</span>` : nothing}
      </button>
      ${this.asking === path ? this.sure(path, title) : this.tools(path, title)}
      ${this.refused?.of === path ? this.refusal(path, this.refused.why) : nothing}
    </li>`;
  }

  private tools(path: string, title: string): TemplateResult {
    const doubled = duplication(this.scenario, path);
    const removed = removal(this.scenario, path);
    // What can never be, is not offered; what cannot be just now, says why when asked.
    return html`<div class="part-tools">
      ${
        'no' in doubled && doubled.no !== 'full'
          ? nothing
          : tool(partListWords.duplicate, title, 'no' in doubled, () =>
              'no' in doubled ? this.refuse(path, doubled) : tell(this, 'duplicate-part', { path }),
            )
      }
      ${
        'no' in removed && removed.no === 'always there'
          ? nothing
          : tool(partListWords.remove, title, 'no' in removed, () =>
              'no' in removed ? this.refuse(path, removed) : this.ask(path),
            )
      }
    </div>`;
  }

  private sure(path: string, title: string): TemplateResult {
    return html`<div class="part-tools sure" role="group" aria-label=${partListWords.removeSure(title)}>
      <span>${partListWords.removeSure(title)}</span>
      <button type="button" @click=${() => this.takeOut(path)}>${partListWords.remove}</button>
      <button type="button" class="plain keep" @click=${() => this.keep(path)}>${partListWords.keep}</button>
    </div>`;
  }

  private adding(): TemplateResult {
    const { facts, scenario, units } = this;
    return html`<div class="part-adding">
      <h3 id="adding-title">${partListWords.addTitle}</h3>
      <div class="part-tools" role="group" aria-labelledby="adding-title">
        ${ADDABLE.map((kind) => {
          const why = facts ? addition(scenario, kind, facts.store, systemOf(units, 'length')) : null;
          if (why && 'no' in why && why.no === 'one of its kind') return nothing;
          return tool(addableWords[kind], '', why === null || 'no' in why, () => this.add(kind, why));
        })}
      </div>
      ${
        this.refused && ADDABLE.includes(this.refused.of as Addable)
          ? this.refusal(this.refused.of, this.refused.why)
          : nothing
      }
    </div>`;
  }

  private refusal(of: string, why: Refusal): TemplateResult {
    return html`<p class="part-refusal" role="status" data-of=${of}>${refusalText(why)}</p>`;
  }

  private add(kind: Addable, found: ReturnType<typeof addition> | null): void {
    if (found === null) return;
    if ('no' in found) this.refuse(kind, found);
    else tell(this, 'add-part', { kind });
  }

  private refuse(of: string, why: Refusal): void {
    this.asking = null;
    this.refused = { of, why };
  }

  private ask(path: string): void {
    this.refused = null;
    this.asking = path;
    this.focusNext = `[data-path="${path}"] .keep`;
  }

  private keep(path: string): void {
    this.asking = null;
    this.focusNext = `[data-path="${path}"] .part-open`;
  }

  private takeOut(path: string): void {
    this.asking = null;
    // The part is gone, and the keyboard with it: go to the one before.
    const before = this.querySelector(`[data-path="${path}"]`)?.previousElementSibling;
    this.focusNext = `[data-path="${before?.getAttribute('data-path') ?? 'store'}"] .part-open`;
    tell(this, 'remove-part', { path });
  }
}

/** A small button; `off` looks so and is heard so, and can still be asked why. */
function tool(words: string, title: string, off: boolean, press: () => void): TemplateResult {
  return html`<button type="button" class="plain" aria-disabled=${off ? 'true' : nothing} @click=${press}>
    ${words}${title === '' ? nothing : html` <span class="unseen">${title}</span>`}
  </button>`;
}

/** Whether a problem's path lies in a part; a draw's own problems are not also the household's. */
function within(problem: string, path: string): boolean {
  const inside = problem === path || problem.startsWith(`${path}.`) || problem.startsWith(`${path}[`);
  return inside && !(path === 'taps' && /^taps\.(showers|draws)\[/.test(problem));
}

declare global {
  interface HTMLElementTagNameMap {
    'tankful-parts-list': TankfulPartsList;
  }
}
