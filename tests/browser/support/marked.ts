/** Puts every text of a catalogue, and every text its functions give, in marks. */
export function marked<Value>(value: Value): Value {
  return marking(value) as Value;
}

/** The group that a figure belongs to is a key; nobody reads it. */
const isKey = (name: string, part: unknown) => name === 'group' && /^[a-z]+$/.test(String(part));

function marking(value: unknown): unknown {
  if (typeof value === 'string') return /\p{L}{2,}/u.test(value) ? `⟦${value}⟧` : value;
  if (typeof value === 'function') return (...given: unknown[]) => marking(value(...given));
  if (Array.isArray(value)) return value.map(marking);
  const plain =
    typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;
  if (!plain) return value;
  const members = Object.entries(value);
  return Object.fromEntries(members.map(([key, part]) => [key, isKey(key, part) ? part : marking(part)]));
}
