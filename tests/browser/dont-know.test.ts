import { beforeAll, describe, expect, it } from 'vitest';
import { type CardPage, openCardPage } from './support/card-page.ts';

let cards: CardPage;

beforeAll(async () => {
  cards = await openCardPage();
});

describe('a box of a card', () => {
  it('takes "don’t know" for its button, and the assumption stands in it', async () => {
    await cards.open('store');
    const box = cards.box('Depth of water');
    await box.fill('don’t know');
    await box.press('Enter');
    expect(await cards.heard()).toEqual([{ path: 'store.water_depth' }]);
    // 92 % of 36 in.
    await expect.poll(() => box.inputValue()).toMatch(/^33\.12 in$/);
    expect(await box.getAttribute('aria-invalid')).toBe('false');
  });

  it('asks for a price by the gallon and does not take a mere number', async () => {
    await cards.open('prices');
    const box = cards.box('Diesel');
    expect(await box.inputValue()).toBe('4.542/gal');
    await box.fill('4.50');
    await box.press('Enter');
    await expect.poll(() => box.getAttribute('aria-invalid')).toBe('true');
    await cards.page.getByRole('button', { name: '4.50/gal' }).click();
    await expect.poll(() => box.inputValue()).toBe('4.50/gal');
    expect(await box.getAttribute('aria-invalid')).toBe('false');
  });
});
