/** Buttons over the panels, and the whole run in a strip beneath them. */
import { html, type TemplateResult } from 'lit';
import { daysWords } from '../../words/index.ts';
import { moved, within, zoomed } from '../app/window.ts';
import { type Frame, type TimeSpan, timeScale } from '../charts/frame.ts';
import type { DaysGestures } from './days-gestures.ts';
import { drawn } from './drawn.ts';

export interface ToolsOf {
  window: TimeSpan;
  whole: TimeSpan;
  cursor_s: number;
  /** The window in words. */
  words: string;
  zoom(window: TimeSpan): void;
}

export const zoomStep = 1.5;
const halfDay_s = 43_200;

export function toolsView({ window, whole, cursor_s, words, zoom }: ToolsOf): TemplateResult {
  const length_s = window.to_s - window.from_s;
  const middle_s = (window.from_s + window.to_s) / 2;
  const day = { from_s: cursor_s - halfDay_s, to_s: cursor_s + halfDay_s };
  const buttons: [sign: string, name: string, window: () => TimeSpan][] = [
    ['◂', daysWords.earlier, () => moved(window, whole, -length_s / 2)],
    ['▸', daysWords.later, () => moved(window, whole, length_s / 2)],
    ['+', daysWords.closer, () => zoomed(window, whole, middle_s, 1 / zoomStep)],
    ['−', daysWords.wider, () => zoomed(window, whole, middle_s, zoomStep)],
    [daysWords.oneDay, daysWords.oneDay, () => within(day, whole)],
    [daysWords.all, daysWords.all, () => whole],
  ];
  return html`<div class="days-tools" role="group" aria-label=${daysWords.toolbar}>
    <h2 id="days-title">${daysWords.title}</h2>
    ${buttons.map(
      ([sign, name, next]) =>
        html`<button type="button" class="tool" aria-label=${name} title=${name} @click=${() => zoom(next())}>
          ${sign}
        </button>`,
    )}
    <span class="days-window">${words}</span>
  </div>`;
}

export const overview_px = 44;

export function overviewView(
  strip: string,
  frame: Frame,
  { window, whole, words }: ToolsOf,
  gestures: DaysGestures,
  onKey: (event: KeyboardEvent) => void,
): TemplateResult {
  const x = timeScale(frame, whole);
  const from = x(window.from_s);
  return html`<div
    class="overview"
    data-panel="overview"
    tabindex="0"
    role="application"
    aria-roledescription=${daysWords.chart}
    aria-label=${daysWords.overview(words)}
    @pointerdown=${gestures.overviewDown}
    @pointermove=${gestures.overviewMove}
    @pointerup=${gestures.overviewUp}
    @pointercancel=${gestures.overviewUp}
    @wheel=${gestures.overviewWheel}
    @keydown=${onKey}
  >
    <svg width=${frame.width} height=${overview_px} aria-hidden="true" ${drawn(strip)}></svg>
    <div
      class="overview-window"
      .style=${`left:${from.toFixed(1)}px;width:${(x(window.to_s) - from).toFixed(1)}px`}
    ></div>
  </div>`;
}
