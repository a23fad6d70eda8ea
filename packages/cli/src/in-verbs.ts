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

  program
    .command('enter')
    .argument('<job>', 'id of the job')
    .argument('<file>', 'filled card or records of a tool, CSV or XLSX: joint, bolts, step, end, date')
    .description('enter into the log what was done on paper, or what a tool kept: marked as entered later, with the file beside it')
    .option('--data <folder>', 'where the books lie; DATABASE_URL comes first', 'clampwright-data')
    .option('--step <step>', 'for rows that do not say their step')
    .option('--end <signal>', 'for rows that do not say how the step ended (stall, mark at angle …)')
    .option('--done <date>', 'for rows that do not say their day, year-month-day')
    .option('--card <label>', 'number of the card, for rows that do not say it')
    .option('--map <heading=meaning...>', 'what a heading means')
    .option('--write', 'enter it; without, it is only shown')
    .addHelpText(
      'after',
      `
Examples:
  clampwright enter j-… card-17.csv --card 17 --done 2026-11-25
  clampwright enter j-… card-17.csv --card 17 --done 2026-11-25 --write

Exit code: 0 shown or entered; 2 nothing was entered.`,
    )
    .action((job: string, file: string, options) =>
      finish(import('./enter-command.ts').then(({ enterCommand }) => enterCommand(job, file, options))),
    );

  program
    .command('register')
    .argument('<folder>', 'job folder')
    .description('register its tools with chart and certificate, and its batteries, in the book of the yard: what is new or has changed')
    .option('--data <folder>', 'where the books lie; DATABASE_URL comes first', 'clampwright-data')
    .option('--write', 'enter it; without, it is only shown')
    .addHelpText(
      'after',
      `
Examples:
  clampwright register pier-4
  clampwright register pier-4 --write

The certificates that count on the work date of job.yaml are registered. Exit code: 0 shown or registered; 2 nothing was registered.`,
    )
    .action((folder: string, options) =>
      finish(import('./register-command.ts').then(({ registerCommand }) => registerCommand(folder, options))),
    );

  program
    .command('export-book')
    .argument('<job>', 'id of the job')
    .requiredOption('--out <folder>', 'a new folder')
    .option('--data <folder>', 'where the books lie; DATABASE_URL comes first', 'clampwright-data')
    .description('write everything that a job holds as plain files: entries, receipts, heads, attachments, yard book, schemas')
    .addHelpText('after', '\nExample:\n  clampwright export-book j-… --out pier-4-open\n\nExit code: 0 written; 2 nothing was.')
    .action((job: string, options) =>
      finish(import('./open-export-command.ts').then(({ openExportCommand }) => openExportCommand(job, options))),
    );

  program
    .command('import-book')
    .argument('<folder>', 'folder that “clampwright export-book” wrote')
    .option('--data <folder>', 'where the books lie; DATABASE_URL comes first', 'clampwright-data')
    .description('take over an open export: every file held against its hash, every book read again')
    .addHelpText('after', '\nExample:\n  clampwright import-book pier-4-open --data elsewhere\n\nExit code: 0 taken over; 2 nothing was.')
    .action((folder: string, options) =>
      finish(import('./open-export-command.ts').then(({ openImportCommand }) => openImportCommand(folder, options))),
    );
}
