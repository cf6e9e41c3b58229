import { expect, it } from 'vitest';
import { fileStem } from '../../../../../ui/web/app/files/file-names.ts';

it.each([
  [['Larch Hollow in January'], 'larch-hollow-in-january'],
  [['Larch Hollow', 'Store temperatures'], 'larch-hollow-store-temperatures'],
  [['../../etc/passwd'], 'etc-passwd'],
  [['Köhler’s Hütte № 2'], 'köhler-s-hütte-2'],
  [['con\u0000?*<>|"'], 'con'],
  [[''], 'design'],
  [['…'], 'design'],
  [['x'.repeat(300)], 'x'.repeat(60)],
])('a file of %j is called %s', (names, stem) => {
  expect(fileStem(...names)).toBe(stem);
});
