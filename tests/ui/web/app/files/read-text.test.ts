import { describe, expect, it } from 'vitest';
import { problemLine } from '../../../../../sim/index.ts';
import { type FileLike, mostBytes, readText } from '../../../../../ui/web/app/files/read-text.ts';

function fileOf(bytes: Uint8Array | string, name = 'log.csv'): FileLike {
  const data = typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes;
  return { name, size: data.length, arrayBuffer: async () => data.slice().buffer };
}

const text = 'time,top (°F)\n2027-01-09 21:00,140\n';
const utf16 = (order: 'le' | 'be') =>
  new Uint8Array(
    [...text].flatMap((c) => {
      const code = c.charCodeAt(0);
      return order === 'le' ? [code & 255, code >> 8] : [code >> 8, code & 255];
    }),
  );
const latin = Uint8Array.from(text, (c) => c.charCodeAt(0));
const marked = (mark: number[], bytes: Uint8Array) => Uint8Array.from([...mark, ...bytes]);

describe('the text of a file', () => {
  it.each<[string, Uint8Array | string, string | null]>([
    ['UTF-8', text, null],
    ['UTF-8 with its mark', marked([0xef, 0xbb, 0xbf], new TextEncoder().encode(text)), null],
    ['UTF-16, low byte first, with its mark', marked([0xff, 0xfe], utf16('le')), 'UTF-16'],
    ['UTF-16, high byte first, with its mark', marked([0xfe, 0xff], utf16('be')), 'UTF-16'],
    ['UTF-16 without a mark', utf16('le'), 'UTF-16'],
    ['UTF-16 without a mark, high byte first', utf16('be'), 'UTF-16'],
    ['Windows-1252', latin, 'Windows-1252'],
  ])('is read from %s', async (_, bytes, as) => {
    expect(await readText(fileOf(bytes))).toEqual({ ok: true, text, as });
  });

  it.each<[string, number[], string]>([
    ['a spreadsheet', [0x50, 0x4b, 3, 4, 0, 0], 'spreadsheet'],
    ['an old spreadsheet', [0xd0, 0xcf, 0x11, 0xe0], 'spreadsheet'],
    ['a PDF', [0x25, 0x50, 0x44, 0x46, 0x2d], 'PDF'],
    ['a picture', [0x89, 0x50, 0x4e, 0x47], 'picture'],
    ['a packed file', [0x1f, 0x8b, 8], 'packed'],
    ['zeros', [0, 0, 0, 0], 'no text'],
    ['text with zeros in it', [65, 66, 0, 67, 68, 69, 70, 71], 'no text'],
  ])('is refused of %s', async (_, bytes, words) => {
    const read = await readText(fileOf(Uint8Array.from(bytes)));
    if (read.ok) throw new Error('expected a refusal');
    expect(problemLine(read.problems[0])).toContain(words);
    expect(read.problems[0].path).toBe('log.csv');
  });

  it('is refused where there is none', async () => {
    expect(await readText(fileOf(''))).toMatchObject({ ok: false, problems: [{ got: 'an empty file' }] });
  });

  it.each([
    ['design.json', mostBytes.design],
    ['year.csv', mostBytes.table],
  ])('of %s is refused over its size before a byte is read', async (name, most) => {
    const never: FileLike = {
      name,
      size: most + 1,
      arrayBuffer: () => Promise.reject(new Error('must not be read')),
    };
    const huge = { ...never, size: 100_000_000 };
    expect(await readText(huge)).toMatchObject({ ok: false, problems: [{ got: '100 MB' }] });
    expect((await readText(never)).ok).toBe(false);
  });

  it('is refused of a folder, which gives an error when read', async () => {
    const folder: FileLike = {
      name: 'tank',
      size: 4096,
      arrayBuffer: () => Promise.reject(new Error('NotReadable')),
    };
    expect(await readText(folder)).toMatchObject({
      ok: false,
      problems: [{ got: expect.stringContaining('folder') }],
    });
  });
});
