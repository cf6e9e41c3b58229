/** The shelf, over the page: designs to open, double and take off; restore points of the one in the page. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { dayClockText, shelfWords } from '../../../words/index.ts';
import { tell } from '../../app/events.ts';
import type { Design } from '../../app/page-state.ts';
import {
  type KeepVerb,
  type Kept,
  keptOff_days,
  type PointItem,
  type ShelfItem,
} from '../../app/shelf/kept.ts';
import { LightElement } from '../light-element.ts';

@customElement('tankful-shelf')
export class TankfulShelf extends LightElement {
  @property({ attribute: false }) kept: Kept | null = null;
  @property({ attribute: false }) design!: Design;

  protected override firstUpdated(): void {
    this.querySelector('dialog')?.showModal();
    // What stands on a shelf that was looked at is not thrown away to make room, if the browser agrees.
    void navigator.storage?.persist?.().catch(() => false);
  }

  override render(): TemplateResult {
    const shelf = this.kept?.shelf ?? [];
    const [on, off] = [shelf.filter(({ removed }) => !removed), shelf.filter(({ removed }) => removed)];
    return html`<dialog class="shelf" aria-labelledby="shelf-title" @close=${this.onClose}>
      <div class="shelf-head">
        <h2 id="shelf-title">${shelfWords.title}</h2>
        <button type="button" class="plain" @click=${this.close}>${shelfWords.close}</button>
      </div>
      <p class="help">${shelfWords.intro}</p>
      ${
        on.length === 0
          ? html`<p>${shelfWords.none}</p>`
          : html`<ul class="shelf-list">
            ${on.map((item) => this.item(item))}
          </ul>`
      }
      ${this.points()}
      ${
        off.length === 0
          ? nothing
          : html`<details>
            <summary>${shelfWords.off}</summary>
            <p class="help">${shelfWords.offIntro(keptOff_days)}</p>
            <ul class="shelf-list">
              ${off.map(
                (item) =>
                  html`<li>
                    <span class="shelf-name">${item.name}</span>
                    ${this.button(shelfWords.putBack, item.name, { verb: 'put-back', id: item.id })}
                  </li>`,
              )}
            </ul>
          </details>`
      }
      <div class="kept-notice" role="status">${this.notice()}</div>
    </dialog>`;
  }

  private item({ id, name, changed_ms }: ShelfItem): TemplateResult {
    const here = id === this.kept?.id;
    return html`<li class=${here ? 'here' : ''}>
      <span class="shelf-name"
        >${here ? this.nameField() : name}
        <small>${here ? `${shelfWords.here}, ` : ''}${shelfWords.changed(dayClockText(changed_ms))}</small></span
      >
      ${here ? nothing : this.button(shelfWords.open, name, { verb: 'open', id })}
      ${this.button(shelfWords.duplicate, name, { verb: 'duplicate', id })}
      ${this.button(shelfWords.remove, name, { verb: 'remove', id })}
    </li>`;
  }

  private nameField(): TemplateResult {
    return html`<label
      ><span>${shelfWords.rename}</span>
      <input type="text" maxlength="80" .value=${this.design.name} @change=${this.onName}
    /></label>`;
  }

  private points(): TemplateResult | typeof nothing {
    if (!this.kept?.id) return nothing;
    return html`<h3>${shelfWords.points}</h3>
      <p class="help">${shelfWords.pointsIntro}</p>
      <form class="keep-point" @submit=${this.onKeepPoint}>
        <label
          ><span>${shelfWords.pointName}</span> <input type="text" name="point" maxlength="80" required
        /></label>
        <button>${shelfWords.keepPoint}</button>
      </form>
      <ul class="shelf-list">
        ${this.kept.points.map((point) => this.point(point))}
      </ul>`;
  }

  private point({ made_ms, name }: PointItem): TemplateResult {
    return html`<li>
      <span class="shelf-name">${name} <small>${dayClockText(made_ms)}</small></span>
      ${this.button(shelfWords.goBack, name, { verb: 'go-back', made_ms })}
      ${this.button(shelfWords.dropPoint, name, { verb: 'drop-point', made_ms })}
    </li>`;
  }

  /** What it is about is told to those who hear one button at a time. */
  private button(text: string, about: string, ask: KeepVerb): TemplateResult {
    return html`<button type="button" class="plain" @click=${() => tell(this, 'keep', ask)}>
      ${text}<span class="unseen">: ${about}</span>
    </button>`;
  }

  private notice(): TemplateResult | typeof nothing {
    const { text = '', offer } = this.kept?.notice ?? {};
    if (text === '') return nothing;
    return html`<p>${text}</p>
      ${offer ? this.button(offer.text, text, offer.ask) : nothing}`;
  }

  private readonly onName = ({ target }: Event): void => {
    const field = target as HTMLInputElement;
    const name = field.value.trim();
    if (name === '' || name === this.design.name) field.value = this.design.name;
    else tell(this, 'commit-edits', { edits: [{ path: 'name', value: name }], gesture: shelfWords.renamed });
  };

  private readonly onKeepPoint = (event: SubmitEvent): void => {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const name = String(new FormData(form).get('point')).trim();
    if (name !== '') tell(this, 'keep', { verb: 'keep-point', name });
    form.reset();
  };

  private readonly close = (): void => this.querySelector('dialog')?.close();

  private readonly onClose = (): void => {
    this.dispatchEvent(new CustomEvent('close'));
  };
}
