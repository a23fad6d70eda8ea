import { type CivilDate, civilDate, duties, YEARLY_SAMPLE } from '@clampwright/core';
import { finishedJoints } from '@clampwright/record';
import { openStates } from '@clampwright/server';
import { EXIT, refuse } from './exit.ts';
import { reading } from './store-commands.ts';
import { textTable } from './text-table.ts';
import { type DataOption, whereOf } from './where-data-lies.ts';

export interface DueOptions extends DataOption {
  readonly months: string;
  readonly share: string;
  readonly today?: string;
  readonly json?: boolean;
}

/** `clampwright due JOB`: which signed joints fall due for retightening, by the rule given, from the log. */
export function dueCommand(job: string, options: DueOptions): Promise<number> {
  const [months, share] = [Number(options.months), Number(options.share) / 100];
  const today = civilDate(options.today ?? new Date().toISOString().slice(0, 10));
  if (!(Number.isInteger(months) && months >= 1) || !(share > 0 && share <= 1) || !today) {
    process.stderr.write('Give whole months from 1 on, a share from 1 to 100 (percent), and the day as year-month-day.\n');
    return Promise.resolve(EXIT.unusable);
  }
  return reading(whereOf(options), async (store) => {
    if (!(await store.books()).some((book) => book.job === job)) {
      return refuse(`There is no book ${job}.`);
    }
    const { fold } = await openStates(store)(job);
    const due = duties(finishedJoints(fold), { ...YEARLY_SAMPLE, everyMonths: months, share }, today as CivilDate);
    if (options.json) process.stdout.write(`${JSON.stringify(due, null, 2)}\n`);
    else {
      const rows = due.map((one) => [one.tag, one.due, one.overdue ? 'overdue' : '', String(one.bolts)]);
      process.stdout.write(
        due.length > 0 ? `${textTable(['joint', 'due', '', 'bolts'], rows)}\n` : 'No joint of this book is signed yet.\n',
      );
    }
    return due.some(({ overdue }) => overdue) ? EXIT.stops : EXIT.fine;
  });
}
