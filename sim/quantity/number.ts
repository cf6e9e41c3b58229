/** Reads the number that a quantity begins with: `2.5`, `3/8`, `1 1/2`, `1-1/2`, `1e3`. */

export interface NumberRead {
  value: number;
  /** What stands behind it. */
  rest: string;
}

/** `complaint` says what is wrong and what to do. */
export type NumberReading = NumberRead | { complaint: string };

/** What to do where there is none. */
export const NO_NUMBER = 'write a number and its unit';

const plain = /^(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?/i;
const fraction = /^(\d+) ?\/ ?(\d+)/;
const mixed = /^(\d+)[- ](\d+) ?\/ ?(\d+)/;

/** A dash between number and unit, as in `50-ft`, is no part of either. */
export function readNumber(text: string): NumberReading {
  const signed = /^([+-]?) ?(.*)$/s.exec(text) as RegExpExecArray;
  const unsigned = readUnsigned(signed[2]);
  if ('complaint' in unsigned) return unsigned;
  // `1.2.3`, `1/2/3`, `10-12`, `10 000`: more than one number.
  if (/^ ?[./]|^ ?-? ?\d/.test(unsigned.rest) && !/^ ?\/ ?[A-Za-z]/.test(unsigned.rest))
    return { complaint: 'write one number, without a space or a sign inside, before the unit' };
  return {
    value: signed[1] === '-' && unsigned.value !== 0 ? -unsigned.value : unsigned.value,
    rest: unsigned.rest.replace(/^ ?-(?=[A-Za-z])/, '').trim(),
  };
}

function readUnsigned(text: string): NumberReading {
  const whole = mixed.exec(text);
  if (whole) {
    const [, base, above, below] = whole.map(Number);
    if (below === 0) return { complaint: 'a fraction over 0 is no number' };
    if (above >= below) return { complaint: `write the fraction below 1, as in ${base} 1/2` };
    return finite(base + above / below, base + above, text.slice(whole[0].length));
  }
  const part = fraction.exec(text);
  if (part) {
    const [above, below] = [Number(part[1]), Number(part[2])];
    if (below === 0) return { complaint: 'a fraction over 0 is no number' };
    // `11/2` may be 1 1/2 that lost its blank.
    if (part[1].length > 1 && above >= below)
      return { complaint: 'write a whole number and a fraction, as in "1 1/2", or a decimal number' };
    return finite(above / below, above, text.slice(part[0].length));
  }
  const number = plain.exec(text);
  if (number)
    return finite(
      Number(number[0]),
      /[1-9]/.test(number[0].split(/e/i)[0]) ? 1 : 0,
      text.slice(number[0].length),
    );
  if (/^(?:nan|inf|∞)/i.test(text)) return { complaint: 'write a number that has an end' };
  return {
    complaint: /\d/.test(text) ? 'write the number first, then its unit' : NO_NUMBER,
  };
}

/** Refuses what no longer fits a number: too large, or something that became nothing. */
function finite(value: number, written: number, rest: string): NumberReading {
  if (!Number.isFinite(value)) return { complaint: 'write a smaller number' };
  if (value === 0 && written !== 0) return { complaint: 'write 0 or a larger number' };
  return { value, rest };
}
