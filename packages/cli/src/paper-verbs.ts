import { type Command, Option } from 'commander';
import { speaking } from './paper-languages.ts';

/** The verbs whose papers and files leave the house. The typesetter is loaded when one of them is called. */
export function addPaperVerbs(program: Command, finish: (code: number | Promise<number>) => Promise<void>): void {
  const folder = (name: string) => program.command(name).argument('<folder>', 'job folder');
  const out = (command: Command) => command.option('--out <folder>', 'where to write', 'papers');
  const data = (command: Command) => command.option('--data <folder>', 'where the books lie; DATABASE_URL comes first', 'clampwright-data');

  speaking(out(folder('cards')))
    .description('bolting cards as PDF, black on white: to laminate, or two on a sheet of A4')
    .addOption(
      new Option('--paper <size>', 'A5 and A6: a side a page; A4: two sides of A5 beside each other')
        .choices(['A5', 'A6', 'A4'])
        .default('A5'),
    )
    .option('--joint <tag...>', 'only these')
    .addHelpText(
      'after',
      '\nExamples:\n  clampwright cards demo --out papers\n  clampwright cards demo --paper A4 --joint FB-S1\n  clampwright cards demo --language de --and pl\n\nExit code: 0 written; 1 written, and a joint stops; 2 nothing was written.',
    )
    .action((path: string, options) => finish(import('./cards-command.ts').then(({ cardsCommand }) => cardsCommand(path, options))));

  speaking(out(folder('tags')))
    .description('joint tags with codes as PDF: a sheet of labels, or a roll')
    .addOption(
      new Option('--paper <kind>', 'sheet: A4, ten labels of 99 × 54 mm; roll: one label a page')
        .choices(['sheet', 'roll'])
        .default('sheet'),
    )
    .addHelpText('after', '\nExample:\n  clampwright tags demo --paper roll')
    .action((path: string, options) => finish(import('./cards-command.ts').then(({ tagsCommand }) => tagsCommand(path, options))));

  speaking(out(folder('kit')))
    .description('kit list per lift and joint as PDF, with boxes to count out and back')
    .option('--lift <name=tags...>', 'joints that go up together (north=FB-S1+FB-S2); without, joints whose tags begin alike')
    .addHelpText('after', '\nExample:\n  clampwright kit demo --lift bridge=FB-S1+FB-S3 tower=TB-R1')
    .action((path: string, options) => finish(import('./cards-command.ts').then(async ({ kitCommand }) => kitCommand(path, options))));

  data(out(folder('export')))
    .description('plan and log for other programs: XLSX, CSV, and due dates as iCalendar')
    .addOption(new Option('--format <format...>', 'only these').choices(['xlsx', 'csv', 'ics']))
    .option('--book <job>', 'id of the job whose log goes out with the plan')
    .addHelpText('after', '\nExamples:\n  clampwright export demo --format xlsx\n  clampwright export demo --book j-… --out handed-over')
    .action((path: string, options) => finish(import('./export-command.ts').then(({ exportCommand }) => exportCommand(path, options))));

  data(
    out(
      program
        .command('form')
        .argument('<template>', 'the client’s XLSX file, its cells named (docs/form-fields.md)')
        .argument('[folder]', 'job folder'),
    ),
  )
    .description('fill the client’s own form once for each joint, from the plan or from the log; its look is kept')
    .option('--book <job>', 'id of the job whose log fills it')
    .addHelpText('after', '\nExamples:\n  clampwright form joint-record.xlsx demo\n  clampwright form joint-record.xlsx --book j-…')
    .action((template: string, path: string | undefined, options) =>
      finish(import('./form-command.ts').then(({ formCommand }) => formCommand(template, path, options))),
    );
}
