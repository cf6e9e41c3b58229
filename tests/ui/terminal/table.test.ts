import { expect, it } from 'vitest';
import { tableLines } from '../../../ui/terminal/table.ts';

it('aligns columns by their widest cell', () => {
  const rows = [
    ['Engine to store', '12.5', 'kWh'],
    ['Sun', '3.0', 'kWh'],
    ['Rest', ''],
  ];
  expect(tableLines(rows, ['left', 'right', 'left'])).toEqual([
    'Engine to store  12.5  kWh',
    'Sun               3.0  kWh',
    'Rest',
  ]);
});

it('gives no line without rows', () => {
  expect(tableLines([], ['left'])).toEqual([]);
});
