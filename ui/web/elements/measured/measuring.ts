/** Something that is being worked out of a measurement: asked, under way, answered or refused. */
import { html, nothing, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Edit, Scenario } from '../../../../sim/index.ts';
import { errorText, measuredWords, type Units } from '../../../words/index.ts';
import { tell } from '../../app/events.ts';
import type { Page } from '../../app/page.ts';
import type { UnderWay } from '../../worker/pool.ts';
import type { Measured, Measurement } from '../../worker/protocol.ts';
import { LightElement } from '../light-element.ts';
import { workingView } from '../shell/working-view.ts';

interface Asked<Found> {
  at: 'none' | 'working' | 'done' | 'failed';
  progress?: readonly [done: number, of: number];
  since_ms?: number;
  /** Stays while the next is worked out. */
  found?: Found;
  of?: Scenario;
  /** Lines in the house's form. */
  problems?: string[];
}

export abstract class Measuring<Found extends Measured> extends LightElement {
  @property({ attribute: false }) page!: Page;
  @property({ attribute: false }) scenario!: Scenario;
  @property({ attribute: false }) units: Units = 'US';
  @state() protected asked: Asked<Found> = { at: 'none' };
  private underWay: UnderWay | null = null;

  override disconnectedCallback(): void {
    this.underWay?.stop();
    super.disconnectedCallback();
  }

  protected ask(measurement: Measurement): void {
    this.underWay?.stop();
    const { scenario, page } = this;
    this.asked = { ...this.asked, at: 'working', progress: [0, 0], since_ms: page.now(), problems: [] };
    const mine: UnderWay = page.measure(measurement, {
      progress: (done, of) => {
        if (this.underWay === mine) this.asked = { ...this.asked, progress: [done, of] };
      },
      answered: (found) => {
        if (this.underWay === mine) this.asked = { at: 'done', found: found as Found, of: scenario };
      },
      failed: (problem) => {
        if (this.underWay === mine) this.asked = { at: 'failed', problems: problem.split('\n') };
      },
    });
    this.underWay = mine;
  }

  /** The button that asks, how far it is, what was wrong. */
  protected askRow(words: string): TemplateResult {
    const { at, problems = [] } = this.asked;
    return html`<p class="measured-ask">
        <button type="submit" class="plain">${words}</button>
        ${
          at === 'working'
            ? html`${workingView(this.asked, this.page.now())}
              <button type="button" class="quiet" @click=${() => this.stop()}>${measuredWords.stop}</button>`
            : nothing
        }
      </p>
      <div class="troubles" role="alert">
        ${problems.length > 0 ? html`<ul>${problems.map((line) => html`<li>${errorText(line)}</li>`)}</ul>` : nothing}
      </div>`;
  }

  /** Of another design than the one in the page: said, and not put into it. */
  protected putRow(edits: Edit[]): TemplateResult | typeof nothing {
    if (this.asked.of !== this.scenario) return html`<p class="help">${measuredWords.outdated}</p>`;
    if (edits.length === 0) return nothing;
    return html`<p>
      <button type="button" class="plain" @click=${() => this.put(edits)}>${measuredWords.put}</button>
    </p>`;
  }

  private put(edits: Edit[]): void {
    tell(this, 'commit-edits', { edits, gesture: measuredWords.putGesture });
  }

  protected stop(): void {
    this.underWay?.stop();
    this.underWay = null;
    this.asked = { ...this.asked, at: this.asked.found ? 'done' : 'none' };
  }
}
