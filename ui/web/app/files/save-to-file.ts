/** Gives a design to the person as a file of its own, which opens here again and in the terminal. */
import type { Design } from '../page-state.ts';

/** The browser puts it where it puts downloads, named as the design is. */
export function saveToFile({ name, scenario }: Pick<Design, 'name' | 'scenario'>): void {
  const text = `${JSON.stringify(scenario, null, 2)}\n`;
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `${fileName(name)}.json`;
  link.click();
  // Not before the browser has begun to read it.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** "Larch Hollow in January" as "larch-hollow-in-january": letters and digits that every disk takes. */
function fileName(name: string): string {
  const bare = name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-');
  return bare.replace(/^-|-$/g, '').slice(0, 60) || 'design';
}
