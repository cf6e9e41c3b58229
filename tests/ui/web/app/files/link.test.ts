import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { root } from '../../../../../scripts/build.mjs';
import { parseJsonText, problemLine } from '../../../../../sim/index.ts';
import { linkOf, mostInflated, readLink } from '../../../../../ui/web/app/files/link.ts';
import { linkNames } from '../../../../../ui/web/app/files/link-names.ts';
import { randomScenario } from '../../../../sim/scenario/random-scenario.ts';

const folder = join(root, 'scenarios');
const scenarioOf = (name: string) => {
  const read = parseJsonText(readFileSync(join(folder, name), 'utf8'));
  return read.ok ? (read.json as object) : null;
};
const files = readdirSync(folder).filter((name) => name.endsWith('.json') && scenarioOf(name) !== null);
/** Longer than the address of any page that is likely to be shared. */
const address = 'https://somebody.example.org/some/folder/tankful/index.html';

async function problemOf(fragment: string) {
  const read = await readLink(fragment);
  if (read.ok) throw new Error(`expected ${fragment.slice(0, 40)} to be refused`);
  expect(read.problems).toHaveLength(1);
  expect(problemLine(read.problems[0])).not.toMatch(/undefined|NaN/);
  return read.problems[0];
}

describe('a link', () => {
  it.each(files)(
    'holds the whole of %s, in under 2,000 characters with the address before it',
    async (name) => {
      const scenario = scenarioOf(name) ?? {};
      const link = await linkOf(scenario);
      expect(address.length + link.length).toBeLessThan(2000);
      expect(link).toMatch(/^#d=1[\w-]+$/);
      expect(await readLink(link)).toEqual({ ok: true, json: scenario });
    },
  );

  it('holds random designs', async () => {
    for (let seed = 1; seed <= 20; seed++) {
      const scenario = JSON.parse(JSON.stringify(randomScenario(seed))) as object;
      expect(await readLink(await linkOf(scenario))).toEqual({ ok: true, json: scenario });
    }
  });

  it('brings back any JSON, whatever its names and letters', async () => {
    const own = fc.dictionary(
      fc.oneof(fc.constantFrom(...linkNames), fc.string({ unit: 'grapheme' })),
      fc.jsonValue({ maxDepth: 3 }),
    );
    await fc.assert(
      fc.asyncProperty(own, async (json) => {
        const plain = JSON.parse(JSON.stringify(json)) as object;
        expect(await readLink(await linkOf(plain))).toEqual({ ok: true, json: plain });
      }),
      { numRuns: 100, seed: 5 },
    );
  });

  it('knows each of its names once, and has a byte for every one', () => {
    expect(new Set(linkNames).size).toBe(linkNames.length);
    expect(linkNames.length).toBeLessThanOrEqual(128 + 31);
  });
});

describe('a link made when the form was new', () => {
  it('is still read', async () => {
    const link =
      '#d=14ECJq96gVJKYl51WmqOkI2moc0XJK6bUwCDNrCg9ptTIwNCyWAEkraMAEk1KUUgrzclR0vlTfVTJxETBT6lWh616X_U3paT8CiWd40omCmklSjrySsZgegeErtWRUTI2UsjMU9JRykksSS2Kz0vMTVWyKikqTa2tBQA';
    expect(await readLink(link)).toEqual({
      ok: true,
      json: {
        format: 'tankful',
        version: 1,
        name: 'Jörg’s tank, ½ full',
        site: { latitude: '44 N' },
        store: {
          inside: { shape: 'box', length: '4 ft', width: '3 ft', height: '3 ft' },
          water_depth: '32 in',
          later_name: true,
        },
      },
    });
  });

  it('has the names it was made with: whoever needs others needs another form', () => {
    const print = createHash('sha256').update(linkNames.join(' ')).digest('hex');
    expect(print).toBe('3bcd686c5e6ab3d6690ff8b58ca66eeb9544c7127e4fbd4d4e211bf4e753938a');
  });
});

describe('a link that is none', () => {
  const whole = linkOf({ format: 'tankful', version: 1, name: 'a boat', store: { water_depth: '12 in' } });

  it.each(['', '#', '#d=', '#days', '#d', 'd=1abcd'])('is empty: %j', async (fragment) => {
    expect(await problemOf(fragment)).toMatchObject({ got: 'nothing' });
  });

  it('is told when it was cut anywhere', async () => {
    const link = await whole;
    for (let length = 4; length < link.length; length++) {
      const { fix } = await problemOf(link.slice(0, length));
      expect(fix).toContain('again');
    }
  });

  it('is told when any letter was changed', async () => {
    const link = await whole;
    for (let at = 4; at < link.length - 1; at++) {
      const other = link[at] === 'A' ? 'B' : 'A';
      await problemOf(link.slice(0, at) + other + link.slice(at + 1));
    }
  });

  it.each(['#d=1abcd é', '#d=1abcd%20xx', '#d=1abcd/+xx', '#d=1abcd.xxx', '#d=1abcdx'])(
    'has letters that are none of it: %s',
    async (fragment) => {
      expect(await problemOf(fragment)).toMatchObject({ expected: 'letters, digits, - and _' });
    },
  );

  it('is of a form to come', async () => {
    expect(await problemOf('#d=2abcdef')).toMatchObject({
      got: 'the form "2"',
      fix: expect.stringContaining('load the page again'),
    });
  });

  it('is too long to be one, and is not unpacked', async () => {
    expect(await problemOf(`#d=1${'A'.repeat(200_000)}`)).toMatchObject({ got: '200,001' });
  });

  it('is a bomb, which is refused after its first 64 kB of 60 MB', async () => {
    const million = 1_000_000;
    const bomb = deflateRawSync(Buffer.alloc(60 * million, ' '), { level: 9 });
    expect(bomb.length).toBeLessThan(64_000);
    const before = process.memoryUsage().arrayBuffers;
    const problem = await problemOf(`#d=1abcd${bomb.toString('base64url')}`);
    expect(problem).toMatchObject({ got: 'one that would unpack to more' });
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(20 * million);
    expect(mostInflated).toBe(65_536);
  });

  it('holds what is no design: that is for the reader of scenarios to say', async () => {
    const fragment = await linkOf([1, 2] as unknown as object);
    expect(await readLink(fragment)).toEqual({ ok: true, json: [1, 2] });
  });
});
