/** The run's figures by group, each with its unit and with the cautions that belong to it. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { FigureBands, Result } from '../../../sim/index.ts';
import {
  type FigureKey,
  figureBandWords,
  figureGroups,
  figureWords,
  shellWords,
  spanText,
  together,
} from '../../words/index.ts';
import { figureInFull, figureText } from '../app/figure-text.ts';
import { cautionNote } from './caution-note.ts';
import { Measuring } from './measured/measuring.ts';

type Group = keyof typeof figureGroups;

@customElement('tankful-figures')
export class TankfulFigures extends Measuring<FigureBands> {
  @property({ attribute: false }) result!: Result;
  /** The figures are those of a full run of the design as it stands. */
  @property({ attribute: false }) settled = false;

  protected override willUpdate(): void {
    // Whoever changes the design ends all that is worked out of the one before.
    if (this.asked.at === 'working' && !this.settled) this.stop();
  }

  override render(): TemplateResult {
    const groups = (Object.keys(figureGroups) as Group[])
      .map((group) => ({ group, keys: this.keysOf(group) }))
      .filter(({ keys }) => keys.length > 0);
    const standing = new Set<string>(groups.flatMap(({ keys }) => keys));
    const loose = this.result.cautions.filter(({ figure }) => figure === undefined || !standing.has(figure));
    return html`
      <section class="panel" aria-labelledby="figures-title">
        <h2 id="figures-title">${shellWords.figures}</h2>
        ${this.howSure()}
        <div class="figure-groups">
          ${groups.map(
            ({ group, keys }) =>
              html`<section class="figure-group">
                <h3>${figureGroups[group]}</h3>
                <dl>
                  ${keys.map((key) => this.figure(key))}
                </dl>
              </section>`,
          )}
        </div>
        ${
          loose.length > 0
            ? html`<div class="loose-cautions">
              <h3>${shellWords.alsoMind}</h3>
              ${together(loose).map(({ caution, parts }) => cautionNote(caution, this.units, { parts }))}
            </div>`
            : nothing
        }
      </section>
    `;
  }

  /** Of the run that is shown; null until they were asked for. */
  private get bands(): FigureBands | null {
    const { found, of } = this.asked;
    return found && of === this.scenario ? found : null;
  }

  private howSure(): TemplateResult {
    const { bands } = this;
    if (bands && this.asked.at === 'done')
      return html`<p class="help">
        ${figureBandWords.told(bands.tried.length, bands.untried)}
        ${bands.stopped ? figureBandWords.stopped : figureBandWords.unmoved}
      </p>`;
    return html`<form class="bands" @submit=${this.onAsk}>
      <p class="help">${figureBandWords.toAsk}</p>
      ${this.settled ? this.askRow(figureBandWords.ask) : nothing}
    </form>`;
  }

  private onAsk(event: Event): void {
    event.preventDefault();
    this.ask({ bands: true });
  }

  /** Figures of a group in order; none where nothing is known of it, as without an engine or a collector. */
  private keysOf(group: Group): FigureKey[] {
    const { figures } = this.result;
    const keys = (Object.keys(figureWords) as FigureKey[]).filter(
      (key) => figureWords[key].group === group && key in figures,
    );
    return keys.some((key) => figures[key] !== null) ? keys : [];
  }

  private figure(key: FigureKey): TemplateResult {
    const value = this.result.figures[key];
    const { label, none } = figureWords[key];
    const cautions = this.result.cautions.filter(({ figure }) => figure === key);
    return html`<div class="figure ${value === null ? 'none' : ''}">
      <dt>${label}</dt>
      <dd>${value === null ? none : figureInFull(key, value, this.units)}${this.band(key)}</dd>
      ${together(cautions).map(
        ({ caution, parts }) => html`<dd class="beside">${cautionNote(caution, this.units, { parts })}</dd>`,
      )}
    </div>`;
  }

  private band(key: FigureKey): TemplateResult | typeof nothing {
    const band = this.bands?.bands[key];
    if (!band) return nothing;
    const [low, high] = [band.low, band.high].map((end) => figureText(key, end, this.units));
    return html` <span class="band">(${spanText(low, high)})</span>`;
  }
}
