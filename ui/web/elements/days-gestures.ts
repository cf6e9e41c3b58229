/** Pointers and wheels over the panels and the overview, as times: to read, to move along, to zoom. */
import { moved, within, zoomed } from '../app/window.ts';
import { type Frame, plotWidth, type TimeSpan, timeAt } from '../charts/frame.ts';

export interface Gestured {
  /** Null until there is something drawn. */
  frame(): Frame | null;
  window(): TimeSpan;
  whole(): TimeSpan;
  moveCursor(time_s: number): void;
  zoom(window: TimeSpan): void;
}

/** Less than this is a click whose hand shook. */
const drag_px = 4;
/** A notch of a wheel, 100 px, is a third more or less. */
const wheelScale_px = 350;
/** An edge of the window in the overview is this wide to a pointer. */
const grip_px = 14;

interface Held {
  x: number;
  from: TimeSpan;
  /** What the overview's pointer took hold of. */
  grip?: 'start' | 'end' | 'middle' | 'new';
  dragging: boolean;
}

export class DaysGestures {
  private readonly pointers = new Map<number, number>();
  private held: Held | null = null;
  /** Distance and middle of two fingers, and the window, when the second came down. */
  private pinch: { apart_px: number; at_s: number; from: TimeSpan } | null = null;

  constructor(private readonly days: Gestured) {}

  readonly down = (event: PointerEvent): void => {
    const x = this.x(event);
    this.pointers.set(event.pointerId, x);
    this.held = { x, from: this.days.window(), dragging: false };
    if (this.pointers.size === 2) {
      const [a, b] = this.pointers.values();
      const at_s = this.time((a + b) / 2, this.days.window());
      this.pinch = { apart_px: Math.max(1, Math.abs(a - b)), at_s, from: this.days.window() };
    }
    if (event.pointerType !== 'mouse') this.read(x);
  };

  readonly move = (event: PointerEvent): void => {
    const frame = this.days.frame();
    if (!frame) return;
    const x = this.x(event);
    if (this.pointers.has(event.pointerId)) this.pointers.set(event.pointerId, x);
    if (this.pinch && this.pointers.size === 2) {
      const { apart_px, at_s, from } = this.pinch;
      const [a, b] = this.pointers.values();
      const closer = zoomed(from, this.days.whole(), at_s, apart_px / Math.max(1, Math.abs(a - b)));
      const drift_s = at_s - this.time((a + b) / 2, closer);
      this.days.zoom(moved(closer, this.days.whole(), drift_s));
      return;
    }
    if (this.held && event.pointerType === 'mouse' && event.buttons === 1) {
      this.held.dragging ||= Math.abs(x - this.held.x) > drag_px;
      if (this.held.dragging) {
        const { from } = this.held;
        this.capture(event);
        this.days.zoom(moved(from, this.days.whole(), (this.held.x - x) * this.perPixel(from)));
      }
      return;
    }
    this.read(x);
  };

  readonly up = (event: PointerEvent): void => {
    this.pointers.delete(event.pointerId);
    if (this.held && !this.held.dragging && !this.pinch) this.read(this.x(event));
    if (this.pointers.size === 0) this.pinch = null;
    this.held = null;
  };

  /** Over the panels a plain wheel scrolls the page, as everywhere; over the overview it zooms. */
  readonly wheel = (event: WheelEvent): void => this.turn(event, false);
  readonly overviewWheel = (event: WheelEvent): void => this.turn(event, true);

  private turn(event: WheelEvent, plain: boolean): void {
    const { deltaX, deltaY } = event;
    const window = this.days.window();
    const aside = event.shiftKey ? deltaX || deltaY : Math.abs(deltaX) > Math.abs(deltaY) ? deltaX : 0;
    if (aside !== 0) {
      event.preventDefault();
      this.days.zoom(moved(window, this.days.whole(), aside * this.perPixel(window)));
    } else if (plain || event.ctrlKey || event.metaKey) {
      event.preventDefault();
      const at_s = plain ? (window.from_s + window.to_s) / 2 : this.time(this.x(event), window);
      this.days.zoom(zoomed(window, this.days.whole(), at_s, Math.exp(deltaY / wheelScale_px)));
    }
  }

  readonly overviewDown = (event: PointerEvent): void => {
    const frame = this.days.frame();
    if (!frame) return;
    const x = this.x(event);
    const from = this.days.window();
    const whole = this.days.whole();
    const at = (time_s: number) =>
      frame.left + ((time_s - whole.from_s) / (whole.to_s - whole.from_s)) * plotWidth(frame);
    const grip =
      Math.abs(x - at(from.from_s)) < grip_px
        ? 'start'
        : Math.abs(x - at(from.to_s)) < grip_px
          ? 'end'
          : x > at(from.from_s) && x < at(from.to_s) && from.to_s - from.from_s < whole.to_s - whole.from_s
            ? 'middle'
            : 'new';
    this.held = { x, from, grip, dragging: false };
    this.capture(event);
  };

  readonly overviewMove = (event: PointerEvent): void => {
    const { held } = this;
    if (!held?.grip) return;
    const whole = this.days.whole();
    const x = this.x(event);
    held.dragging ||= Math.abs(x - held.x) > drag_px;
    if (!held.dragging) return;
    const { from } = held;
    const by_s = (x - held.x) * this.perPixel(whole);
    const here_s = this.time(x, whole);
    const began_s = this.time(held.x, whole);
    const spans: Record<NonNullable<Held['grip']>, TimeSpan> = {
      start: { from_s: Math.min(here_s, from.to_s), to_s: from.to_s },
      end: { from_s: from.from_s, to_s: Math.max(here_s, from.from_s) },
      middle: { from_s: from.from_s + by_s, to_s: from.to_s + by_s },
      new: { from_s: Math.min(began_s, here_s), to_s: Math.max(began_s, here_s) },
    };
    this.days.zoom(within(spans[held.grip], whole));
  };

  /** A click beside the window moves it there. */
  readonly overviewUp = (event: PointerEvent): void => {
    const { held } = this;
    this.held = null;
    if (!held?.grip || held.dragging) return;
    const whole = this.days.whole();
    const middle_s = (held.from.from_s + held.from.to_s) / 2;
    if (held.grip === 'new')
      this.days.zoom(moved(held.from, whole, this.time(this.x(event), whole) - middle_s));
  };

  private read(x: number): void {
    if (this.days.frame()) this.days.moveCursor(this.time(x, this.days.window()));
  }

  private time(x: number, span: TimeSpan): number {
    const frame = this.days.frame();
    return frame ? timeAt(x, frame, span) : span.from_s;
  }

  private perPixel({ from_s, to_s }: TimeSpan): number {
    const frame = this.days.frame();
    return frame ? (to_s - from_s) / plotWidth(frame) : 0;
  }

  private x(event: MouseEvent): number {
    return event.clientX - (event.currentTarget as HTMLElement).getBoundingClientRect().left;
  }

  private capture(event: PointerEvent): void {
    (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
  }
}
