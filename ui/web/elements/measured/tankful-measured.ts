/** What an owner measured: a log held against the run, and small measurements, each a form. */
import { html, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type FilledDefault, RECIPES, type RecipeKind, type Scenario } from '../../../../sim/index.ts';
import { measuredWords, type Units } from '../../../words/index.ts';
import type { Page } from '../../app/page.ts';
import type { Log } from '../../app/page-state.ts';
import { LightElement } from '../light-element.ts';
import './tankful-fit.ts';
import './tankful-recipe.ts';

const kinds = Object.keys(RECIPES) as RecipeKind[];

@customElement('tankful-measured')
export class TankfulMeasured extends LightElement {
  @property({ attribute: false }) page!: Page;
  @property({ attribute: false }) scenario!: Scenario;
  @property({ attribute: false }) log: Log | null = null;
  @property({ attribute: false }) filled: readonly FilledDefault[] = [];
  @property({ attribute: false }) units: Units = 'US';

  protected override updated(changed: PropertyValues): void {
    if (changed.has('log') && this.log) this.scrollIntoView({ block: 'start' });
  }

  override render(): TemplateResult {
    const { page, scenario, units, log, filled } = this;
    const coils = (scenario.coils ?? []).map(({ name }) => name);
    return html`<section class="panel measured" aria-labelledby="measured-title">
      <h2 id="measured-title">${measuredWords.title}</h2>
      <p class="help">${measuredWords.intro}</p>
      <tankful-fit
        .page=${page}
        .scenario=${scenario}
        .units=${units}
        .log=${log}
        .coils=${coils}
        .filled=${filled}
      ></tankful-fit>
      <h3>${measuredWords.recipesTitle}</h3>
      ${kinds.map(
        (kind) =>
          html`<tankful-recipe
            .page=${page}
            .scenario=${scenario}
            .units=${units}
            .kind=${kind}
          ></tankful-recipe>`,
      )}
      <p class="caution warning">${measuredWords.caution}</p>
    </section>`;
  }
}
