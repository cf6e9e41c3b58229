/** Finds what the chart beside a button gives to be saved. */
import type { PanelKey } from '../../app/days-panels.ts';
import type { TankfulSection } from '../section/tankful-section.ts';
import type { TankfulDays } from '../tankful-days.ts';
import type { Savable, Saves } from './savable.ts';
import { savableDays } from './save-days.ts';
import { savableSection } from './save-section.ts';

/** Elements that open the page do without this code; those that come later know how to be saved. */
export function savableOf(button: HTMLElement): Savable | null {
  const key = button.dataset.save ?? '';
  const days = button.closest<TankfulDays>('tankful-days');
  if (days) return savableDays(days, key as PanelKey, titleBeside(button));
  const section = button.closest<TankfulSection>('tankful-section');
  if (section) return savableSection(section);
  for (let around: Element | null = button; around; around = around.parentElement) {
    if ('savable' in around) return (around as Saves).savable(key);
  }
  return null;
}

/** As it stands over the chart. */
function titleBeside(button: Element): string {
  return button.closest('figcaption')?.querySelector('.title')?.textContent ?? '';
}
