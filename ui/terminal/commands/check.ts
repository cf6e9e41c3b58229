/** `tankful check FILE`: what is wrong with a scenario, or what was understood and what was filled in. */
import type { Command } from 'commander';
import { commandWords, optionWords } from '../../words/index.ts';
import { loadScenario, type Overrides } from '../load.ts';
import { summaryText } from '../summary.ts';
import type { Terminal } from '../terminal.ts';

export function checkCommand(program: Command, terminal: Terminal): void {
  program
    .command('check')
    .description(commandWords.check)
    .argument('<file>', optionWords.file)
    .option('--weather <file>', optionWords.weather)
    .option('--plain', optionWords.plain)
    .action((file: string, options: Overrides & { plain?: true }) => {
      const loaded = loadScenario(file, options);
      terminal.out(summaryText(loaded, file, terminal.screen(options.plain === true)));
    });
}
