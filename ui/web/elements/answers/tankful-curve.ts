/** An answer's curve: one tab stop, read by pointer or arrow keys, and the same as a table. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { answerViewWords, chartWords, daysWords } from '../../../words/index.ts';
import type { AnswerCurve } from '../../app/answer-curve.ts';
import { curveSheet } from '../../app/files/curve-sheet.ts';
import { fileStem } from '../../app/files/file-names.ts';
import { curveChart, curveScales } from '../../charts/curve-chart.ts';
import { type Frame, plotWidth } from '../../charts/frame.ts';
import { drawn } from '../drawn.ts';
import { saveButton } from '../files/file-buttons.ts';
import { pictureFrom, type Savable, saved_px } from '../files/savable.ts';
import { LightElement } from '../light-element.ts';
import { swatch } from '../swatch.ts';

const height_px = 250;
const margins = { left: 52, right: 14, top: 20, bottom: 26 };
/** Words of marks stand this far apart. */
const mark_px = 34;

@customElement('tankful-curve')
export class TankfulCurve extends LightElement {
  @property({ attribute: false }) curve!: AnswerCurve;
  /** What it shows, in a line. */
  @property() override title = '';
  /** Name of x, as a table's head has it. */
  @property({ attribute: false }) name = '';

  @query('.stage') private stage!: HTMLElement;
  @state() private width = 0;
  /** Which value of x is read, and of which line. */
  @state() private at = 0;
  @state() private line = 0;
  /** Somebody reads it: until then the design as it stands is not covered by a cursor. */
  @state() private read = false;
  @state() private tableOpen = false;
  @state() private announcement = '';
  private readonly size = new ResizeObserver(() => this.measure());

  override disconnectedCallback(): void {
    this.size.disconnect();
    super.disconnectedCallback();
  }

  protected override willUpdate(): void {
    const { at, present, lines } = this.curve;
    this.at = Math.min(this.at, at.length - 1);
    this.line = Math.min(this.line, lines.length - 1);
    if (!this.hasUpdated && present !== null) this.at = nearest(at, present);
  }

  protected override firstUpdated(): void {
    this.size.observe(this.stage);
    this.measure();
  }

  override render(): TemplateResult {
    const { curve, tableOpen } = this;
    const { lines } = curve;
    return html`<figure class="plot curve">
      <figcaption>
        <span class="title">${this.title}</span>
        ${
          lines.length > 1
            ? lines.map(
                ({ label }, i) => html`<span class="key">${swatch(`line curve-${i % 4}`)}${label}</span>`,
              )
            : nothing
        }
        ${
          curve.thin.length > 0
            ? html`<span class="key">${swatch('line thin')}${answerViewWords.thin(curve.thin.length)}</span>`
            : nothing
        }
      </figcaption>
      <p class="curve-readout" aria-hidden="true">
        <strong>${curve.atWords[this.at]}</strong>
        ${lines.map(({ label, words }) => html`<span>${label} <strong>${words[this.at]}</strong></span>`)}
      </p>
      <div
        class="stage"
        tabindex="0"
        role="application"
        aria-roledescription=${daysWords.chart}
        aria-label=${this.title}
        aria-description=${answerViewWords.curveHelp}
        @keydown=${this.onKey}
        @pointermove=${this.onPointer}
        @pointerdown=${this.onPointer}
      >
        ${this.width > 0 ? this.drawing() : nothing}
      </div>
      <p class="axis-name" aria-hidden="true">${this.name}${curve.x.unit === '' ? '' : `, ${curve.x.unit}`}</p>
      <p class="unseen" aria-live="polite">${this.announcement}</p>
      <button
        type="button"
        class="quiet"
        aria-expanded=${tableOpen}
        @click=${() => {
          this.tableOpen = !tableOpen;
        }}
      >
        ${tableOpen ? answerViewWords.hideTable : answerViewWords.showTable}<span class="unseen">: ${this.title}</span>
      </button>
      ${saveButton('curve', this.title)}
      ${tableOpen ? this.table() : nothing}
    </figure>`;
  }

  savable(): Savable {
    const { curve, title, name } = this;
    const { lines, y } = curve;
    return {
      stem: fileStem(title),
      title: y.unit === '' ? title : `${title}, ${y.unit}`,
      about: chartWords.over(curve.x.unit === '' ? name : `${name}, ${curve.x.unit}`),
      sheets: [{ words: chartWords.csv, sheet: () => curveSheet(curve, name) }],
      picture: () =>
        pictureFrom(
          this.drawing(saved_px),
          'plot curve',
          lines.length > 1
            ? lines.map(({ label }, i) => ({ swatch: swatch(`line curve-${i % 4}`), words: label }))
            : [],
        ),
    };
  }

  private drawing(width = this.width): TemplateResult {
    const { curve } = this;
    const frame = this.frame(width);
    const marks = Math.max(2, Math.floor(plotWidth(frame) / mark_px));
    const every = Math.ceil(curve.x.range.at.length / marks);
    const x = { ...curve.x.range, at: curve.x.range.at.filter((_, i) => i % every === 0) };
    const data = {
      ...curve,
      x,
      y: curve.y.range,
      lines: curve.lines.map(({ values }) => values),
      thin: curve.thin.map(({ values }) => values),
      chosen: this.read && curve.lines.length > 1 ? this.line : null,
    };
    const drawing = curveChart(data, frame, {
      x: curve.x.tick,
      y: curve.y.tick,
      unit: curve.y.unit,
      present: curve.presentWords,
      knee: curve.kneeWords,
    });
    const across = curveScales({ x, y: curve.y.range }, frame).x(curve.at[this.at]);
    return html`<svg width=${frame.width} height=${frame.height} role="img" aria-label=${this.sentence()} ${drawn(drawing)}></svg>
      <div
        class="cursor-line"
        ?hidden=${!this.read}
        .style=${`top:${frame.top}px;bottom:${frame.bottom}px;transform:translateX(${across.toFixed(1)}px)`}
      ></div>`;
  }

  /** The reach of every line. */
  private sentence(): string {
    const reach = this.curve.lines.map(({ label, words, values }) => {
      const known = words.filter((_, i) => values[i] !== null);
      return answerViewWords.from(label, known[0] ?? '', known[known.length - 1] ?? '');
    });
    return answerViewWords.curveSentence(this.title, reach.join('; '));
  }

  private table(): TemplateResult {
    const { curve } = this;
    const columns = [...curve.lines, ...curve.thin];
    return html`<div class="scrolls" tabindex="0" role="group" aria-label=${this.title}>
      <table>
        <thead>
          <tr>
            <th scope="col">${this.name}</th>
            ${columns.map(({ label }) => html`<th scope="col">${label}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${curve.atWords.map(
            (words, i) =>
              html`<tr>
                <th scope="row">${words}</th>
                ${columns.map((line) => html`<td>${line.words[i]}</td>`)}
              </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }

  private frame(width = this.width): Frame {
    return { ...margins, width, height: height_px };
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const { at, lines } = this.curve;
    const step = { ArrowLeft: -1, ArrowRight: 1, Home: -at.length, End: at.length }[event.key];
    const turn = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    if (step === undefined && turn === undefined) return;
    event.preventDefault();
    this.read = true;
    if (step !== undefined) this.at = Math.min(at.length - 1, Math.max(0, this.at + step));
    if (turn !== undefined) this.line = (this.line + turn + lines.length) % lines.length;
    const { label, words } = lines[this.line];
    this.announcement = `${this.curve.atWords[this.at]}: ${label} ${words[this.at]}`;
  };

  private readonly onPointer = (event: PointerEvent): void => {
    this.read = true;
    const frame = this.frame();
    const { low, high } = this.curve.x.range;
    const share = (event.clientX - this.stage.getBoundingClientRect().left - frame.left) / plotWidth(frame);
    this.at = nearest(this.curve.at, low + share * (high - low));
  };

  private measure(): void {
    this.width = Math.floor(this.stage.clientWidth);
  }
}

function nearest(at: readonly number[], wanted: number): number {
  return at.reduce((best, x, i) => (Math.abs(x - wanted) < Math.abs(at[best] - wanted) ? i : best), 0);
}
