import { describe, expect, it } from 'vitest';
import { migrate, SCENARIO_FORMAT, SCENARIO_VERSION } from '../../../sim/scenario/index.ts';
import type { MigrationStep } from '../../../sim/scenario/migrate.ts';

const file = (version: unknown) => ({ format: 'tankful', version, name: 'x' });

describe('the version gate', () => {
  it('passes a file of today’s version as it is', () => {
    expect([SCENARIO_FORMAT, SCENARIO_VERSION]).toEqual(['tankful', 1]);
    const json = file(1);
    expect(migrate(json)).toEqual({ ok: true, json });
  });

  it.each([
    [null, '', 'null'],
    [[], '', 'a list of 0'],
    ['tankful', '', '"tankful"'],
    [{}, 'format', 'nothing'],
    [{ format: 'other', version: 1 }, 'format', '"other"'],
    [{ format: 'tankful' }, 'version', 'nothing'],
    [file('1'), 'version', '"1"'],
    [file(0), 'version', 'the number 0'],
    [file(1.5), 'version', 'the number 1.5'],
    [file(Number.NaN), 'version', 'the number NaN'],
  ])('refuses %j', (json, path, got) => {
    expect(migrate(json)).toMatchObject({ ok: false, problems: [{ path, got }] });
  });

  it('refuses a newer file and says that it is left as it is', () => {
    const json = Object.freeze(file(2));
    expect(migrate(json)).toMatchObject({
      ok: false,
      problems: [
        {
          path: 'version',
          expected: 'the number 1',
          fix: expect.stringContaining('left as it is'),
        },
      ],
    });
  });

  it('leads an older file through every step without changing it', () => {
    const rename: MigrationStep = ({ name, ...rest }) => ({ ...rest, title: name });
    const count: MigrationStep = (json) => {
      json.count = 1;
      return json;
    };
    const old = file(1);
    const migrated = migrate(old, [rename, count]);
    expect(migrated).toEqual({ ok: true, json: { format: 'tankful', version: 3, title: 'x', count: 1 } });
    expect(old).toEqual(file(1));
    expect(migrate({ ...file(2), title: 'y' }, [rename, count])).toMatchObject({
      ok: true,
      json: { title: 'y', count: 1 },
    });
  });
});
