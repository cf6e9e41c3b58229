/** Names of files that any disk takes. */

/** Letters kept of a name. */
const longest = 60;

/** "Larch Hollow, winter" as `larch-hollow-winter`; a name of signs alone is `design`. */
export function fileStem(...names: string[]): string {
  const stem = names
    .join(' ')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{Nd}]+/gu, '-')
    .slice(0, longest)
    .replace(/^-|-$/g, '');
  return stem || 'design';
}
