/** `tankful schema`: the scenario file's JSON Schema. */
import type { Command } from 'commander';
import { scenarioJsonSchema } from '../../../sim/index.ts';
import { commandWords } from '../../words/index.ts';
import type { Terminal } from '../terminal.ts';

export function schemaCommand(program: Command, terminal: Terminal): void {
  program
    .command('schema')
    .description(commandWords.schema)
    .action(() => terminal.out(`${JSON.stringify(scenarioJsonSchema(), null, 2)}\n`));
}
