import { FASTENER_STATES } from '@clampwright/core';
import { type Command, Option } from 'commander';
import { drawCommand, inspectCommand } from './draw-command.ts';
import { judgeCommand } from './judge-command.ts';
import { loosenCommand } from './loosen-command.ts';
import { valvesCommand } from './valves-command.ts';

/** The verbs around the turn: taking apart, valves, inspection, measured series. */
export function addAroundVerbs(program: Command, finish: (code: number | Promise<number>) => Promise<void>): void {
  program
    .command('loosen')
    .argument('<folder>', 'job folder')
    .description('how the joints of a job are taken apart: breakaway torque, setting, order, what may be used again')
    .addOption(
      new Option('--state <state>', 'how the fasteners look: an assumption you choose').choices([...FASTENER_STATES]).default('rusted'),
    )
    .option('--joint <tag...>', 'only these')
    .option('--released-by <name>', 'who gave the pressure joints free')
    .option('--json', 'print it as JSON')
    .addHelpText(
      'after',
      `
Examples:
  clampwright loosen demo --state galvanised
  clampwright loosen demo --joint PH-F1 --state hot-aged --released-by "M. Hollow"

Exit code: 0 all may be loosened; 1 something stops or holds; 2 nothing could be planned.`,
    )
    .action((folder: string, options) => finish(loosenCommand(folder, options)));

  program
    .command('valves')
    .argument('<folder>', 'job folder with valves.yaml')
    .description('gate valves: stem torque, turns, whether a tool may turn them at all')
    .option('--json', 'print it as JSON')
    .addHelpText(
      'after',
      '\nExample:\n  clampwright valves demo\n\nExit code: 0 none stops; 1 a valve stops or an entry was faulty; 2 nothing could be read.',
    )
    .action((folder: string, options) => finish(valvesCommand(folder, options)));

  program
    .command('draw')
    .argument('<folder>', 'job folder')
    .description('draw the bolts to inspect, in proportion to every joint; the seed goes into the record')
    .requiredOption('--seed <number>', 'anybody draws the same bolts from it')
    .option('--size <count>', 'how many bolts (what rule set and execution class ask for)')
    .option('--json', 'print the draw as JSON')
    .addHelpText('after', '\nExample:\n  clampwright draw demo --seed 20261125\n\nExit code: 0 drawn; 2 nothing could be drawn.')
    .action((folder: string, options) => finish(drawCommand(folder, options)));

  program
    .command('inspect')
    .argument('<folder>', 'job folder')
    .argument('<file>', 'YAML file with the seed of the draw and what was found at each bolt')
    .description('hold what was found against the draw: accepted, rejected, not finished')
    .option('--json', 'print the records as JSON')
    .addHelpText(
      'after',
      '\nExample:\n  clampwright inspect demo demo/inspection.yaml\n\nExit code: 0 accepted; 1 rejected or not finished; 2 not to be judged.',
    )
    .action((folder: string, file: string, options) => finish(inspectCommand(folder, file, options)));

  program
    .command('judge')
    .argument(
      '<file>',
      'YAML file with suitability tests, verifications, shots of tools, gaps of flanges; or CSV or XLSX of suitability tests or of a battery log',
    )
    .description('judge measured series: k-class of a lot, pre-installation verification, daily tool check, gaps')
    .option('--json', 'print the verdicts as JSON')
    .option('--map <heading=meaning...>', 'what a heading of a table means; remembered in mapping.yaml beside it')
    .option('--book <job>', 'enter tests of lots and checks of tools into this book; they are shown first')
    .option('--done <date>', 'with --book: day on which it was measured, year-month-day')
    .option('--write', 'with --book: enter it; without, it is only shown')
    .option('--data <folder>', 'where the books lie; DATABASE_URL comes first', 'clampwright-data')
    .addHelpText(
      'after',
      `
Examples:
  clampwright judge demo/tests.yaml
  clampwright judge lot-7.xlsx --map "Charge=lot"
  clampwright judge demo/tests.yaml --book j-… --done 2026-11-25 --write

Exit code: 0 all pass; 1 something fails or was faulty; 2 no such file, or nothing was entered.`,
    )
    .action((file: string, options) => finish(judgeCommand(file, options)));
}
