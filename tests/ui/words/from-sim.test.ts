/** The door for texts of sim: templates, their holes, and the language's decimal sign. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

const table = {
  'water depth': 'Wassertiefe',
  'a length': 'eine Länge',
  'add it': 'füge es hinzu',
  '{} measures {}; write it as in "{}"': '{1} misst man mit {0}; schreibe etwa "{2}"',
  '{} to {}': '{} bis {}',
  '{}: a whole number from {} to {}': '{}: eine ganze Zahl von {} bis {}',
  'at most {}': 'höchstens {}',
  'at most {}, the width less the tube': '{}, die Breite ohne das Rohr, höchstens',
  'did you mean "{}"?': 'meintest du "{}"?',
  'a sum (of {}) + {}*': 'Summe {1}, {0}',
  unknown: 'unbekannt',
  '{} pm': '{} nachmittags',
};

/** The door of a language with this table, whose numbers are written as in `locale`. */
async function doorOf(texts: Readonly<Record<string, string>>, locale = 'en-US') {
  const Own = Intl.NumberFormat;
  class Numbers extends Own {
    constructor(_: string, options?: Intl.NumberFormatOptions) {
      super(locale, options);
    }
  }
  vi.stubGlobal('Intl', Object.create(Intl, { NumberFormat: { value: Numbers } }));
  vi.doMock('../../../ui/words/sim-texts.ts', () => ({ simTexts: texts }));
  const { withPoint } = await import('../../../ui/words/locale.ts');
  const { quantityText } = await import('../../../ui/words/units.ts');
  const { errorText, problemText } = await import('../../../ui/words/errors.ts');
  const { fromSim } = await import('../../../ui/words/from-sim.ts');
  return { fromSim, withPoint, quantityText, errorText, problemText };
}

beforeEach(() => {
  vi.resetModules();
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.doUnmock('../../../ui/words/sim-texts.ts');
});

describe('a text of sim in another language', () => {
  it.each([
    ['stands in the table', 'water depth', 'Wassertiefe'],
    ['is put together of what stood in the holes', '2 in to 10 ft', '2 in bis 10 ft'],
    [
      'has what stood in the holes translated',
      'water depth: a whole number from 1 to 3',
      'Wassertiefe: eine ganze Zahl von 1 bis 3',
    ],
    [
      'orders what stood in the holes by number',
      '"psi" measures a length; write it as in "3 ft"',
      'eine Länge misst man mit "psi"; schreibe etwa "3 ft"',
    ],
    [
      'is by the template with most text of its own',
      'at most 5 m, the width less the tube',
      '5 m, die Breite ohne das Rohr, höchstens',
    ],
    ['is by a plainer template where that alone fits', 'at most 5 m', 'höchstens 5 m'],
    ['holds templates in templates', 'at most 1 to 2', 'höchstens 1 bis 2'],
    ['keeps the file’s words in quotes', 'did you mean "unknown"?', 'meintest du "unknown"?'],
    ['may have any signs', 'a sum (of 1) + 2*', 'Summe 2, 1'],
    ['may go over lines', '1\n2 to 3', '1\n2 bis 3'],
    ['stays as it is where nothing is known', 'Larch Hollow', 'Larch Hollow'],
    ['is no word of every object', 'constructor', 'constructor'],
  ])('%s', async (_, text, said) => {
    const { fromSim } = await doorOf(table);
    expect(fromSim(text)).toBe(said);
    expect(fromSim(text)).toBe(said);
  });

  it('has the words of quantities', async () => {
    const { quantityText } = await doorOf(table);
    expect(quantityText(Number.NaN, 'length', 'US')).toBe('unbekannt');
    expect(quantityText(18.5 * 3600, 'clock', 'US')).toBe('6:30 nachmittags');
    expect(quantityText(18.5 * 3600, 'clock', 'US', { plain: true })).toBe('6:30 pm');
  });

  it('has each part of a problem, and of an error’s message, translated', async () => {
    const { errorText, problemText } = await doorOf(table);
    expect(problemText({ expected: 'a length', got: '"x"', fix: 'add it' })).toContain(
      'eine Länge - got "x" - füge es hinzu.',
    );
    expect(errorText('tube - expected a length - got 1 to 2 - add it')).toContain(
      'eine Länge - got 1 bis 2 - füge es hinzu',
    );
  });
});

describe('a number', () => {
  it.each([
    ['3.1 kW', '3,1 kW'],
    ['R-2.5', 'R-2,5'],
    ['4 × 1.5 m to 10.25 m', '4 × 1,5 m to 10,25 m'],
    ['-0.5 °C', '-0,5 °C'],
    ['as in "1.5 gpm"', 'as in "1.5 gpm"'],
    ['version 1.2.3 of b2.5', 'version 1.2.3 of b2.5'],
  ])('of the text %s has the sign of a language with a decimal comma', async (text, said) => {
    const { fromSim } = await doorOf({}, 'de-DE');
    expect(fromSim(text)).toBe(said);
  });

  it.each([
    ['1,5 kW', '1.5 kW'],
    ['0,25', '0.25'],
    [',5 in', '.5 in'],
    ['1.5 kW', '1.5 kW'],
    ['Mon, Wed', 'Mon, Wed'],
  ])('typed as %s in such a language is read as %s', async (typed, text) => {
    const { withPoint } = await doorOf({}, 'de-DE');
    expect(withPoint(typed)).toBe(text);
  });

  it('keeps its point in English', async () => {
    const { fromSim, withPoint } = await doorOf({});
    expect(fromSim('3.1 kW')).toBe('3.1 kW');
    expect(withPoint('1,5 kW')).toBe('1,5 kW');
  });
});
