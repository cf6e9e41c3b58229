/** The words a unit is made of, and the ways they are written. */

/** Word as it stands in a unit's symbol: its other spellings. Letters' case is forgiven unless in `exactCase`. */
const spellings: Readonly<Record<string, string>> = {
  in: 'inch inches',
  ft: 'foot feet',
  yd: 'yard yards',
  mi: 'mile miles',
  mil: 'mils',
  mm: 'millimeter millimeters millimetre millimetres',
  cm: 'centimeter centimeters centimetre centimetres',
  m: 'meter meters metre metres',
  km: 'kilometer kilometers kilometre kilometres',
  gal: 'gals gallon gallons',
  impgal: '',
  qt: 'qts quart quarts',
  pt: 'pint pints',
  floz: '',
  L: 'liter liters litre litres',
  mL: 'ml milliliter milliliters millilitre millilitres',
  cc: 'ccm',
  lb: 'lbs pound pounds',
  lbf: '',
  oz: 'ounce ounces',
  kg: 'kgs kilogram kilograms kilo kilos',
  g: 'gram grams',
  t: 'tonne tonnes',
  s: 'sec secs second seconds',
  min: 'mins minute minutes',
  h: 'hr hrs hour hours',
  day: 'days d',
  week: 'weeks wk wks',
  gpm: '',
  gph: '',
  gpd: '',
  cfm: '',
  lpm: '',
  lph: '',
  mph: '',
  kph: '',
  fps: '',
  psi: '',
  psig: '',
  Pa: 'pascal pascals',
  hPa: '',
  kPa: 'kilopascal kilopascals',
  MPa: 'megapascal megapascals',
  bar: 'bars',
  mbar: 'millibar millibars',
  ftwater: '',
  inwater: '',
  mwater: '',
  cmwater: '',
  F: 'Fahrenheit',
  C: 'Celsius Centigrade',
  'F°': '',
  'C°': '',
  K: 'kelvin kelvins',
  W: 'watt watts',
  kW: 'kilowatt kilowatts',
  MW: 'megawatt megawatts',
  hp: 'horsepower',
  J: 'joule joules',
  kJ: 'kilojoule kilojoules',
  MJ: 'megajoule megajoules',
  GJ: 'gigajoule gigajoules',
  Wh: '',
  kWh: '',
  MWh: '',
  kcal: 'kilocalorie kilocalories',
  Btu: 'btus',
  kBtu: '',
  Btuh: '',
  kBtuh: '',
  deg: '° degree degrees',
  rad: 'radian radians',
  '%': 'percent',
  "'": '',
  "''": '',
  '"': '',
};

// A large M is mega, a small one milli or metre: a change of case would be a silent factor of a thousand million.
const exactCase = new Set(['m', 'mm', 'mL', 'MPa', 'mbar', 'MW', 'MJ', 'MWh']);

/** A watt-hour is a watt times an hour, however it is written. */
const products: Readonly<Record<string, readonly string[]>> = {
  Wh: ['W', 'h'],
  kWh: ['kW', 'h'],
  MWh: ['MW', 'h'],
};

const byExact = new Map<string, string>();
const byLowerCase = new Map<string, string>();
for (const [word, others] of Object.entries(spellings)) {
  for (const spelled of [word, ...others.split(' ').filter(Boolean)]) {
    byExact.set(spelled, word);
    if (spelled.length > 4 || !exactCase.has(word)) byLowerCase.set(spelled.toLowerCase(), word);
  }
}

/** The words of the table that a run of letters stands for, or null. */
export function unitWords(letters: string): readonly string[] | null {
  const word = byExact.get(letters) ?? byLowerCase.get(letters.toLowerCase());
  return word === undefined ? null : (products[word] ?? [word]);
}

/** Several words written as one, as the `mK` in `W/mK`: split where both halves are known. */
export function splitWords(letters: string): readonly string[] | null {
  for (let i = 1; i < letters.length; i++) {
    const [head, tail] = [unitWords(letters.slice(0, i)), unitWords(letters.slice(i))];
    if (head && tail) return [...head, ...tail];
  }
  return null;
}
