/**
 * The build sheet: on the screen all of it, on paper two pages. The same elements serve both; what is not for the
 * screen's width or not for paper is left out by the styles.
 */
import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import packageJson from '../../../../package.json' with { type: 'json' };
import { type Answer, buildSheet } from '../../../../sim/index.ts';
import {
  answerWords,
  assumptionLines,
  type Both,
  coilTable,
  dayText,
  fittingsBlock,
  givenBlock,
  givenWords,
  inBothUnits,
  panelsBlock,
  probesBlock,
  seasonBlock,
  sheetCautions,
  sheetWords,
  storeBlock,
  tubeBlock,
  weightBlock,
} from '../../../words/index.ts';
import { tell } from '../../app/events.ts';
import { linkOf } from '../../app/files/link.ts';
import type { Shown } from '../../app/page-state.ts';
import { sheetDrawing } from '../../charts/section/sheet-drawing.ts';
import { drawn } from '../drawn.ts';
import { LightElement } from '../light-element.ts';
import { unbroken } from '../section/section-views.ts';
import { fitToPaper } from './fit-to-paper.ts';
import paperCss from './paper.css?inline';
import sheetCss from './sheet.css?inline';
import { answersView, blockView, cautionsView, tableView } from './sheet-views.ts';

/** Width of a page between its margins, as `paper.css` has it: 186 mm at 96 px an inch. */
const paper_px = (186 / 25.4) * 96;
/** Before the paper is measured. */
const usual_px = 420;

function differs(now: readonly Answer[], before: readonly Answer[] | undefined): boolean {
  return now.length !== before?.length || now.some((answer, i) => answer !== before[i]);
}

@customElement('tankful-sheet')
export class TankfulSheet extends LightElement {
  /** The run that the sheet is of. */
  @property({ attribute: false }) shown!: Shown;
  /** What was worked out of it. Told anew at every step of other answers, and fitted anew only for others. */
  @property({ attribute: false, hasChanged: differs }) answers: readonly Answer[] = [];
  /** The design has gone on since. */
  @property({ type: Boolean }) stale = false;
  /** Address that opens the same design; empty until it is made. */
  @state() private link = '';

  private linked: Shown['scenario'] | null = null;
  /** Height that paper leaves to the drawing [px]. */
  private drawing_px = usual_px;
  private readonly screen = new CSSStyleSheet();
  private readonly paper = new CSSStyleSheet({ media: 'print' });

  override connectedCallback(): void {
    super.connectedCallback();
    this.screen.replaceSync(sheetCss);
    this.paper.replaceSync(paperCss);
    document.adoptedStyleSheets.push(this.screen, this.paper);
  }

  override disconnectedCallback(): void {
    const own = [this.screen, this.paper];
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => !own.includes(each));
    super.disconnectedCallback();
  }

  protected override willUpdate(): void {
    const { scenario } = this.shown;
    if (scenario === this.linked) return;
    this.linked = scenario;
    this.link = '';
    void this.makeLink(scenario);
  }

  private async makeLink(scenario: Shown['scenario']): Promise<void> {
    const fragment = await linkOf(scenario);
    if (scenario === this.linked) this.link = location.href.replace(/#.*$/, '') + fragment;
  }

  protected override firstUpdated(): void {
    this.querySelector<HTMLElement>('h1')?.focus();
  }

  protected override updated(_changed: PropertyValues): void {
    const { drawing_px } = fitToPaper(this, this.paper);
    if (Math.abs(drawing_px - this.drawing_px) < 1) return;
    this.drawing_px = drawing_px;
    this.requestUpdate();
  }

  override render(): TemplateResult {
    const { shown, stale } = this;
    const { facts, scenario, result } = shown;
    const both = inBothUnits({ currency: scenario.prices?.currency ?? '$' });
    const sheet = buildSheet(facts);
    const { table, lines } = coilTable(sheet.coils, both);
    const season = seasonBlock(this.answers, both.say);
    const given = givenBlock(scenario, shown.filled, both);
    const made = sheetWords.made(packageJson.version, dayText(new Date()));
    const foot = (page: number) =>
      html`<p class="sheet-foot">${scenario.name} · ${made} · ${sheetWords.page(page, 2)}</p>`;
    return html`<main class="build-sheet">
      <div class="sheet-tools">
        <button type="button" @click=${() => tell(this, 'show-sheet', { open: false })}>
          ${sheetWords.close}
        </button>
        <button type="button" class="plain" @click=${() => window.print()}>${sheetWords.print}</button>
        <span>${sheetWords.pages}</span>
      </div>
      <div class="sheet-page first">
        <header>
          <h1 id="sheet-title" tabindex="-1">${sheetWords.title}: ${scenario.name}</h1>
          <p class="made">${made}</p>
          <p class="estimate">${sheetWords.estimate}</p>
          ${stale ? html`<p class="stale">${sheetWords.stale}</p>` : nothing} ${this.linkView()}
        </header>
        <figure>
          <div class="sheet-figure" role="region" tabindex="0" aria-label=${sheetWords.drawingName}>
            <svg
              class="section-drawing sheet-drawing"
              viewBox="0 0 ${Math.floor(paper_px)} ${this.drawing_px}"
              role="img"
              aria-label=${sheetWords.drawing}
            >
              <g ${drawn(sheetDrawing(facts, sheet, { width: Math.floor(paper_px), height: this.drawing_px }))}></g>
            </svg>
          </div>
          <figcaption>${sheetWords.drawing}</figcaption>
        </figure>
        ${
          sheet.coils.length === 0 || !table
            ? nothing
            : html`<section class="sheet-block coils">
              <h2>${sheetWords.coils}</h2>
              ${tableView(table, sheetWords.coils)}
              <div class="mind">${lines.map((line) => html`<p>${unbroken(line)}</p>`)}</div>
            </section>`
        }
        <div class="sheet-three">
          ${blockView(storeBlock(sheet, facts, both))} ${blockView(probesBlock(sheet, both))}
          ${blockView(weightBlock(sheet, both))}
        </div>
        ${foot(1)}
      </div>
      <div class="sheet-page second">
        ${blockView(tubeBlock(sheet, both))} ${blockView(panelsBlock(sheet, both))}
        <div class="sheet-columns">
          ${blockView(fittingsBlock(sheet))} ${answersView(this.sentences(both))}
          ${season ? blockView(season) : nothing}
          ${cautionsView(sheetCautions(result.cautions, facts, sheet, both))}
          ${given ? blockView(given) : nothing} ${this.assumptions(both)}
        </div>
        ${foot(2)}
      </div>
    </main>`;
  }

  private linkView(): TemplateResult | typeof nothing {
    const { link } = this;
    return link === ''
      ? nothing
      : html`<p class="link">${sheetWords.link} <a href=${link}>${sheetWords.shortLink(link)}</a></p>`;
  }

  private sentences({ say }: Both): { title: string; sentence: string }[] {
    return this.answers.map((answer) => {
      const { title, sentence } = answerWords[answer.key];
      return { title, sentence: sentence(answer, say) };
    });
  }

  private assumptions(both: Both): TemplateResult {
    const { filled, scenario } = this.shown;
    const all = assumptionLines(filled, this.answers, scenario, both);
    return html`<section class="sheet-block assumptions">
      <h2>${givenWords.assumptions}</h2>
      <p class="lead">${givenWords.intro(all.length)}</p>
      <ul>
        ${all.map(({ line, count }) => html`<li data-count=${count}>${unbroken(line)}</li>`)}
      </ul>
      <p class="more"></p>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tankful-sheet': TankfulSheet;
  }
}
