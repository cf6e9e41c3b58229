/** A panel of Days, to be saved: drawn anew in light colours, wide enough for any screen. */
import { render } from 'lit';
import { chartWords, daysWords } from '../../../words/index.ts';
import type { PanelKey } from '../../app/days-panels.ts';
import { daysSheet } from '../../app/files/days-sheets.ts';
import { fileStem } from '../../app/files/file-names.ts';
import { momentTitle } from '../../app/moments.ts';
import { plotHeight, plotWidth } from '../../charts/frame.ts';
import { lightPalette } from '../../charts/palette.ts';
import { drawPlots, plotsView } from '../plots.ts';
import type { TankfulDays } from '../tankful-days.ts';
import { type Savable, saved_px, sizeOf } from './savable.ts';
import type { Picture } from './standalone.ts';
import { inDaylight, styledCopy } from './styled-copy.ts';

/** `title` has the unit of the axis with it. */
export function savableDays(days: TankfulDays, panel: PanelKey, title: string): Savable {
  const { shown, window, data } = days;
  const sheetOf = { data, shown, window };
  const [from, to] = [window.from_s, window.to_s].map((time_s) => momentTitle(shown, time_s));
  return {
    stem: fileStem(shown.result.name, daysWords.panels[panel]),
    title,
    about: `${shown.result.name}, ${from} – ${to}`,
    sheets: [
      { words: chartWords.csv, sheet: () => daysSheet(sheetOf, panel) },
      // Spells are not sampled.
      ...(panel === 'ran'
        ? []
        : [{ words: chartWords.samples, sheet: () => daysSheet(sheetOf, panel, true) }]),
    ],
    picture: () => pictureOfPanel(days, panel),
  };
}

function pictureOfPanel(
  { data, shown, units, window, pinned }: TankfulDays,
  key: PanelKey,
): Promise<Picture> {
  const drawn = drawPlots(data, {
    shown,
    units,
    window,
    width: saved_px,
    palette: lightPalette,
    chosen: {},
    pinned: pinned?.name ?? null,
  });
  return inDaylight((room) => {
    const plots = document.createElement('div');
    plots.className = 'plots';
    room.append(plots);
    render(plotsView(drawn, -1), plots);
    const stage = plots.querySelector(`.stage[data-panel="${key}"]`);
    const svg = stage?.querySelector('svg');
    if (!stage || !svg) throw new Error(daysWords.panels[key]);
    const { frame, pixels } = drawn;
    const size = sizeOf(svg);
    const keys = [...(stage.parentElement?.querySelectorAll('.key') ?? [])].map((each) => {
      const swatch = each.querySelector('svg');
      return { swatch: swatch && styledCopy(swatch), words: each.textContent.trim() };
    });
    return {
      drawing: styledCopy(svg),
      ...size,
      // A swatch's own words are drawn in it.
      keys: keys.map(({ swatch, words }) => ({
        swatch,
        words: swatch?.querySelector('text') ? '' : words,
      })),
      notes: [],
      ...(key === 'field' && pixels
        ? {
            under: {
              png: pngOfPixels(pixels),
              x: frame.left,
              y: frame.top,
              width: plotWidth(frame),
              height: plotHeight({ ...frame, height: size.height }),
            },
          }
        : {}),
    };
  });
}

function pngOfPixels({
  width,
  height,
  rgba,
}: {
  width: number;
  height: number;
  rgba: Uint8ClampedArray<ArrayBuffer>;
}) {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  canvas.getContext('2d')?.putImageData(new ImageData(rgba, width, height), 0, 0);
  return canvas.toDataURL('image/png');
}
