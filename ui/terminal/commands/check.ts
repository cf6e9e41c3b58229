/** `tankful check FILE`: what is wrong with a scenario, or what was understood and what was filled in. */
import type { Command } from 'commander';
import { loadScenario, type Overrides } from '../load.ts';
import { summaryText } from '../summary.ts';
import type { Terminal } from '../terminal.ts';

export function checkCommand(program: Command, terminal: Terminal): void {
  program
    .command('check')
    .description('say what is wrong with a scenario, or what was understood and what was filled in')
    .argument('<file>', 'scenario file')
    .option('--weather <file>', 'weather file in place of the weather in the file')
    .option('--plain', 'ASCII without colour')
    .action((file: string, options: Overrides & { plain?: true }) => {
      const loaded = loadScenario(file, options);
      terminal.out(summaryText(loaded, file, terminal.screen(options.plain === true)));
    });
}
