/** Which column of an owner's log is what: read from its head. */
import type { ProblemList } from '../../parts/weather/problems.ts';
import { quote } from '../../parts/weather/problems.ts';
import { parseQuantity } from '../../quantity/index.ts';
import type { ProbePlace } from './modelled.ts';

export type Degrees = 'C' | 'F';

export interface ProbeColumn {
  index: number;
  /** As its head has it, without the unit. */
  name: string;
  degrees: Degrees | null;
  place: ProbePlace;
}

export interface LogHead {
  /** Columns joined by a blank to make the stamp: one, or date and time. */
  time: number[];
  probes: ProbeColumn[];
  room: { index: number; degrees: Degrees | null } | null;
  ignored: string[];
}

const MOST_PROBES = 8;
const TIME = ['time', 'date', 'date time', 'datetime', 'timestamp', 'clock', 'local time', 'date and time'];
const ROOM = ['room', 'shed', 'room air', 'around', 'ambient'];
const STIRRED = ['store', 'tank', 'mean', 'stirred', 'average'];
const OUTLET = ['outlet', 'coil outlet', 'hot water', 'coil out'];
/** Probes named by place hang at these shares of the water's depth. */
const SHARES: Record<string, number> = {
  top: 0.9,
  upper: 0.75,
  middle: 0.5,
  mid: 0.5,
  lower: 0.25,
  bottom: 0.1,
};

/** Reads a head such as `time,top (F),bottom (F),at 10 in (F),outlet (F),room (F)`. */
export function readLogHead(
  cells: readonly string[],
  depth_m: number,
  where: string,
  problems: ProblemList,
): LogHead {
  const head: LogHead = { time: [], probes: [], room: null, ignored: [] };
  cells.forEach((cell, index) => {
    const { name, unit } = nameAndUnit(cell);
    if (TIME.includes(name)) {
      head.time.push(index);
      return;
    }
    const place = placeOf(name, depth_m);
    const isRoom = ROOM.includes(name);
    if (!place && !isRoom) {
      if (cell !== '') head.ignored.push(cell);
      return;
    }
    if (unit !== '' && unit !== 'C' && unit !== 'F') {
      problems.add(`${where}, column ${index + 1}`, 'degrees, C or F', quote(cell), `write ${name} (F)`);
      return;
    }
    const degrees = unit === '' ? null : unit;
    if (isRoom) head.room = { index, degrees };
    else if (place) head.probes.push({ index, name, degrees, place });
  });
  if (head.time.length === 0)
    problems.add(where, 'a column of time', quote(cells.join(', ')), 'name it time, or date and time');
  if (head.probes.length === 0 || head.probes.length > MOST_PROBES) {
    const named = 'top, middle, bottom, store, outlet, or a height such as at 10 in';
    problems.add(
      where,
      `1 to ${MOST_PROBES} probes`,
      String(head.probes.length),
      `name their columns ${named}`,
    );
  }
  for (const { place, name } of head.probes) {
    if (place.kind === 'height' && place.height_m > depth_m)
      problems.add(
        where,
        `probes under the water, ${depth_m.toFixed(2)} m deep`,
        quote(name),
        'mend the height',
      );
  }
  return head;
}

function placeOf(name: string, depth_m: number): ProbePlace | null {
  if (OUTLET.includes(name)) return { kind: 'outlet' };
  if (STIRRED.includes(name)) return { kind: 'stirred' };
  if (Object.hasOwn(SHARES, name)) return { kind: 'height', height_m: SHARES[name] * depth_m };
  const height = /^(?:at |probe |probe at |height )?(\d+(?:[.,]\d+)? ?(?:in|ft|mm|cm|m))$/.exec(name);
  const read = height ? parseQuantity(height[1].replace(',', '.'), 'length') : null;
  return read?.ok ? { kind: 'height', height_m: read.value } : null;
}

/** `Top_Probe [°F]` -> name `top probe`, unit `F`. */
function nameAndUnit(cell: string): { name: string; unit: string } {
  const [, name = '', unit = ''] = /^([^([]*)(?:[([]([^)\]]*)[)\]]?)?/.exec(cell) ?? [];
  return {
    name: name
      .toLowerCase()
      .replace(/[_\-/]+/g, ' ')
      .replace(/\s+/g, ' ')
      .trim(),
    unit: unit
      .toUpperCase()
      .replace(/°|DEG(REES?)?|\s/g, '')
      .replace('CELSIUS', 'C')
      .replace('FAHRENHEIT', 'F'),
  };
}
