import { describe, expect, it } from 'vitest';
import { edited, type Scenario } from '../../../../sim/index.ts';
import { spanEdits, spanOf } from '../../../../ui/web/app/span.ts';

const scenario = (run: object | undefined) => ({ name: 'n', run }) as unknown as Scenario;

describe('the span of a scenario', () => {
  it('is what its file says, with a year to its date so that a date field can show it', () => {
    expect(spanOf(scenario({ from: '2027-01-09', days: 7 }))).toEqual({ from: '2027-01-09', days: 7 });
    expect(spanOf(scenario({ from: '03-15', days: 30 }))).toEqual({ from: '2027-03-15', days: 30 });
  });

  it('is that of the field catalogue where the file says nothing', () => {
    expect(spanOf(scenario(undefined))).toEqual({ from: '2027-01-01', days: 7 });
  });
});

describe('another span', () => {
  it('is put into the run and leaves the rest of it', () => {
    const changed = edited(scenario({ from: '01-09', days: 7, layers: 12 }), spanEdits({ days: 3 }));
    expect(changed.run).toEqual({ from: '01-09', days: 3, layers: 12 });
  });

  it('of no number of days leaves the number to its default', () => {
    expect(spanEdits({ days: Number.NaN })).toEqual([{ path: 'run.days', value: undefined }]);
  });

  it('is put in as typed, right or wrong', () => {
    expect(spanEdits({ from: '', days: 400 })).toEqual([
      { path: 'run.from', value: '' },
      { path: 'run.days', value: 400 },
    ]);
  });
});
