/** Turns showers, single draws and published patterns into the draws of a day. */
import type { Draw } from '../parts/description.ts';
import { waterDensity, waterHeatCapacity } from '../physics/water.ts';
import { EU_PROFILES, type EuRow, type PatternName, US_PATTERNS, type UsRow } from './patterns.ts';

const DAY_S = 86_400;
const EVERY_DAY = [0, 1, 2, 3, 4, 5, 6];
const GALLON_M3 = 3.785411784e-3;
const LITRE_A_MINUTE = 1e-3 / 60;

/** Delivery temperature of the US patterns: 125 F [C] (10 CFR 430 Subpart B Appendix E, from memory). */
const US_WANTED_C = (125 - 32) / 1.8;
/** Cold water the EU profiles count from [C] (Regulation (EU) 812/2013, from memory). */
const EU_COLD_C = 10;
/** Below this nobody calls water warm: rows that count from 25 C still want this [C]. */
const EU_LEAST_C = 40;

/** The draws of a published pattern; US patterns begin at `starts_s` after midnight and pass midnight whole. */
export function patternDraws(name: PatternName, starts_s: number): Draw[] {
  if (name in US_PATTERNS) {
    return US_PATTERNS[name as keyof typeof US_PATTERNS].map((row) => usDraw(name, row, starts_s));
  }
  return EU_PROFILES[name as keyof typeof EU_PROFILES].map((row) => euDraw(name, row));
}

function usDraw(name: string, [since, gal, gpm]: UsRow, starts_s: number): Draw {
  const flow_m3_s = (gpm * GALLON_M3) / 60;
  return published(
    name,
    (starts_s + clock(since)) % DAY_S,
    (gal * GALLON_M3) / flow_m3_s,
    flow_m3_s,
    US_WANTED_C,
  );
}

/**
 * A row of an EU profile as a draw: its useful energy Q is met by water at the wanted temperature drawn at the
 * row's flow f from cold water of 10 C: t = Q / (rho cp f (wanted - 10)), density at the wanted temperature,
 * specific heat between. Wanted is the largest of the row's two temperatures and 40 C.
 */
export function euDraw(name: string, [at, kWh, L_min, from_C, peak_C]: EuRow): Draw {
  const wanted_C = Math.max(from_C, peak_C ?? 0, EU_LEAST_C);
  const flow_m3_s = L_min * LITRE_A_MINUTE;
  const heat_J_m3 =
    waterDensity(wanted_C) * waterHeatCapacity((wanted_C + EU_COLD_C) / 2) * (wanted_C - EU_COLD_C);
  return published(name, clock(at), (kWh * 3.6e6) / (heat_J_m3 * flow_m3_s), flow_m3_s, wanted_C);
}

function published(
  name: string,
  at_s: number,
  duration_s: number,
  flow_m3_s: number,
  wanted_C: number,
): Draw {
  return {
    name,
    days: EVERY_DAY,
    at_s,
    duration_s,
    flow_m3_s,
    wanted_C,
    outlet: { kind: 'tap' },
    shower: false,
  };
}

/** Seconds of "h:mm". */
function clock(text: string): number {
  const [hours, minutes] = text.split(':').map(Number);
  return hours * 3600 + minutes * 60;
}

export interface Showers {
  name: string;
  at_s: number;
  days: number[];
  people: number;
  gap_s: number;
  lasts_s: number;
  flow_m3_s: number;
  wanted_C: number;
  rated_Pa: number;
}

/** One shower after another, the pause between; those that would begin after midnight begin on the next day. */
export function showerDraws(showers: Showers): Draw[] {
  const { name, people, gap_s, lasts_s, flow_m3_s, wanted_C, rated_Pa } = showers;
  return Array.from({ length: people }, (_, i) => {
    const start = showers.at_s + i * (lasts_s + gap_s);
    const days = showers.days.map((day) => (day + Math.floor(start / DAY_S)) % 7).sort((a, b) => a - b);
    return {
      name: people > 1 ? `${name} ${i + 1}` : name,
      days,
      at_s: start % DAY_S,
      duration_s: lasts_s,
      flow_m3_s,
      wanted_C,
      outlet: { kind: 'head', rated_Pa },
      shower: true,
    };
  });
}
