/** Paths that the catalogue knows, whether or not a file has them. */
import { fieldEntries } from './catalogue.ts';
import { nearestWord } from './nearest.ts';

/** The known path nearest to one that is not, its list places kept; null where none is near. */
export function nearestPath(path: string): string | null {
  const places = Array.from(path.matchAll(/\[(\d+)\]/g), ([, place]) => place);
  const known = fieldEntries().map(({ path: pattern }) => {
    let used = 0;
    return pattern.replace(/\([^)]*\)/g, '').replace(/\[\]/g, () => `[${places[used++] ?? 0}]`);
  });
  return nearestWord(path, [...new Set(known)]);
}
