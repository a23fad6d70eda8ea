import type { Command } from 'commander';

/** The verbs that take in what others made. What they need is loaded when they are called. */
export function addInVerbs(program: Command, finish: (code: Promise<number>) => Promise<void>): void {
  program
    .command('read-model')
    .argument('<file>', 'IFC file (2x3, 4, 4.3)')
    .description('look at the bolted joints of a building model: what was understood, what not, and why')
    .option('--out <folder>', 'write joints.csv of it into this folder')
    .option('--json', 'print it as JSON')
    .addHelpText(
      'after',
      `
Example:
  clampwright read-model hall.ifc --out hall

Exit code: 0 all understood; 1 something was not; 2 nothing could be read.`,
    )
    .action((file: string, options) => finish(import('./model-command.ts').then(({ modelCommand }) => modelCommand(file, options))));
}
