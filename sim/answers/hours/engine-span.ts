/** An engine that runs once a day for so long: the edits, and what the file's own timetable amounts to. */
import type { Draw, EngineDescription } from '../../parts/description.ts';
import { formatQuantity } from '../../quantity/index.ts';
import type { Edit } from '../edit.ts';

const DAY = 86_400;
/** A draw from here on counts to the evening [s after midnight]. */
const EVENING = 15 * 3600;
/** Where nothing is drawn in the evening, the engine is done by then [s after midnight]. */
const SUPPER = 18 * 3600;

/** The plan by which hours are laid: from the timetable's own start on, or up to the evening's first draw. */
export type Plan = { from_s: number } | { until_s: number };

/** A timetable keeps its start; an engine called for has to be done before the evening's draws. */
export function planOf({ runs }: EngineDescription, draws: readonly Draw[]): Plan {
  if (runs.kind === 'timetable' && runs.spans.length > 0) return { from_s: runs.spans[0].from_s };
  const evening = draws.filter((draw) => draw.at_s >= EVENING);
  const asked = evening.some((draw) => draw.shower) ? evening.filter((draw) => draw.shower) : evening;
  return { until_s: asked.length > 0 ? Math.min(...asked.map((draw) => draw.at_s)) : SUPPER };
}

/** The day's span of `length_s` by a plan, within one day; null for an engine that stands. */
export function spanOf(plan: Plan, length_s: number): { from_s: number; to_s: number } | null {
  if (length_s <= 0) return null;
  const latest = DAY - length_s;
  const from_s = 'from_s' in plan ? plan.from_s : plan.until_s - length_s;
  const kept = Math.max(0, Math.min(latest, from_s));
  return { from_s: kept, to_s: kept + length_s };
}

/** The edits that make the engine run for `length_s` every day by a plan, and only then. */
export function spanEdits(plan: Plan, length_s: number): Edit[] {
  const span = spanOf(plan, length_s);
  const clock = (second: number) => formatQuantity(second, 'clock', 'SI');
  const spans = span ? [{ days: 'every day', from: clock(span.from_s), to: clock(span.to_s) }] : [];
  return [{ path: 'engine.runs', value: { kind: 'timetable', spans } }];
}

/**
 * What the file lets the engine run a day [s], mean of its week: taken as what charging needs. An engine that is
 * called for heat runs for that alone: nothing.
 */
export function chargingTime({ runs }: EngineDescription): number {
  if (runs.kind !== 'timetable') return 0;
  const week = runs.spans.reduce((sum, span) => sum + span.days.length * (span.to_s - span.from_s), 0);
  return week / 7;
}
