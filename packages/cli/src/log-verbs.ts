import type { Command } from 'commander';
import { speaking } from './paper-languages.ts';

/** The verbs of the bolting log. What they need is loaded when they are called, so that planning starts without it. */
export function addLogVerbs(program: Command, finish: (code: Promise<number>) => Promise<void>): void {
  const data = (command: Command) => command.option('--data <folder>', 'where the books lie; DATABASE_URL comes first', 'clampwright-data');

  program
    .command('verify')
    .argument('<file>', 'handover file')
    .description('verify a handover file: every byte, without server or network')
    .option('--seen <checkpoint>', 'file with a checkpoint of this log that was seen elsewhere: the file must continue it')
    .option('--key <key>', 'key of the log as you were told it, or a file that holds it')
    .option('--report <pdf>', 'where to put the report that the file holds, once it is verified')
    .option('--json', 'print the result as JSON')
    .addHelpText(
      'after',
      '\nExample:\n  clampwright verify splice.handover --seen checkpoint-of-may.txt\n\nExit code: 0 verified; 1 not verified; 2 no such file.',
    )
    .action((file: string, options) => finish(import('./verify-command.ts').then(({ verifyCommand }) => verifyCommand(file, options))));

  data(program.command('serve'))
    .description('serve the bolting log of a yard: to this machine, or with a certificate to others')
    .option('--port <port>', 'port to listen on; the next free one if taken', '4871')
    .option('--host <address>', 'address to listen on (127.0.0.1; with --yard-ca all); other than this machine needs a certificate')
    .option('--cert <pem>', 'certificate')
    .option('--key <pem>', 'its key')
    .option('--yard-ca', 'make the certificate with an authority of the yard’s own, and serve a page by which phones come to trust it')
    .option('--name <name...>', 'what phones call this server besides the names of this machine; with --yard-ca')
    .option('--trust-port <port>', 'of the page by which phones come to trust it; the next free one if taken', '4872')
    .option(
      '--organisation <folder>',
      'folder with organisation.yaml: name, address and mark on the reports it hands out (the data folder)',
    )
    .option('--quiet', 'no log on standard error')
    .addHelpText(
      'after',
      '\nExamples:\n  clampwright serve\n  clampwright serve --yard-ca --name pump-house.lan\n  DATABASE_URL=postgres://… clampwright serve --host 0.0.0.0 --cert yard.pem --key yard.key',
    )
    .action((options) => finish(import('./serve-command.ts').then(({ serveCommand }) => serveCommand(options))));

  const organisation = (command: Command) =>
    speaking(
      command.option('--organisation <folder>', 'folder with organisation.yaml: name, address and mark on the report (the data folder)'),
    );

  organisation(data(program.command('handover').argument('<job>', 'id of the job').argument('<file>', 'file to write')))
    .description('write the handover file of a job: plan, entries, attachments, proofs, keys and the report')
    .option('--report <pdf>', 'a report of your own in place of ours')
    .option('--no-report', 'leave the report out')
    .addHelpText('after', '\nExample:\n  clampwright handover j-… splice.handover --organisation demo')
    .action((job: string, file: string, options) =>
      finish(import('./handover-command.ts').then(({ handoverCommand }) => handoverCommand(job, file, options))),
    );

  organisation(data(program.command('report').argument('<job>', 'id of the job').argument('<file>', 'PDF to write')))
    .description('write the report of a job: what was done at each bolt, found and signed, every entry, and the proof (PDF, A4)')
    .addHelpText(
      'after',
      '\nExample:\n  clampwright report j-… splice.pdf --organisation demo --language de --and en\n\nExit code: 0 written; 2 no such book, or the file is there already.',
    )
    .action((job: string, file: string, options) =>
      finish(import('./handover-command.ts').then(({ reportCommand }) => reportCommand(job, file, options))),
    );

  data(program.command('backup').argument('<file>', 'file to write'))
    .description('write all books, attachments and accounts into one file; the server may run meanwhile')
    .action((file: string, options) => finish(import('./store-commands.ts').then(({ backupCommand }) => backupCommand(file, options))));

  data(program.command('restore').argument('<file>', 'backup'))
    .description('put a backup into an empty folder or database, and read it again')
    .action((file: string, options) => finish(import('./store-commands.ts').then(({ restoreCommand }) => restoreCommand(file, options))));

  data(program.command('due').argument('<job>', 'id of the job'))
    .description('which signed joints fall due for retightening or a look, from the log')
    .option('--months <count>', 'months between, by the maintenance manual', '12')
    .option('--share <percent>', 'share of the bolts to try; all of a joint where one was loose', '10')
    .option('--today <date>', 'day to judge by, year-month-day')
    .option('--json', 'print it as JSON')
    .addHelpText('after', '\nExit code: 0 nothing is overdue; 1 something is; 2 no such book.')
    .action((job: string, options) => finish(import('./due-command.ts').then(({ dueCommand }) => dueCommand(job, options))));

  data(program.command('audit'))
    .description('read every entry of every book again: bytes, chains, tree')
    .action((options) => finish(import('./store-commands.ts').then(({ auditCommand }) => auditCommand(options))));
}
