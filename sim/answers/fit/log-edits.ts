/** The run a log is held against: its days, its start, its room, and nothing drawn or fired in a cool-down. */
import { cosine, sine } from '../../numerics/alike.ts';
import type { PlantDescription } from '../../parts/description.ts';
import type { Edit } from '../edit.ts';
import { inverse } from './least-squares.ts';
import type { Log } from './read-log.ts';

const DAY = 86_400;
/** A room's daily swing shows in a log of most of a day. */
const SWING_FROM_S = 0.8 * DAY;

export function celsius(value: number): string {
  return `${Number(value.toFixed(4))} C`;
}

/** Edits that are the same in every trial. `coolDown`: nothing is drawn and the engine stands. */
export function logEdits(log: Log, plant: PlantDescription, coolDown: boolean): Edit[] {
  const still: Edit[] = [
    { path: 'taps', value: undefined },
    ...(plant.engine ? [{ path: 'engine.runs', value: { kind: 'timetable', spans: [] } }] : []),
  ];
  // An outlet changes within seconds of a tap's opening.
  const outlet = log.probes.some(({ place }) => place.kind === 'outlet');
  return [
    ...(log.from === null
      ? []
      : [
          { path: 'run.from', value: log.from },
          { path: 'run.first_weekday', value: undefined },
        ]),
    { path: 'run.days', value: log.days },
    { path: 'run.interval', value: outlet ? '15 s' : '5 min' },
    ...(log.room.length > 0 ? [{ path: 'store.stands', value: roomOf(log.room) }] : []),
    ...(coolDown ? still : []),
  ];
}

/**
 * A room from its readings: their mean; over most of a day the sine of a day that lies nearest to them,
 * T = a + b cos w t + c sin w t by least squares, whose swing is 2 sqrt(b^2 + c^2).
 */
export function roomOf(readings: Log['room']): Record<string, string> {
  const n = readings.length;
  const mean = readings.reduce((sum, { value_C }) => sum + value_C, 0) / n;
  const span_s = n > 0 ? readings[n - 1].time_s - readings[0].time_s : 0;
  if (span_s < SWING_FROM_S || n < 6) return { where: 'room', temperature: celsius(mean), swing: '0 K' };
  const rows = readings.map(({ time_s, value_C }) => {
    const angle = (2 * Math.PI * time_s) / DAY;
    return { x: [1, cosine(angle), sine(angle)], value_C };
  });
  const sum = (f: (row: (typeof rows)[number]) => number) => rows.reduce((all, row) => all + f(row), 0);
  const matrix = [0, 1, 2].map((i) =>
    [0, 1, 2].map((k) => sum(({ x }) => x[i] * x[k]) + (i === k ? 1e-6 : 0)),
  );
  const right = [0, 1, 2].map((i) => sum(({ x, value_C }) => x[i] * value_C));
  const [a, b, c] = inverse(matrix).map((row) => row.reduce((all, x, k) => all + x * right[k], 0));
  const warmest_s = ((Math.atan2(c, b) / (2 * Math.PI)) * DAY + DAY) % DAY;
  const clock = `${Math.floor(warmest_s / 3600)}:${String(Math.floor((warmest_s % 3600) / 60)).padStart(2, '0')}`;
  return {
    where: 'room',
    temperature: celsius(a),
    swing: `${(2 * Math.hypot(b, c)).toFixed(3)} K`,
    warmest: clock,
  };
}
