/** The run's figures by group, each with its unit and with the cautions that belong to it. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Result } from '../../../sim/index.ts';
import {
  type FigureKey,
  figureGroups,
  figureWords,
  shellWords,
  together,
  type Units,
} from '../../words/index.ts';
import { figureInFull } from '../app/figure-text.ts';
import { cautionNote } from './caution-note.ts';
import { LightElement } from './light-element.ts';

type Group = keyof typeof figureGroups;

@customElement('tankful-figures')
export class TankfulFigures extends LightElement {
  @property({ attribute: false }) result!: Result;
  @property({ attribute: false }) units: Units = 'US';

  override render(): TemplateResult {
    const groups = (Object.keys(figureGroups) as Group[])
      .map((group) => ({ group, keys: this.keysOf(group) }))
      .filter(({ keys }) => keys.length > 0);
    const standing = new Set<string>(groups.flatMap(({ keys }) => keys));
    const loose = this.result.cautions.filter(({ figure }) => figure === undefined || !standing.has(figure));
    return html`
      <section class="panel" aria-labelledby="figures-title">
        <h2 id="figures-title">${shellWords.figures}</h2>
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
      <dd>${value === null ? none : figureInFull(key, value, this.units)}</dd>
      ${together(cautions).map(
        ({ caution, parts }) => html`<dd class="beside">${cautionNote(caution, this.units, { parts })}</dd>`,
      )}
    </div>`;
  }
}
