/** The scaled drawing of the plant, with handles to move the water, the coils and the insulation. */
import { html, nothing, type PropertyValues, svg, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { type Edit, gripEdits, type Scenario, type SectionFacts } from '../../../../sim/index.ts';
import { sectionWords, systemOf, type Units } from '../../../words/index.ts';
import { tell } from '../../app/events.ts';
import { darkPalette, type FieldScale, lightPalette } from '../../charts/palette.ts';
import { isNarrow } from '../../charts/section/frame.ts';
import type { SectionHandle } from '../../charts/section/handles.ts';
import { type SectionDrawing, sectionDrawing } from '../../charts/section/section-drawing.ts';
import { valueAfterKey, valueAfterPull } from '../../charts/section/steps.ts';
import { drawn } from '../drawn.ts';
import { saveButton } from '../files/file-buttons.ts';
import { LightElement } from '../light-element.ts';
import { type HeldGrip, nearest, underHand } from './held-grip.ts';
import { handleView, legendView } from './section-views.ts';

/** A hand on the keys that pauses this long has let go. */
const KEYS_LET_GO_MS = 700;
/** A frame that takes longer leaves the page no time for anything else. */
const SLOW_MS = 40;
/** Where the water's colours turn when no run says what is wanted at the tap [C]. */
const COMFORTABLE_C = 40;
const HEIGHTS = { narrow: 600, wide: 720 };

@customElement('tankful-section')
export class TankfulSection extends LightElement {
  /** Of the design with what a hand moves: drawn as they are. */
  @property({ attribute: false }) facts: SectionFacts | null = null;
  /** The design's file, which the edits are for. */
  @property({ attribute: false }) scenario!: Scenario;
  @property({ attribute: false }) units: Units = 'US';
  /** Temperatures of the layers at the cursor, bottom first [C]; empty where no run is known. */
  @property({ attribute: false }) layer_C: ArrayLike<number> = [];
  /** Depth of the water at the cursor [m]; null: as the design has it. */
  @property({ attribute: false }) level_m: number | null = null;
  /** Of the run's colours [C]; null: of the layers' own. */
  @property({ attribute: false }) scale: FieldScale | null = null;
  /** When the water is as it is drawn, in words. */
  @property({ attribute: false }) moment = '';
  @property({ attribute: false }) ghost: SectionFacts | null = null;
  /** Most height of the drawing [px]; 0: by its width. */
  @property({ attribute: false }) height = 0;

  @query('.section-stage') private stage!: HTMLElement;

  @state() private width = 0;
  @state() private dark = false;
  @state() private held: HeldGrip | null = null;

  private drawing: SectionDrawing | null = null;
  private telling = 0;
  private untold: Edit[] | null = null;
  private lettingGo = 0;
  /** Where the pointer is and the drawing is not yet [m]. */
  private hand_m: number | null = null;
  private breathing = false;
  private readonly scheme = matchMedia('(prefers-color-scheme: dark)');
  private readonly size = new ResizeObserver(() => this.measure());

  override connectedCallback(): void {
    super.connectedCallback();
    this.scheme.addEventListener('change', this.onScheme);
    this.onScheme();
    if (this.hasUpdated) this.size.observe(this.stage);
  }

  override disconnectedCallback(): void {
    this.scheme.removeEventListener('change', this.onScheme);
    this.size.disconnect();
    cancelAnimationFrame(this.telling);
    clearTimeout(this.lettingGo);
    super.disconnectedCallback();
  }

  protected override firstUpdated(): void {
    this.size.observe(this.stage);
    this.measure();
  }

  protected override willUpdate(changed: PropertyValues): void {
    // New facts after the hand has let go are the page's own word on what it did.
    if (changed.has('facts') && this.held?.done) this.held = null;
    this.drawing = this.facts && this.width > 0 ? this.draw(this.facts) : null;
  }

  private draw(facts: SectionFacts): SectionDrawing {
    const { layer_C, units, ghost, held, width } = this;
    const height = this.height || (isNarrow(width) ? HEIGHTS.narrow : HEIGHTS.wide);
    return sectionDrawing(underHand(facts, held), {
      width,
      height,
      layer_C,
      // A hand that moves the water line moves the water.
      level_m: held ? null : this.level_m,
      units,
      ghost,
      scale: this.scale ?? scaleOf(layer_C),
      palette: this.dark ? darkPalette : lightPalette,
      frame: held && !held.done ? held.frame : null,
    });
  }

  override render(): TemplateResult {
    const { drawing, width } = this;
    return html`
      <section class="panel section" aria-labelledby="section-title">
        <h2 id="section-title">${sectionWords.title}</h2>
        ${this.moment ? html`<p class="section-moment">${sectionWords.asAt} ${this.moment}</p>` : nothing}
        <div class="section-stage">
          ${
            drawing
              ? html`<svg
                  class="section-drawing ${isNarrow(width) ? 'narrow' : ''}"
                  width=${width}
                  height=${drawing.frame.height}
                  role="img"
                  aria-label=${drawing.sentence}
                >
                  ${drawing.sheets.map((sheet) => svg`<g ${drawn(sheet)}></g>`)}
                </svg>
                ${this.handles(drawing)}`
              : nothing
          }
        </div>
        <p id="section-hint" class="help">${sectionWords.hint}</p>
        ${drawing ? saveButton('section', sectionWords.title) : nothing}
        ${drawing ? legendView(drawing.legend, !isNarrow(width)) : nothing}
      </section>
    `;
  }

  private handles({ handles }: SectionDrawing): TemplateResult {
    return html`<div
      class="handles"
      role="group"
      aria-label=${sectionWords.handles}
      aria-describedby="section-hint"
      @pointerover=${this.onNear}
      @focusin=${this.onNear}
      @pointerdown=${this.onTake}
      @pointermove=${this.onMove}
      @pointerup=${this.onLetGo}
      @pointercancel=${this.cancel}
      @keydown=${this.onKey}
      @focusout=${this.onLeave}
    >
      ${handles.map((handle) => handleView(this.inPlace(handle), this.units, this.isHeld(handle), this.width))}
    </div>`;
  }

  private isHeld({ key }: SectionHandle): boolean {
    return this.held !== null && !this.held.done && this.held.handle.key === key;
  }

  /** A held handle moves only the way it is pulled, whatever other handles do to its seat. */
  private inPlace(handle: SectionHandle): SectionHandle {
    if (!this.held || !this.isHeld(handle)) return handle;
    const { x, y } = this.held.handle;
    return handle.grows === 'left' ? { ...handle, y } : { ...handle, x };
  }

  private measure(): void {
    this.width = Math.floor(this.stage.clientWidth);
  }

  private readonly onScheme = (): void => {
    this.dark = this.scheme.matches;
  };

  private readonly onNear = (): void => {
    if (!this.held) tell(this, 'hand-near');
  };

  private onTake(event: PointerEvent): void {
    if (!this.drawing || event.button !== 0) return;
    const box = this.stage.getBoundingClientRect();
    const at = { x: event.clientX - box.left, y: event.clientY - box.top };
    this.commit();
    const handle = nearest(this.drawing.handles, at);
    this.take(handle, { x: event.clientX, y: event.clientY });
    const element = this.querySelector<HTMLElement>(`.handle[data-key="${handle.key}"]`);
    element?.focus({ preventScroll: true });
    (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
    event.preventDefault();
  }

  private take(handle: SectionHandle, from: HeldGrip['from']): void {
    if (!this.drawing) return;
    this.held = { handle, frame: this.drawing.frame, value_m: handle.value_m, from, done: false };
  }

  private onMove(event: PointerEvent): void {
    const { held } = this;
    if (!held?.from || held.done) return;
    const pull = { x: event.clientX - held.from.x, y: event.clientY - held.from.y };
    this.hand_m = valueAfterPull(held.handle, pull, held.frame.px_per_m, this.units);
    this.follow();
  }

  /** Goes after the hand as often as can be drawn: a frame that took long is followed by a rest as long. */
  private follow(): void {
    if (this.breathing || this.hand_m === null) return;
    this.moveTo(this.hand_m);
    this.hand_m = null;
    this.breathing = true;
    const began_ms = performance.now();
    const rested = () => {
      this.breathing = false;
      this.follow();
    };
    requestAnimationFrame(() =>
      setTimeout(() => {
        const took_ms = performance.now() - began_ms;
        if (took_ms < SLOW_MS) rested();
        else setTimeout(rested, took_ms);
      }),
    );
  }

  private onLetGo(): void {
    if (!this.held?.from) return;
    if (this.hand_m !== null) this.moveTo(this.hand_m);
    this.commit();
  }

  private onKey(event: KeyboardEvent): void {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const key = (event.target as HTMLElement).dataset.key;
    const handle = this.drawing?.handles.find((each) => each.key === key);
    if (!handle) return;
    if (event.key === 'Escape') this.cancel();
    else if (event.key === 'Enter') this.commit();
    else {
      const value_m = valueAfterKey(handle, event.key, this.units);
      if (value_m === null) return;
      if (!this.isHeld(handle)) {
        this.commit();
        this.take(handle, null);
      }
      this.moveTo(value_m);
      clearTimeout(this.lettingGo);
      this.lettingGo = window.setTimeout(() => this.commit(), KEYS_LET_GO_MS);
    }
    event.preventDefault();
  }

  /** To another handle or away: a hand on the keys has let go. */
  private onLeave(): void {
    if (this.held && !this.held.from) this.commit();
  }

  private moveTo(value_m: number): void {
    const { held } = this;
    if (!held || held.value_m === value_m) return;
    this.held = { ...held, value_m };
    this.untold = this.editsOf(this.held);
    // A hand moves faster than screens are painted.
    cancelAnimationFrame(this.telling);
    this.telling = requestAnimationFrame(() => this.tellPreview());
  }

  private tellPreview(): void {
    if (this.untold) tell(this, 'preview-edits', { edits: this.untold });
    this.untold = null;
  }

  private editsOf({ handle, value_m }: HeldGrip): Edit[] {
    const { facts, scenario, units } = this;
    return facts ? gripEdits(scenario, facts, handle.grip, value_m, systemOf(units, 'length')) : [];
  }

  private commit(): void {
    const { held } = this;
    this.forgetWaiting();
    if (!held || held.done) return;
    if (held.value_m === held.handle.value_m) {
      this.cancel();
      return;
    }
    this.held = { ...held, done: true };
    const { label, grip, value_m } = held.handle;
    tell(this, 'commit-edits', {
      edits: this.editsOf(held),
      gesture: sectionWords.gesture(label, grip.what, held.value_m > value_m),
    });
  }

  private cancel(): void {
    this.forgetWaiting();
    if (!this.held || this.held.done) return;
    this.held = null;
    tell(this, 'cancel');
  }

  private forgetWaiting(): void {
    cancelAnimationFrame(this.telling);
    clearTimeout(this.lettingGo);
    this.untold = null;
    this.hand_m = null;
  }
}

/** Colours over the temperatures there are. */
export function scaleOf(layer_C: ArrayLike<number>): FieldScale {
  const all = Array.from(layer_C);
  return {
    low: Math.min(COMFORTABLE_C, ...all),
    pivot: COMFORTABLE_C,
    high: Math.max(COMFORTABLE_C, ...all),
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'tankful-section': TankfulSection;
  }
}
