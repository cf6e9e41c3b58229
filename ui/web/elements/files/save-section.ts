/** The section, to be saved: drawn anew in light colours, with its legend below and the water's heights as numbers. */
import { chartWords, sectionWords } from '../../../words/index.ts';
import { headOf } from '../../app/files/csv.ts';
import { fileStem } from '../../app/files/file-names.ts';
import { screenUnits } from '../../app/screen-units.ts';
import { asMarkup } from '../../app/trusted.ts';
import { lightPalette } from '../../charts/palette.ts';
import { sectionDrawing } from '../../charts/section/section-drawing.ts';
import { scaleOf, type TankfulSection } from '../section/tankful-section.ts';
import { type Savable, saved_px } from './savable.ts';
import { inDaylight, styledCopy } from './styled-copy.ts';

const size = { width: saved_px, height: 720 };

export function savableSection(section: TankfulSection): Savable | null {
  const { facts, layer_C, level_m, units, ghost, scale, moment, scenario } = section;
  if (!facts) return null;
  const { temperature, length } = screenUnits(units);
  const depth_m = level_m ?? facts.store.water_depth_m;
  const layers = Array.from(layer_C);
  return {
    stem: fileStem(String(scenario.name ?? ''), sectionWords.title),
    title: sectionWords.title,
    about: [scenario.name, moment && `${sectionWords.asAt} ${moment}`].filter(Boolean).join(', '),
    sheets: [
      {
        words: chartWords.numbers,
        // From the surface down, as it is drawn.
        sheet: () => ({
          head: [
            headOf(chartWords.layer, ''),
            headOf(chartWords.from, length.symbol),
            headOf(chartWords.to, length.symbol),
            headOf(chartWords.water, temperature.symbol),
          ],
          rows: layers
            .map((value, k) => [
              k + 1,
              length.of((k / layers.length) * depth_m),
              length.of(((k + 1) / layers.length) * depth_m),
              temperature.of(value),
            ])
            .reverse(),
        }),
      },
    ],
    picture: () => {
      const { sheets, frame, legend } = sectionDrawing(facts, {
        ...size,
        layer_C,
        level_m,
        units,
        ghost,
        scale: scale ?? scaleOf(layer_C),
        palette: lightPalette,
      });
      return inDaylight((room) => {
        const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
        svg.setAttribute('class', 'section-drawing');
        svg.setAttribute('width', String(size.width));
        svg.setAttribute('height', String(frame.height));
        for (const sheet of sheets) {
          const part = document.createElementNS('http://www.w3.org/2000/svg', 'g');
          part.innerHTML = asMarkup(sheet);
          svg.append(part);
        }
        room.append(svg);
        const notes = legend.map(({ mark, title, text }) => `${mark && `${mark}  `}${title}: ${text}`);
        return { drawing: styledCopy(svg), width: size.width, height: frame.height, keys: [], notes };
      });
    },
  };
}
