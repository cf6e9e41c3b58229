/** What is kept of the design in the page: undo, redo, whether it is saved, and the way to the shelf. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { clockText, shelfWords } from '../../../words/index.ts';
import { tell } from '../../app/events.ts';
import type { Design } from '../../app/page-state.ts';
import type { KeepVerb, Kept, Notice } from '../../app/shelf/kept.ts';
import { takesText, undoAsked } from '../../app/shelf/undo-keys.ts';
import { LightElement } from '../light-element.ts';

@customElement('tankful-kept')
export class TankfulKept extends LightElement {
  @property({ attribute: false }) kept: Kept | null = null;
  @property({ attribute: false }) design!: Design;
  /** Another tab has the design open. */
  @property({ attribute: false }) readOnly = false;

  @state() private shelfOpen = false;

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('keydown', this.onKey);
    addEventListener('beforeunload', this.onUnload);
  }

  override disconnectedCallback(): void {
    removeEventListener('keydown', this.onKey);
    removeEventListener('beforeunload', this.onUnload);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const { kept, readOnly } = this;
    return html`
      <div class="kept" role="group" aria-label=${shelfWords.name}>
        ${this.stepButton('undo', kept?.undo ?? null)} ${this.stepButton('redo', kept?.redo ?? null)}
        <button type="button" class="plain" aria-haspopup="dialog" @click=${this.openShelf}>
          ${shelfWords.name}
        </button>
        <p class="saved">${kept && !readOnly ? savedText(kept) : nothing}</p>
      </div>
      <div class="kept-trouble" role="alert">${kept ? this.trouble(kept) : nothing}</div>
      <div class="kept-notice" role="status">
        ${this.notices().map((notice) => noteView(notice, (ask) => tell(this, 'keep', ask)))}
      </div>
      ${
        this.shelfOpen
          ? html`<tankful-shelf .kept=${kept} .design=${this.design} @close=${this.closeShelf}></tankful-shelf>`
          : nothing
      }
    `;
  }

  /** Never disabled for real: the keyboard would lose its place with the last gesture. */
  private stepButton(verb: 'undo' | 'redo', gesture: string | null): TemplateResult {
    const able = gesture !== null && !this.readOnly;
    return html`<button
      type="button"
      class="plain step"
      aria-disabled=${able ? nothing : 'true'}
      @click=${() => able && tell(this, 'keep', { verb })}
    >
      ${shelfWords.gesture(shelfWords[verb], gesture)}
    </button>`;
  }

  /** The page's files hear a button by its `data-file`. */
  private trouble({ saved }: Kept): TemplateResult | typeof nothing {
    if (saved?.at !== 'failed') return nothing;
    return html`<p>${shelfWords.unsaved[saved.why]}</p>
      <button type="button" class="plain" data-file="save">${shelfWords.saveToFile}</button>`;
  }

  private notices(): Notice[] {
    const notice = this.kept?.notice ?? null;
    const offer = { text: shelfWords.workOnCopy, ask: { verb: 'work-on-copy' } } as const;
    // What was refused says as much, and offers the same.
    const reading = this.readOnly && notice?.offer?.ask.verb !== offer.ask.verb;
    return [...(reading ? [{ text: shelfWords.reading, offer }] : []), ...(notice ? [notice] : [])];
  }

  private readonly openShelf = async (): Promise<void> => {
    await import('./tankful-shelf.ts');
    this.shelfOpen = true;
  };

  private readonly closeShelf = (): void => {
    this.shelfOpen = false;
  };

  private readonly onKey = (event: KeyboardEvent): void => {
    const asked = event.defaultPrevented || this.shelfOpen ? null : undoAsked(event, takesText(event.target));
    if (!asked) return;
    event.preventDefault();
    tell(this, 'keep', asked);
  };

  /** The browser asks before it closes what is written nowhere. */
  private readonly onUnload = (event: BeforeUnloadEvent): void => {
    if (this.kept?.id && this.kept.saved?.at === 'failed') event.preventDefault();
  };
}

function noteView({ text, offer }: Notice, ask: (asked: KeepVerb) => void): TemplateResult {
  return html`<div class="kept-note">
    <p>${text}</p>
    ${
      offer
        ? html`<button type="button" class="plain" @click=${() => ask(offer.ask)}>${offer.text}</button>`
        : nothing
    }
  </div>`;
}

function savedText({ id, saved }: Kept): string {
  if (id === null) return shelfWords.example;
  return saved?.at === 'saved' ? shelfWords.saved(clockText(saved.ms)) : '';
}
