/** Says that a newer version of the page is there, and changes over to it when asked; the page before is kept till then. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { shellWords } from '../../../words/index.ts';
import { keepPage } from '../../offline/versions.ts';
import { LightElement } from '../light-element.ts';

@customElement('tankful-newer')
export class TankfulNewer extends LightElement {
  @state() private changeOver: (() => void) | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    this.role = 'status';
    void keepPage((changeOver) => {
      this.changeOver = changeOver;
    });
  }

  override render(): TemplateResult | typeof nothing {
    const { changeOver } = this;
    if (!changeOver) return nothing;
    return html`<div class="newer">
      <p>${shellWords.newer}</p>
      <button type="button" @click=${changeOver}>${shellWords.useNewer}</button>
    </div>`;
  }
}
