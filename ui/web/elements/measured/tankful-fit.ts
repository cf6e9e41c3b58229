/** A log of the real store held against the run: what it tells, what it cannot, measured over simulated. */
import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { comparedCurve, type FilledDefault, type FitAnswer } from '../../../../sim/index.ts';
import {
  fitCautions,
  fitInputName,
  fitSentence,
  fitValue,
  fitWords,
  measuredWords,
  type Say,
  sayIn,
} from '../../../words/index.ts';
import { answerCurve } from '../../app/answer-curve.ts';
import type { Log } from '../../app/page-state.ts';
import { titledTable } from '../answers/answer-table.ts';
import '../answers/tankful-curve.ts';
import { Measuring } from './measuring.ts';

/** A log longer than this is not put into a field to be typed in [letters]. */
const longest = 20_000;

@customElement('tankful-fit')
export class TankfulFit extends Measuring<FitAnswer> {
  /** Opened from a file. */
  @property({ attribute: false }) log: Log | null = null;
  @property({ attribute: false }) coils: readonly string[] = [];
  @property({ attribute: false }) filled: readonly FilledDefault[] = [];
  @state() private text = '';
  @state() private coolDown = false;
  /** The log of a file that is too long to be shown. */
  @state() private long: Log | null = null;

  protected override willUpdate(changed: PropertyValues): void {
    const { log } = this;
    if (!changed.has('log') || !log) return;
    this.long = log.text.length > longest ? log : null;
    if (!this.long) this.text = log.text;
  }

  override render(): TemplateResult {
    const { found } = this.asked;
    return html`<h3>${measuredWords.logTitle}</h3>
      <form @submit=${this.onAsk}>
        ${this.long ? this.file(this.long) : this.field()}
        <label class="measured-check">
          <input
            type="checkbox"
            name="cool-down"
            .checked=${this.coolDown}
            @change=${(event: Event) => {
              this.coolDown = (event.target as HTMLInputElement).checked;
            }}
          />
          <span>${measuredWords.coolDown}</span>
        </label>
        ${this.askRow(measuredWords.ask)}
      </form>
      ${found ? this.told(found) : nothing}`;
  }

  private field(): TemplateResult {
    return html`<label class="measured-text">
      <span>${measuredWords.readings}</span>
      <textarea
        name="readings"
        rows="6"
        spellcheck="false"
        aria-describedby="log-help"
        placeholder=${measuredWords.example}
        .value=${this.text}
        @input=${(event: Event) => {
          this.text = (event.target as HTMLTextAreaElement).value;
        }}
      ></textarea>
      <span class="help" id="log-help">${measuredWords.logHelp}</span>
    </label>`;
  }

  private file({ name, text }: Log): TemplateResult {
    return html`<p>
      ${measuredWords.file(name, text.split('\n').length)}
      <button
        type="button"
        class="quiet"
        @click=${() => {
          this.long = null;
        }}
      >
        ${measuredWords.typeInstead}
      </button>
    </p>`;
  }

  private onAsk(event: Event): void {
    event.preventDefault();
    this.ask({ log: this.long?.text ?? this.text, coolDown: this.coolDown });
  }

  private told(found: FitAnswer): TemplateResult {
    const say = sayIn(this.units);
    const nameOf = (path: string) => fitInputName(path, this.coils);
    const cautions = fitCautions(found, this.filled, nameOf);
    return html`<div class="measured-told">
      <p role="status">${fitSentence(found, say, nameOf)}</p>
      ${found.settled ? nothing : html`<p class="caution warning">${fitWords.unsettled}</p>`}
      ${found.ignored.length > 0 ? html`<p>${fitWords.ignored(found.ignored)}</p>` : nothing}
      ${this.inputs(found, nameOf)} ${this.putRow(found.edits)}
      <div class="answer-curves">
        ${found.probes.map((probe, i) => this.probe(found, probe.name, i, say))}
      </div>
      ${this.probes(found, say)}
      ${cautions.map((each) => html`<p class="caution note">${each}</p>`)}
    </div>`;
  }

  private inputs({ inputs }: FitAnswer, nameOf: (path: string) => string): TemplateResult {
    const [, ...heads] = fitWords.heads;
    return titledTable(
      fitWords.inputs,
      html`<table aria-label=${fitWords.inputs}>
        <thead>
          <tr><td></td>${heads.map((head) => html`<th scope="col">${head}</th>`)}</tr>
        </thead>
        <tbody>
          ${inputs.map(({ path, before, value, low, high, form, told }) => {
            const cell = (number: number) => html`<td>${told ? fitValue(number, form) : '–'}</td>`;
            return html`<tr>
              <th scope="row">${nameOf(path)}</th>
              <td>${fitValue(before.value, form)}</td>
              ${cell(value)} ${cell(low)} ${cell(high)}
              <td class="words">${told ? fitWords.told : fitWords.untold}</td>
            </tr>`;
          })}
        </tbody>
      </table>`,
    );
  }

  private probe(found: FitAnswer, name: string, probe: number, say: Say): TemplateResult | typeof nothing {
    const lines = { measured: fitWords.measured(name), simulated: fitWords.simulated(name) };
    const curve = answerCurve(comparedCurve(found, probe), { lines }, say);
    if (!curve) return nothing;
    const title = `${fitWords.compared}: ${name}`;
    return html`<tankful-curve .curve=${curve} .title=${title} .name=${fitWords.time}></tankful-curve>`;
  }

  private probes({ probes }: FitAnswer, say: Say): TemplateResult {
    const kelvin = (value: number) => say.quantity(value, 'temperature_difference', 2);
    return titledTable(
      fitWords.probes,
      html`<table aria-label=${fitWords.probes}>
        <thead>
          <tr>${fitWords.probeHeads.map((head) => html`<th scope="col">${head}</th>`)}</tr>
        </thead>
        <tbody>
          ${probes.map(
            ({ name, offset_K, offsetDoubt_K, rms_K, drift_K_day }) =>
              html`<tr>
                <th scope="row">${name}</th>
                <td>${kelvin(-offset_K)}</td>
                <td>${kelvin(offsetDoubt_K)}</td>
                <td>${kelvin(rms_K)}</td>
                <td>${drift_K_day === null ? '–' : kelvin(drift_K_day)}</td>
              </tr>`,
          )}
        </tbody>
      </table>`,
    );
  }
}
