/** Random places, weather and runs. */
import {
  dailyExtraterrestrial_J_m2,
  declinationSpencer_rad,
  extraterrestrialNormal_W_m2,
} from '../../../../sim/physics/sun-by-day.ts';
import type { Scenario } from '../../../../sim/scenario/index.ts';
import { type Chance, digits } from './chance.ts';

type Part<K extends keyof Scenario> = NonNullable<Scenario[K]>;

export function randomSite(chance: Chance, latitude: number): Part<'site'> {
  const longitude = chance.between(-170, 170);
  const half = (degrees: number, plus: string, minus: string) =>
    `${digits(Math.abs(degrees))} ${degrees < 0 ? minus : plus}`;
  return {
    latitude: half(latitude, 'N', 'S'),
    ...chance.maybe(0.8, () => ({ longitude: half(longitude, 'E', 'W') })),
    altitude: chance.us
      ? `${digits(chance.between(-100, 13_000))} ft`
      : `${digits(chance.between(-30, 4000))} m`,
  };
}

export function randomWeather(chance: Chance, latitude: number): Part<'weather'> {
  const seed = chance.whole(0, 4_294_967_295);
  if (chance.yes(0.5))
    return { kind: 'by latitude', climate: chance.pick(['cloudy', 'average', 'clear']), seed };
  const mean = chance.between(-5, 25);
  const half = chance.between(2, 18) * (latitude < 0 ? -1 : 1);
  const months = Array.from({ length: 12 }, (_, month) => month);
  const sun = months.map((month) => {
    const day = 30.4 * month + 15;
    const above = dailyExtraterrestrial_J_m2({
      latitude_rad: (latitude * Math.PI) / 180,
      declination_rad: declinationSpencer_rad(day),
      normal_W_m2: extraterrestrialNormal_W_m2(day),
    });
    return (above * chance.between(0.25, 0.6)) / 3.6e6;
  });
  return {
    kind: 'monthly',
    air: months.map((month) =>
      chance.temperature(mean - half * Math.cos((2 * Math.PI * (month - 0.5)) / 12)),
    ),
    sun: sun.map((kWh) => `${digits(kWh)} kWh/m2 per day`),
    ...chance.maybe(0.5, () => ({ swing: months.map(() => chance.difference(chance.between(2, 18))) })),
    ...chance.maybe(0.5, () => ({ humidity: months.map(() => chance.share(0.3, 0.95)) })),
    ...chance.maybe(0.5, () => ({
      wind: months.map(() =>
        chance.us ? `${digits(chance.between(1, 20))} mph` : `${digits(chance.between(0.5, 9))} m/s`,
      ),
    })),
    ...chance.maybe(0.5, () => ({ snow: months.map(() => chance.share(0, 1)) })),
    seed,
  };
}

export function randomRun(chance: Chance): Part<'run'> {
  const bottom = chance.between(2, 75);
  return {
    from: `${chance.pick(['2027-', '2024-', ''])}${String(chance.whole(1, 12)).padStart(2, '0')}-${String(chance.whole(1, 28)).padStart(2, '0')}`,
    days: chance.whole(1, 5),
    interval: `${chance.pick([1, 5, 10, 30])} min`,
    layers: chance.whole(3, 40),
    start: {
      bottom: chance.temperature(bottom),
      ...chance.maybe(0.7, () => ({ top: chance.temperature(chance.between(bottom, 85)) })),
    },
  };
}
