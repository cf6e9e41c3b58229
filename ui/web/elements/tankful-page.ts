/** The whole page: what was chosen, what came of it. Listens to the store and hands plain values down. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { listen } from '../app/listen.ts';
import type { Page } from '../app/page.ts';
import { isStale, type PageState, type Shown } from '../app/page-state.ts';
import { pageWords, shownWords } from '../app/page-words.ts';
import { dangerList } from './caution-note.ts';
import { LightElement } from './light-element.ts';
import './tankful-choice.ts';
import './tankful-days.ts';
import './tankful-figures.ts';
import './tankful-ledger.ts';
import { troubleList } from './trouble-list.ts';

@customElement('tankful-page')
export class TankfulPage extends LightElement {
  @property({ attribute: false }) page!: Page;

  private unsubscribe = () => {};

  override connectedCallback(): void {
    super.connectedCallback();
    const unsubscribe = this.page.store.subscribe(() => this.requestUpdate());
    const unlisten = listen(this, this.page);
    this.unsubscribe = () => {
      unsubscribe();
      unlisten();
    };
  }

  override disconnectedCallback(): void {
    this.unsubscribe();
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const state = this.page.store.get();
    return html`
      <header class="masthead">
        <h1>${pageWords.title}</h1>
        <p>${pageWords.sentence}</p>
      </header>
      <main>
        <tankful-choice .page=${this.page} .state=${state}></tankful-choice>
        ${troubleList(state.problems.map(({ path, ...problem }) => ({ where: path, ...problem })))} ${state.shown ? this.results(state, state.shown) : nothing}
      </main>
      <footer><p>${pageWords.estimate}</p></footer>
    `;
  }

  private results(state: PageState, shown: Shown): TemplateResult {
    const stale = isStale(state);
    return html`
      <p class="shown ${stale ? 'stale' : ''}" role="status">
        ${stale ? html`<strong>${pageWords.lastGood}</strong> ` : nothing}${shownWords(shown)}
      </p>
      ${dangerList(shown.result.cautions)}
      <tankful-days
        .shown=${shown}
        .units=${state.units}
        .cursor_s=${state.cursor_s}
        .window_s=${state.window_s}
        .detail=${state.detail}
        .pinned=${state.pinned}
      ></tankful-days>
      <tankful-ledger .ledger=${shown.result.ledger} .units=${state.units}></tankful-ledger>
      <tankful-figures .result=${shown.result} .units=${state.units}></tankful-figures>
    `;
  }
}
