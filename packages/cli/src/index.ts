/** The command line: thin; every verb calls one function below. */
import { ENGINE } from '@clampwright/core';
import { Command } from 'commander';
import { addAroundVerbs } from './around-verbs.ts';
import { checkCommand } from './check-command.ts';
import { addInVerbs } from './in-verbs.ts';
import { initCommand } from './init-command.ts';
import { addLogVerbs } from './log-verbs.ts';
import { speaking } from './paper-languages.ts';
import { addPaperVerbs } from './paper-verbs.ts';
import { planCommand, SwapRefused } from './plan-command.ts';
import { showCommand } from './show-command.ts';
import { simulateCommand } from './simulate-command.ts';

const program = new Command('clampwright')
  .description('Plans controlled bolt tightening: for every joint the verdict, preload, setting, sequence and card.')
  .version(ENGINE)
  .showHelpAfterError('(clampwright --help shows the verbs)')
  .configureHelp({ showGlobalOptions: true })
  .exitOverride((error) => process.exit(error.exitCode === 0 ? 0 : 2));

const finish = async (code: number | Promise<number>) => {
  process.exitCode = await code;
};

speaking(program.command('plan'))
  .argument('<folder>', 'job folder with job.yaml, joints.csv, tools.yaml')
  .description('plan a job folder; writes plan.json and cards.html')
  .option('--out <folder>', 'where to write (FOLDER/plan)')
  .option('--swap <tag=serial...>', 'plan a joint with another tool of the job (TB-R2=SK-H031; several: A+B)')
  .option('--map <heading=meaning...>', 'what a heading of a list means ("Bolt Ø=size", "Weight=ignore"); remembered in mapping.yaml')
  .option('--faults <file.xlsx>', 'write a copy of the lists in which every fault is marked and explained')
  .option('--pdf', 'write plan.pdf, too: A4 for review, with formulas and sources in an annex; --language and --and are for it')
  .option('--json', 'print plan and faults as JSON')
  .addHelpText(
    'after',
    `
Examples:
  clampwright plan demo
  clampwright plan pier-4 --map "Bolt Ø=size" "Weight=ignore" --faults pier-4-faults.xlsx
  clampwright plan demo --swap TB-R2=SK-H031 --out elsewhere
  clampwright plan demo --json | jq '.plan.joints[] | {tag, verdict}'

Exit code: 0 every joint ready or attention; 1 a joint stops or a row was faulty; 2 nothing could be planned.`,
  )
  .action((folder: string, options) => finish(planCommand(folder, options)));

program
  .command('simulate')
  .argument('<folder>', 'job folder')
  .description('play the planned job many times, with the scatter and the mistakes crews meet; writes simulation.json')
  .option('--runs <count>', 'how often', '1000')
  .option('--seed <number>', 'the same seed gives the same figures, on any number of cores', '1')
  .option('--workers <count>', 'cores to use (all)')
  .option('--rate <name=share...>', 'another rate of a mistake: missed, stopped-early, second-pull (a pull), wrong-setting (a round)')
  .option('--out <folder>', 'where to write (FOLDER/plan)')
  .option('--json', 'print the result as JSON')
  .addHelpText(
    'after',
    `
Examples:
  clampwright simulate demo
  clampwright simulate demo --runs 20000 --seed 7 --rate missed=0.002 second-pull=0

Exit code: 0 every run was played; 1 stopped before that (the finished runs are kept); 2 nothing could be played.`,
  )
  .action((folder: string, options) => finish(simulateCommand(folder, options)));

program
  .command('check')
  .argument('<files...>', 'reference rows (one JSON object a line), or joints with finite-element truth (JSON)')
  .description('hold the engine against published figures')
  .option('--json', 'print the counts and the differing rows as JSON')
  .addHelpText(
    'after',
    `
Examples:
  clampwright check packages/reference/rows/*.checks.jsonl
  clampwright check packages/reference/rows/interaction/*.json

Exit code: 0 nothing disagrees; 1 a row disagrees, a joint is off by more than 4 % or a line cannot be read; 2 no such file.`,
  )
  .action((files: string[], options) => finish(checkCommand(files, options)));

program
  .command('init')
  .argument('<folder>', 'folder to make')
  .description('write a commented example of a job folder')
  .option('--json', 'print what was written as JSON')
  .addHelpText('after', '\nExample:\n  clampwright init pier-4 && clampwright plan pier-4')
  .action((folder: string, options) => finish(initCommand(folder, options)));

program
  .command('show')
  .argument('<folder>', 'job folder')
  .description('plan a job folder and show it in the browser on this machine')
  .option('--port <port>', 'port to listen on; the next free one if taken', '4870')
  .addHelpText('after', '\nExample:\n  clampwright show demo')
  .action((folder: string, options) => finish(showCommand(folder, options)));

addAroundVerbs(program, finish);
addInVerbs(program, finish);
addLogVerbs(program, finish);
addPaperVerbs(program, finish);

try {
  await program.parseAsync();
} catch (error) {
  if (!(error instanceof SwapRefused)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
