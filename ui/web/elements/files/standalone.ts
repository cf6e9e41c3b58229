/** A drawing as a file of its own: white ground, a title, what its signs mean, and the drawing as it looks. */
import { chartWords } from '../../../words/index.ts';
import { escapeText, label, px, tag } from '../../charts/svg.ts';

/** All in looks of its own: nothing of it depends on the page. */
export interface Picture {
  drawing: SVGElement;
  /** Size of the drawing [px]. */
  width: number;
  height: number;
  /** A picture of points under the drawing. */
  under?: { png: string; x: number; y: number; width: number; height: number };
  keys: { swatch: SVGElement | null; words: string }[];
  /** Lines of words below. */
  notes: string[];
}

export interface Standalone {
  text: string;
  width: number;
  height: number;
}

const pad = 16;
const least_px = 480;
const sans = 'system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, sans-serif';
const ink = '#20262a';
const soft = '#566068';

export function standalone(picture: Picture, title: string, about: string): Standalone {
  const { drawing, under, keys, notes } = picture;
  const width = Math.max(picture.width, least_px) + 2 * pad;
  const room = width - 2 * pad;
  let y = pad;
  const parts: string[] = [];
  const line = (words: string, size: number, attributes: Record<string, string>) => {
    for (const row of wrapped(words, size, room)) {
      y += size * 1.35;
      parts.push(label(row, pad, y - size * 0.35, { 'font-size': size, ...attributes }));
    }
  };
  line(title, 16, { fill: ink, 'font-weight': '600' });
  line(about, 12, { fill: soft });
  y += 6;
  const [drawn, used] = keyRows(keys, y, room);
  parts.push(drawn);
  y += used + 4;
  if (under) {
    const { png, x, width: wide, height } = under;
    parts.push(
      tag('image', {
        x: pad + x,
        y: y + under.y,
        width: wide,
        height,
        preserveAspectRatio: 'none',
        href: png,
      }),
    );
  }
  drawing.setAttribute('x', String(pad));
  drawing.setAttribute('y', px(y));
  parts.push(new XMLSerializer().serializeToString(drawing));
  y += picture.height + 6;
  for (const note of notes) line(note, 12, { fill: ink });
  line(chartWords.foot, 11, { fill: soft });
  const height = Math.ceil(y + pad);
  const text = tag(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: String(width),
      height: String(height),
      viewBox: `0 0 ${width} ${height}`,
      'font-family': sans,
      role: 'img',
    },
    tag('title', {}, escapeText(`${title}. ${about}`)),
    tag('rect', { width: '100%', height: '100%', fill: '#ffffff' }),
    ...parts,
  );
  return { text: `<?xml version="1.0" encoding="UTF-8"?>\n${text}\n`, width, height };
}

const keySize = 12;

/** The keys side by side, in as many rows as they need; and how high these are [px]. */
function keyRows(keys: Picture['keys'], top: number, room: number): [drawn: string, height: number] {
  const rows: string[] = [];
  let [x, y, high] = [0, top, 0];
  for (const { swatch, words } of keys) {
    const wide = swatch ? Number(swatch.getAttribute('width')) : 0;
    const tall = Math.max(swatch ? Number(swatch.getAttribute('height')) : 0, 18);
    const all = wide + (wide > 0 && words !== '' ? 6 : 0) + widthOf(words, keySize);
    if (x > 0 && x + all > room) [x, y, high] = [0, y + high, 0];
    if (swatch) {
      swatch.setAttribute('x', px(pad + x));
      swatch.setAttribute('y', px(y + (tall - Number(swatch.getAttribute('height'))) / 2));
      rows.push(new XMLSerializer().serializeToString(swatch));
    }
    const at = pad + x + (wide > 0 ? wide + 6 : 0);
    if (words !== '') rows.push(label(words, at, y + tall / 2 + 4, { 'font-size': keySize, fill: soft }));
    x += all + 16;
    high = Math.max(high, tall);
  }
  return [rows.join(''), keys.length === 0 ? 0 : y + high - top];
}

let paper: CanvasRenderingContext2D | null = null;

function widthOf(words: string, size: number): number {
  paper ??= document.createElement('canvas').getContext('2d');
  if (!paper) return words.length * size * 0.55;
  paper.font = `${size}px ${sans}`;
  // Other computers have other letters: a little room for wider ones.
  return paper.measureText(words).width * 1.05;
}

function wrapped(words: string, size: number, room: number): string[] {
  const rows: string[] = [];
  for (const word of words.split(' ')) {
    const last = rows.at(-1);
    if (last !== undefined && widthOf(`${last} ${word}`, size) <= room) rows[rows.length - 1] += ` ${word}`;
    else rows.push(word);
  }
  return rows.filter((row) => row !== '');
}

/** Points a pixel: sharp on paper and on fine screens. */
const scale = 2;

/** The same as a picture of points, twice as fine as it is large. */
export async function pngOf({ text, width, height }: Standalone): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = width * scale;
    canvas.height = height * scale;
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    const png = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
    if (!png) throw new Error('the browser gave none');
    return png;
  } finally {
    URL.revokeObjectURL(address);
  }
}
