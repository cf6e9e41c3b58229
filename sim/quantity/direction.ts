/** Compass words, and the hemispheres of latitude and longitude. */
import { type Reading, refuse } from './reading.ts';

const points = 'N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW'.split(' ');

/** `south`, `SSW`, `south-west`, `20 deg east of south`: angle from north, clockwise; null if it is no compass word. */
export function readCompass(text: string): Reading | null {
  const degrees = compassDegrees(text);
  return degrees === null
    ? null
    : { ok: true, value: (degrees * Math.PI) / 180, unit: '°', echo: `${degrees}°` };
}

function compassDegrees(text: string): number | null {
  const letters = text
    .toLowerCase()
    .replace(/^due /, '')
    .replace(/north/g, 'n')
    .replace(/south/g, 's')
    .replace(/east/g, 'e')
    .replace(/west/g, 'w');
  const index = points.indexOf(letters.replace(/[ -]/g, '').toUpperCase());
  if (index >= 0) return index * 22.5;
  const off = /^(\d+(?:\.\d+)?) ?(?:°|deg(?:rees?)?) ?([ew]) of ([ns])$/.exec(letters);
  if (!off || Number(off[1]) > 90) return null;
  const [from, turn] = [off[3] === 's' ? 180 : 0, (off[2] === 'e') === (off[3] === 'n') ? 1 : -1];
  return (from + turn * Number(off[1]) + 360) % 360;
}

const signs = {
  latitude: { plus: 'N', minus: 'S', most: 90 },
  longitude: { plus: 'E', minus: 'W', most: 180 },
} as const;

/** `44.5 N`, `N 44.5`, `44° 30' N`, `-73 deg`. `readArc` reads what is left when the letter is taken away. */
export function readPlace(
  key: 'latitude' | 'longitude',
  text: string,
  raw: string,
  readArc: (text: string) => Reading,
): Reading {
  const { plus, minus, most } = signs[key];
  const word = '(north|south|east|west|[nsew])';
  const found = new RegExp(`^(.*[^A-Za-z]) ?${word}$|^${word} ?([^A-Za-z].*)$`, 'i').exec(text);
  const letter = (found?.[2] ?? found?.[3])?.[0].toUpperCase();
  const arc = (found?.[1] ?? found?.[4] ?? text).trim();
  if (letter !== undefined && letter !== plus && letter !== minus)
    return refuse(key, raw, `end it with ${plus} or ${minus}`);
  if (letter !== undefined && /^[+-]/.test(arc))
    return refuse(key, raw, `leave out the sign or the ${letter}`);
  // With its letter a bare number can only be degrees.
  const read = readArc(letter !== undefined && /^[\d. ]+$/.test(arc) ? `${arc} deg` : arc);
  if (!read.ok)
    return refuse(key, raw, letter === undefined ? `write degrees and ${plus} or ${minus}` : read.fix);
  const value = letter === minus && read.value !== 0 ? -read.value : read.value;
  const degrees = (value * 180) / Math.PI;
  if (Math.abs(degrees) > most * (1 + 1e-12))
    return refuse(key, raw, `it lies between 0 and ${most} degrees`);
  return { ok: true, value, unit: '°', echo: letter === undefined ? read.echo : `${read.echo} ${letter}` };
}
