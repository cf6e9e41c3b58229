/** Puts every text of a catalogue, and every text its functions give, in marks. */
export function marked<Value>(value: Value): Value {
  return marking(value) as Value;
}

/** Groups, paths, keys and systems of units are for finding things; nobody reads them. */
const isKey = (name: string, part: unknown) =>
  /^(group|path|key|units)$/.test(name) && /^([a-z][\w.[\]]*|US|SI)$/.test(String(part));

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
