/** Each panel in a sentence, for those who do not see it. */
import { daysWords, spanText } from '../../words/index.ts';
import { extent } from '../charts/thin.ts';
import type { DaysData } from './days-data.ts';
import type { PanelKey } from './days-panels.ts';
import type { ScreenUnit } from './screen-units.ts';

export function panelSentence(data: DaysData, panel: PanelKey): string {
  const { units } = data;
  const reach = (values: ArrayLike<number>, unit: ScreenUnit) => {
    const found = extent(values);
    if (!found) return daysWords.nothingDrawn;
    const [low, high] = found.map((value) => unit.text(unit.of(value)));
    return spanText(low, high);
  };
  const lines = (unit: ScreenUnit) =>
    (panel === 'temperatures' || panel === 'tap' || panel === 'water' || panel === 'sun'
      ? (data[panel]?.lines ?? [])
      : []
    ).map(({ label, values }) => `${label} ${reach(values, unit)}`);
  const parts: Record<PanelKey, () => string[]> = {
    temperatures: () => [...lines(units.temperature), daysWords.spells(data.temperatures.cold.length)],
    tap: () => lines(units.temperature),
    field: () => [reach([data.fieldScale.low, data.fieldScale.high], units.temperature)],
    heat: () =>
      data.heat.streams.map(
        ({ key, values }) =>
          `${daysWords.streams[key as keyof typeof daysWords.streams]} ${reach(values, units.power)}`,
      ),
    ran: () => data.rows.map(({ label, spells }) => daysWords.times(label, spells.length)),
    water: () => lines(units.flow),
    sun: () => lines(units.irradiance),
  };
  return `${daysWords.panels[panel]}: ${parts[panel]().join('; ')}.`;
}
