/** The three charts of the Days panel: drawn once for a result and a width, then only the cursor moves. */
import { html, nothing, svg, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import type { DaysData } from '../app/days-data.ts';
import type { Shown } from '../app/page-state.ts';
import { chartSentence, pageWords, tickWords } from '../app/page-words.ts';
import { plainNumber } from '../app/screen-units.ts';
import { fieldKey, fieldOverlay } from '../charts/field-chart.ts';
import { type Frame, type Scale, type TimeSpan, timeScale } from '../charts/frame.ts';
import { heatChart } from '../charts/heat-chart.ts';
import { fieldGrid, fieldPixels, type Pixels } from '../charts/height-field.ts';
import type { Palette } from '../charts/palette.ts';
import { type TimeChartOptions, temperatureChart } from '../charts/temperature-chart.ts';
import { swatch } from './swatch.ts';

export interface DrawnPlots {
  frame: Frame;
  span: TimeSpan;
  x: Scale;
  heights: Record<'temperature' | 'field' | 'heat', number>;
  temperature: string;
  field: string;
  key: string;
  pixels: Pixels;
  heat: string;
  symbols: Record<'temperature' | 'power' | 'length', string>;
  sentences: Record<'temperature' | 'field' | 'heat', string>;
  coldMarks: boolean;
  usable: boolean;
  streams: (keyof typeof pageWords.streams)[];
}

const margins = { left: 52, top: 8, bottom: 22 };
const keySize = { width: 190, height: 30 };

export function drawPlots(data: DaysData, shown: Shown, width: number, palette: Palette): DrawnPlots {
  const narrow = width < 560;
  const right = 54;
  const heights = narrow
    ? { temperature: 220, field: 170, heat: 210 }
    : { temperature: 260, field: 190, heat: 240 };
  const options = (height: number): TimeChartOptions => ({
    frame: { ...margins, right, width, height },
    span: data.span,
    timeWords: (tick) => tickWords(shown, tick),
    valueWords: plainNumber,
    apart_px: 52,
  });
  const { frame } = options(heights.field);
  const columns = Math.max(1, frame.width - frame.left - frame.right);
  const grid = fieldGrid(data.field, columns, frame.height - frame.top - frame.bottom);
  return {
    frame,
    span: data.span,
    x: timeScale(frame, data.span),
    heights,
    temperature: temperatureChart(data.temperature, options(heights.temperature)),
    field: fieldOverlay({ grid, depth: data.field.depth, usable: data.usable }, options(heights.field)),
    key: fieldKey(data.fieldScale, palette, { ...keySize, words: data.units.temperature.text }),
    pixels: fieldPixels(grid, data.fieldScale, palette),
    heat: heatChart(data.heat, options(heights.heat)),
    symbols: {
      temperature: data.units.temperature.symbol,
      power: data.units.power.symbol,
      length: data.units.length.symbol,
    },
    sentences: {
      temperature: chartSentence.temperature(data),
      field: chartSentence.field(data),
      heat: chartSentence.heat(data),
    },
    coldMarks: data.temperature.cold.length > 0,
    usable: data.usable !== null,
    streams: data.heat.streams.map(({ key }) => key as keyof typeof pageWords.streams),
  };
}

export function plotsView(drawn: DrawnPlots, time_s: number): TemplateResult {
  const { frame, heights, symbols, sentences } = drawn;
  const at = drawn.x(time_s);
  return html`
    ${weaves} ${plot(
      drawn,
      at,
      heights.temperature,
      drawn.temperature,
      sentences.temperature,
      html`
      ${caption(pageWords.temperatures, symbols.temperature)}
      ${drawn.coldMarks ? html`<span class="key">${coldSwatch()}${pageWords.ranCold}</span>` : nothing}
    `,
    )}
    ${plot(
      drawn,
      at,
      heights.field,
      drawn.field,
      sentences.field,
      html`
        ${caption(pageWords.byHeight, symbols.length)}
        <span class="key"
          ><svg class="field-key" width=${keySize.width} height=${keySize.height} aria-hidden="true">
            ${unsafeSVG(drawn.key)}
          </svg></span
        >
        ${drawn.usable ? html`<span class="key">${pageWords.warmEnough}</span>` : nothing}
      `,
      html`<canvas
        aria-hidden="true"
        style="left:${frame.left}px;top:${frame.top}px;width:${frame.width - frame.left - frame.right}px;height:${frame.height - frame.top - frame.bottom}px"
      ></canvas>`,
    )}
    ${plot(
      drawn,
      at,
      heights.heat,
      drawn.heat,
      sentences.heat,
      html`
      ${caption(pageWords.heat, symbols.power)}
      ${drawn.streams.map(
        (key) => html`<span class="key">${swatch(`heat ${key}`)}${pageWords.streams[key]}</span>`,
      )}
    `,
    )}
  `;
}

function plot(
  { frame }: DrawnPlots,
  cursor: number,
  height: number,
  drawing: string,
  sentence: string,
  title: TemplateResult,
  below: TemplateResult | typeof nothing = nothing,
): TemplateResult {
  return html`<figure class="plot">
    <figcaption>${title}</figcaption>
    <div class="stage">
      ${below}
      <svg width=${frame.width} height=${height} role="img" aria-label=${sentence}>
        ${unsafeSVG(drawing)}
        ${svg`<path class="cursor-line" d="M${cursor.toFixed(1)},${frame.top}V${height - frame.bottom}" />`}
      </svg>
    </div>
  </figure>`;
}

function caption(words: string, symbol: string): TemplateResult {
  return html`<span class="title">${words}, ${symbol}</span>`;
}

function coldSwatch(): TemplateResult {
  return html`<svg class="swatch" width="22" height="12" aria-hidden="true">
    <g class="cold-marks"><rect x="2" y="1" width="3" height="10" /><rect x="9" y="1" width="8" height="10" /></g>
  </svg>`;
}

/** Patterns that tell areas apart without their colour: dots for the sun, hatching for losses. */
const weaves = html`<svg class="unseen" width="0" height="0" aria-hidden="true">
  <pattern id="weave-sun" width="7" height="7" patternUnits="userSpaceOnUse">
    <rect class="weave-sun" width="7" height="7" />
    <circle class="weave-sun-mark" cx="3.5" cy="3.5" r="1" />
  </pattern>
  <pattern id="weave-losses" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
    <rect class="weave-losses" width="5" height="5" />
    <path class="weave-losses-mark" d="M0,0V5" />
  </pattern>
</svg>`;
