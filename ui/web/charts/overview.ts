/** The whole run in a strip: how far the store's top ranged in every pixel, and where water ran cold. */
import { type Frame, plotWidth, type TimeSpan, timeScale, upwardScale } from './frame.ts';
import { marksInView } from './lines-chart.ts';
import { px, tag } from './svg.ts';
import { extent, groupsOf, groupTime, stepFor } from './thin.ts';

export interface OverviewData {
  time_s: ArrayLike<number>;
  values: ArrayLike<number>;
  cold: TimeSpan[];
}

export function overview({ time_s, values, cold }: OverviewData, frame: Frame, span: TimeSpan): string {
  const [low, high] = extent(values) ?? [0, 1];
  const x = timeScale(frame, span);
  const y = upwardScale(frame, low - 1, high + 1);
  const step = stepFor(time_s, span, plotWidth(frame));
  const { low: least, high: most } = groupsOf(values, step);
  const points = Array.from(most, (_, group) => px(x(groupTime(time_s, group, step))));
  const upper = points.map((at, i) => `${at},${px(y(most[i]) - 0.5)}`);
  const lower = points.map((at, i) => `${at},${px(y(least[i]) + 0.5)}`).reverse();
  const marks = marksInView(cold, frame, span).map(([left, width]) =>
    tag('rect', { x: left, y: frame.height - frame.bottom - 5, width, height: 5 }),
  );
  return (
    tag('path', { class: 'reach', d: points.length > 0 ? `M${[...upper, ...lower].join('L')}Z` : '' }) +
    tag('g', { class: 'cold-marks' }, ...marks)
  );
}
