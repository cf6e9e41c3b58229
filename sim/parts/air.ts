/** The air a thing stands in, at any second of a run. */
import { cosine } from '../numerics/alike.ts';
import { curveAt, type HourlyCurve, meanPreserving } from '../numerics/interpolation.ts';
import { standardPressure } from '../physics/water.ts';
import type { Fault, HourlyWeather, Surroundings } from './description.ts';
import { withColdSpells } from './faults.ts';

const DAY = 86_400;
const HOURS = 8760;

/** Film on a face in the open: a light wind, radiation included [W/(m2 K)] (common practice, 15-25). */
const OUTDOOR_FILM = 18;
/** Film on an insulated face in a still room [W/(m2 K)] (common practice). */
const ROOM_FILM = 8;
/** Humidity taken for outdoor air over an open lid: cool air at night, drier by day; evaporation hardly minds. */
const OUTDOOR_HUMIDITY = 0.7;

/** Reads the year's weather at seconds since the run's first midnight. */
export class Air {
  readonly pressure_Pa: number;
  readonly #curve: HourlyCurve;
  readonly #firstHour: number;
  #swingAt_s = 0;
  #swingIs = 1;
  readonly #spells: readonly Fault[];

  constructor(weather: HourlyWeather, altitude_m: number, firstDay: number, faults: readonly Fault[] = []) {
    this.#spells = faults.filter(({ kind }) => kind === 'cold spell');
    this.pressure_Pa = standardPressure(altitude_m);
    this.#curve = meanPreserving(weather.air_C, false);
    this.#firstHour = firstDay * 24;
  }

  /** Hour of the weather year at a time of the run. */
  hourAt(t: number): number {
    return (this.#firstHour + Math.floor(t / 3600)) % HOURS;
  }

  /** Outdoor air [C]. */
  outdoors_C(t: number): number {
    const hours = t / 3600;
    const whole = Math.floor(hours);
    const weather_C = curveAt(this.#curve, (this.#firstHour + whole) % HOURS, hours - whole);
    return this.#spells.length === 0 ? weather_C : withColdSpells(this.#spells, t, weather_C);
  }

  /** Air where a thing stands [C]: a room swings as a cosine about its mean. */
  around_C(place: Surroundings, t: number): number {
    if (place.kind === 'outdoors') return this.outdoors_C(t);
    if (place.swing_K === 0) return place.mean_C;
    return place.mean_C + 0.5 * place.swing_K * this.#swing(t - place.warmest_s);
  }

  /** Cosine of the day at a time since its warmest: rooms alike ask for the same one several times over. */
  #swing(since_s: number): number {
    if (since_s !== this.#swingAt_s) {
      this.#swingAt_s = since_s;
      this.#swingIs = cosine((2 * Math.PI * since_s) / DAY);
    }
    return this.#swingIs;
  }

  static film_W_m2K(place: Surroundings): number {
    return place.kind === 'outdoors' ? OUTDOOR_FILM : ROOM_FILM;
  }

  static humidity(place: Surroundings): number {
    return place.kind === 'outdoors' ? OUTDOOR_HUMIDITY : place.relative_humidity;
  }
}
