/** Gives a design to the person as a file of its own, which opens here again and in the terminal. */
import type { Design } from '../page-state.ts';
import { fileStem } from './file-names.ts';
import { type Saved, saveFile } from './save-file.ts';

export function saveToFile({ name, scenario }: Pick<Design, 'name' | 'scenario'>): Promise<Saved> {
  const text = `${JSON.stringify(scenario, null, 2)}\n`;
  return saveFile(`${fileStem(name)}.json`, new Blob([text], { type: 'application/json' }));
}
