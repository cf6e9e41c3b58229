/** A card on a page of its own, and what a test asks of it. */
import type { Locator, Page } from 'playwright-core';
import demoFile from '../../../scenarios/demo.json';
import type { Scenario } from '../../../sim/index.ts';
import { violations } from './axe.ts';
import type { CardStand } from './card-stand.ts';
import { openStand } from './stand.ts';

declare const stand: CardStand;
export const demo = demoFile as Scenario;

export interface CardPage {
  page: Page;
  errors: string[];
  /** Shows the card of a part of the demo. */
  open(path: string, units?: 'US' | 'SI'): Promise<void>;
  /** What the card asked for since the last call. */
  heard(): Promise<unknown[]>;
  box(name: string | RegExp): Locator;
  /** What describes a control to those who do not see it. */
  described(control: Locator): Promise<string>;
  violations(): Promise<string[]>;
}

export async function openCardPage(): Promise<CardPage> {
  const { page, errors } = await openStand('card-stand.ts', { width: 390 });
  return {
    page,
    errors,
    async open(path, units = 'US') {
      await page.evaluate(([json, part, system]) => stand.open(json, part, { units: system }), [
        demo,
        path,
        units,
      ] as const);
      await page.waitForSelector('.card');
    },
    heard: () => page.evaluate(() => stand.heard.splice(0)),
    box: (name) => page.getByRole('textbox', { name }),
    described: (control) =>
      control.evaluate((element) =>
        (element.getAttribute('aria-describedby') ?? '')
          .split(' ')
          .map((id) => document.getElementById(id)?.textContent?.trim())
          .join(' '),
      ),
    violations: () => violations(page),
  };
}
