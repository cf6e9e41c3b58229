/**
 * The panels of Days, drawn for a window and a width; then only the cursor moves over them. Drawings are put in as
 * they are: as templates they would be read twice, at every move of a hand.
 */
import { html, nothing, type TemplateResult } from 'lit';
import { daysWords, quantityText, type Units } from '../../words/index.ts';
import type { DaysData, DaysShown } from '../app/days-data.ts';
import { type PanelKey, panelsOf } from '../app/days-panels.ts';
import { panelSentence } from '../app/days-sentences.ts';
import { tickWords } from '../app/page-words.ts';
import { plainNumber, type ScreenUnit } from '../app/screen-units.ts';
import { fieldKey, fieldOverlay } from '../charts/field-chart.ts';
import { type ChartOptions, type Frame, plotHeight, plotWidth, type TimeSpan } from '../charts/frame.ts';
import { heatChart, heatStep } from '../charts/heat-chart.ts';
import { fieldGrid, fieldPixels, type Pixels } from '../charts/height-field.ts';
import { type LinesData, linesChart, showsBands } from '../charts/lines-chart.ts';
import type { Palette } from '../charts/palette.ts';
import { row_px, rowsChart } from '../charts/rows-chart.ts';
import { drawn } from './drawn.ts';
import { saveButton } from './files/file-buttons.ts';
import { swatch } from './swatch.ts';

/** What the panels are drawn from, beside the data. */
export interface PlotsOf {
  shown: DaysShown;
  units: Units;
  window: TimeSpan;
  width: number;
  palette: Palette;
  /** Line, stream, row or height that was chosen in a panel. */
  chosen: Partial<Record<PanelKey, string>>;
  /** Name of the pinned design. */
  pinned: string | null;
  /** While a hand moves: what was drawn before stays where nobody sees it. */
  unseen?: { keys: ReadonlySet<PanelKey>; before: DrawnPlots };
}

type Key = TemplateResult | typeof nothing;

interface DrawnPanel {
  title: string;
  height: number;
  drawing: string;
  /** The panel in words, for those who do not see it. */
  sentence: string;
  keys: Key[];
}

export interface DrawnPlots {
  /** Of the field; the others differ only in height. */
  frame: Frame;
  panels: Partial<Record<PanelKey, DrawnPanel>>;
  /** Of the field; null where there is none. */
  pixels: Pixels | null;
}

/** Panels narrower than this, as on a phone, get smaller charts. */
const narrow_px = 560;
const keySize = { width: 190, height: 30 };
/** The canvas is stretched over the panel: more rows than this no eye tells apart. */
const fieldRows = 80;

export function drawPlots(data: DaysData, of: PlotsOf): DrawnPlots {
  const { shown, window, width, chosen } = of;
  const narrow = width < narrow_px;
  const { temperature, length, power, flow, irradiance } = data.units;
  const options = (height: number, { of: scale }: ScreenUnit): ChartOptions => ({
    frame: { left: 54, right: 54, top: 8, bottom: 22, width, height },
    span: window,
    timeWords: (tick) => tickWords(shown, tick),
    valueWords: (value) => plainNumber(value),
    apart_px: 52,
    of: scale,
  });
  const there = panelsOf(data, window);
  const panels: DrawnPlots['panels'] = {};
  const kept = (key: PanelKey) => (of.unseen?.keys.has(key) ? of.unseen.before.panels[key] : undefined);
  const add = (
    key: PanelKey,
    unit: ScreenUnit | null,
    chart: ChartOptions,
    drawing: () => string,
    keys: Key[],
  ) => {
    panels[key] = kept(key) ?? {
      title: unit ? `${daysWords.panels[key]}, ${unit.symbol}` : daysWords.panels[key],
      height: chart.frame.height,
      drawing: drawing(),
      // A sentence about a moving hand's picture would be old before it was heard.
      sentence: of.unseen?.before.panels[key]?.sentence ?? panelSentence(data, key),
      keys:
        of.pinned === null || key === 'ran'
          ? keys
          : [...keys, keyOf(swatch('line ghost'), daysWords.pinned(of.pinned))],
    };
  };
  const lines = (
    key: PanelKey,
    lines: LinesData | null,
    unit: ScreenUnit,
    height: number,
    more: Key[] = [],
  ) => {
    if (!lines || !there.includes(key)) return;
    const chart = options(height, unit);
    const named = lines.named || lines.lines.length < 2;
    const names = named ? [] : lines.lines.map((line) => keyOf(swatch(`line ${line.key}`), line.label));
    const cold = lines.cold.length > 0 ? keyOf(coldSwatch, daysWords.ranCold) : nothing;
    add(key, unit, chart, () => linesChart({ ...lines, chosen: chosen[key] }, chart), [
      ...names,
      ...more,
      cold,
    ]);
  };
  const wanted = data.usable_C === null ? '' : temperature.text(temperature.of(data.usable_C));
  const field = options(narrow ? 160 : 180, length);
  const { frame } = field;
  lines('temperatures', data.temperatures, temperature, narrow ? 210 : 240, [
    showsBands(frame, window) ? keyOf(nothing, daysWords.bands) : nothing,
    wanted ? keyOf(swatch('line reference'), `${daysWords.hottestWanted} ${wanted}`) : nothing,
  ]);
  lines('tap', data.tap, temperature, narrow ? 180 : 200);
  const gridOf = (from: DaysData['field']) => fieldGrid(from, window, plotWidth(frame), fieldRows);
  let pixels = of.unseen?.keys.has('field') ? of.unseen.before.pixels : null;
  const drawField = () => {
    const grid = gridOf(data.field);
    pixels = fieldPixels(grid, data.fieldScale, of.palette);
    const overlay = {
      grid,
      depth: length.of(data.field.depth),
      usable: data.usable_C,
      ghost: data.ghostField ? gridOf(data.ghostField) : undefined,
      chosen: chosen.field === undefined ? undefined : length.of(data.field.height[Number(chosen.field)]),
    };
    return fieldOverlay(overlay, field);
  };
  const words = (value_C: number) => temperature.text(temperature.of(value_C));
  const colours = fieldKey(data.fieldScale, of.palette, { ...keySize, words });
  add('field', length, field, drawField, [
    keyOf(
      html`<svg
        class="field-key"
        width=${keySize.width}
        height=${keySize.height}
        aria-hidden="true"
        ${drawn(colours)}
      ></svg>`,
      '',
    ),
    wanted ? keyOf(swatch('line contour'), `${daysWords.warmEnough} ${wanted}`) : nothing,
  ]);
  if (there.includes('heat')) {
    const chart = options(narrow ? 200 : 220, power);
    const keys = data.heat.streams.map(({ key }) =>
      keyOf(swatch(`heat ${key}`), daysWords.streams[key as keyof typeof daysWords.streams]),
    );
    const step = heatStep(data.heat, chart);
    const grouped = quantityText(step * data.heat.interval_s, 'time', of.units);
    const peaks = step > 1 ? keyOf(swatch('heat peak'), daysWords.heatGroups(grouped)) : nothing;
    add('heat', power, chart, () => heatChart({ ...data.heat, chosen: chosen.heat }, chart), [
      ...keys,
      peaks,
    ]);
  }
  if (there.includes('ran')) {
    const chart = options(data.rows.length * row_px + 30, length);
    add('ran', null, chart, () => rowsChart(data.rows, chart, chosen.ran), []);
  }
  lines('water', data.water, flow, 120);
  lines('sun', data.sun, irradiance, 110);
  return { frame, panels, pixels };
}

/** Every panel has its place, also while it is not there: a chart that is focused is never another one. */
export function plotsView({ frame, panels }: DrawnPlots, cursor_px: number): TemplateResult {
  return html`${weaves}
  ${(Object.keys(daysWords.panels) as PanelKey[]).map((key) => {
    const panel = panels[key];
    return panel ? figure(key, panel, frame, cursor_px) : nothing;
  })}`;
}

function figure(key: PanelKey, panel: DrawnPanel, frame: Frame, cursor_px: number): TemplateResult {
  const { title, height, drawing, sentence, keys } = panel;
  const inView = cursor_px >= frame.left && cursor_px <= frame.width - frame.right;
  return html`<figure class="plot">
    <figcaption><span class="title">${title}</span>${keys}${saveButton(key, title)}</figcaption>
    <div
      class="stage"
      data-panel=${key}
      tabindex="0"
      role="application"
      aria-roledescription=${daysWords.chart}
      aria-label=${title}
      aria-describedby="days-help"
    >
      ${
        key === 'field'
          ? html`<canvas
            aria-hidden="true"
            .style=${`left:${frame.left}px;top:${frame.top}px;width:${plotWidth(frame)}px;height:${plotHeight({ ...frame, height })}px`}
          ></canvas>`
          : nothing
      }
      <svg width=${frame.width} height=${height} role="img" aria-label=${sentence} ${drawn(drawing)}></svg>
      <div
        class="cursor-line"
        ?hidden=${!inView}
        .style=${`top:${frame.top}px;bottom:${frame.bottom}px;transform:translateX(${cursor_px.toFixed(1)}px)`}
      ></div>
    </div>
  </figure>`;
}

function keyOf(drawn: Key, words: string): TemplateResult {
  return html`<span class="key">${drawn}${words}</span>`;
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
