/** Reads a time of day: `6:30`, `6:30 pm`, `18:30`, `7 am`, `noon`, `24:00`. */
import { type Reading, refuse } from './reading.ts';

const pattern = /^(\d{1,2})(?::(\d{2})(?::(\d{2}))?)? ?(am|pm|a\.m\.|p\.m\.)?$/i;

/** Seconds after midnight; `24:00` is the end of the day. `text` is tidied, `raw` as it was written. */
export function readClock(text: string, raw: string): Reading {
  if (/^(?:12 )?noon$/i.test(text)) return accept(12 * 3600);
  if (/^(?:12 )?midnight$/i.test(text))
    return refuse('clock', raw, 'write "0:00" for the start of the day or "24:00" for its end');
  const found = pattern.exec(text);
  if (!found) return refuse('clock', raw, 'write hours and minutes with a colon between');
  const [hours, minutes, seconds] = [found[1], found[2] ?? 0, found[3] ?? 0].map(Number);
  const half = found[4]?.[0].toLowerCase();
  if (half === undefined && found[2] === undefined)
    return refuse('clock', raw, `write "${hours}:00", "${hours} am" or "${hours} pm"`);
  if (minutes > 59 || seconds > 59) return refuse('clock', raw, 'minutes and seconds run from 00 to 59');
  if (half !== undefined) {
    if (hours < 1 || hours > 12) return refuse('clock', raw, 'hours with am or pm run from 1 to 12');
    return accept(((hours % 12) + (half === 'p' ? 12 : 0)) * 3600 + minutes * 60 + seconds);
  }
  const value = hours * 3600 + minutes * 60 + seconds;
  return value <= 86_400 ? accept(value) : refuse('clock', raw, 'hours run from 0:00 to 24:00');
}

/** `18:30`, or `18:30:05` where there are seconds. */
export function clockText(value_s: number): string {
  const whole = Math.round(value_s);
  const two = (part: number) => String(part).padStart(2, '0');
  const seconds = whole % 60;
  const text = `${Math.floor(whole / 3600)}:${two(Math.floor(whole / 60) % 60)}`;
  return seconds === 0 ? text : `${text}:${two(seconds)}`;
}

function accept(value: number): Reading {
  return { ok: true, value, unit: '', echo: clockText(value) };
}
