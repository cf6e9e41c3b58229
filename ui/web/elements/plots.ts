/** The three charts of the Days panel: drawn once for a result and a width, then only the cursor moves. */
import { html, nothing, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import type { DaysData } from '../app/days-data.ts';
import type { Shown } from '../app/page-state.ts';
import { chartSentence, pageWords, tickWords } from '../app/page-words.ts';
import { plainNumber } from '../app/screen-units.ts';
import { fieldKey, fieldOverlay } from '../charts/field-chart.ts';
import { type Frame, type Scale, timeScale } from '../charts/frame.ts';
import { heatChart } from '../charts/heat-chart.ts';
import { fieldGrid, fieldPixels, type Pixels } from '../charts/height-field.ts';
import type { Palette } from '../charts/palette.ts';
import { showsBands, type TimeChartOptions, temperatureChart } from '../charts/temperature-chart.ts';
import { swatch } from './swatch.ts';

interface DrawnPlot {
  title: string;
  height: number;
  drawing: string;
  /** The chart in words, for those who do not see it. */
  sentence: string;
}

export interface DrawnPlots {
  data: DaysData;
  /** Of the field; the others differ only in height. */
  frame: Frame;
  x: Scale;
  temperature: DrawnPlot;
  field: DrawnPlot;
  fieldKey: string;
  pixels: Pixels;
  heat: DrawnPlot;
}

/** Panels narrower than this, as on a phone, get smaller charts. */
const narrow_px = 560;
const keySize = { width: 190, height: 30 };

export function drawPlots(data: DaysData, shown: Shown, width: number, palette: Palette): DrawnPlots {
  const narrow = width < narrow_px;
  const options = (height: number): TimeChartOptions => ({
    frame: { left: 54, right: narrow ? 46 : 54, top: 8, bottom: 22, width, height },
    span: data.span,
    timeWords: (tick) => tickWords(shown, tick),
    valueWords: (value) => plainNumber(value),
    apart_px: 52,
  });
  const temperature = options(narrow ? 220 : 260);
  const field = options(narrow ? 170 : 190);
  const heat = options(narrow ? 210 : 240);
  const { frame } = field;
  const grid = fieldGrid(data.field, Math.max(1, plotWidth(frame)), plotHeight(frame));
  const plot = (
    words: string,
    symbol: string,
    { frame: { height } }: TimeChartOptions,
    drawing: string,
    sentence: string,
  ): DrawnPlot => ({ title: `${words}, ${symbol}`, height, drawing, sentence });
  const { units } = data;
  return {
    data,
    frame,
    x: timeScale(frame, data.span),
    temperature: plot(
      pageWords.temperatures,
      units.temperature.symbol,
      temperature,
      temperatureChart(data.temperature, temperature),
      chartSentence.temperature(data),
    ),
    field: plot(
      pageWords.byHeight,
      units.length.symbol,
      field,
      fieldOverlay({ grid, depth: data.field.depth, usable: data.usable }, field),
      chartSentence.field(data),
    ),
    fieldKey: fieldKey(data.fieldScale, palette, { ...keySize, words: units.temperature.text }),
    pixels: fieldPixels(grid, data.fieldScale, palette),
    heat: plot(
      pageWords.heat,
      units.power.symbol,
      heat,
      heatChart(data.heat, heat),
      chartSentence.heat(data),
    ),
  };
}

export function plotsView(drawn: DrawnPlots, time_s: number): TemplateResult {
  const { data, frame } = drawn;
  const at = drawn.x(time_s);
  const wanted = data.usable === null ? '' : data.units.temperature.text(data.usable);
  return html`
    ${weaves}
    ${figure(drawn.temperature, frame, at, [
      showsBands(frame, data.span) ? key(nothing, pageWords.bands) : nothing,
      wanted ? key(swatch('line reference'), `${pageWords.hottestWanted} ${wanted}`) : nothing,
      data.temperature.cold.length > 0 ? key(coldSwatch, pageWords.ranCold) : nothing,
    ])}
    ${figure(
      drawn.field,
      frame,
      at,
      [
        key(
          html`<svg class="field-key" width=${keySize.width} height=${keySize.height} aria-hidden="true">
            ${unsafeSVG(drawn.fieldKey)}
          </svg>`,
          '',
        ),
        wanted ? key(swatch('line contour'), `${pageWords.warmEnough} ${wanted}`) : nothing,
      ],
      html`<canvas
        aria-hidden="true"
        style="left:${frame.left}px;top:${frame.top}px;width:${plotWidth(frame)}px;height:${plotHeight(frame)}px"
      ></canvas>`,
    )}
    ${figure(
      drawn.heat,
      frame,
      at,
      data.heat.streams.map((stream) =>
        key(swatch(`heat ${stream.key}`), pageWords.streams[stream.key as keyof typeof pageWords.streams]),
      ),
    )}
  `;
}

function figure(
  { title, height, drawing, sentence }: DrawnPlot,
  frame: Frame,
  cursor: number,
  keys: (TemplateResult | typeof nothing)[],
  below: TemplateResult | typeof nothing = nothing,
): TemplateResult {
  return html`<figure class="plot">
    <figcaption><span class="title">${title}</span>${keys}</figcaption>
    <div class="stage">
      ${below}
      <svg width=${frame.width} height=${height} role="img" aria-label=${sentence}>
        ${unsafeSVG(drawing)}
      </svg>
      <div
        class="cursor-line"
        style="top:${frame.top}px;bottom:${frame.bottom}px;transform:translateX(${cursor.toFixed(1)}px)"
      ></div>
    </div>
  </figure>`;
}

function key(drawn: TemplateResult | typeof nothing, words: string): TemplateResult {
  return html`<span class="key">${drawn}${words}</span>`;
}

function plotWidth({ width, left, right }: Frame): number {
  return width - left - right;
}

function plotHeight({ height, top, bottom }: Frame): number {
  return height - top - bottom;
}

const coldSwatch = html`<svg class="swatch" width="22" height="12" aria-hidden="true">
  <g class="cold-marks">
    <rect x="2" y="1" width="3" height="10" />
    <rect x="9" y="1" width="8" height="10" />
  </g>
</svg>`;

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
