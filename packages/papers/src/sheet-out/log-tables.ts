import { ENGLISH_WORDS, label } from '@clampwright/words';
import { entryText } from '../report/entry-text.ts';
import { jointWork } from '../report/joint-work.ts';
import { readNames } from '../report/names.ts';
import { saysOf, settledText } from '../report/nonconformance-text.ts';
import type { ReportSource } from '../report/source.ts';
import { type SheetTable, sheetTable } from './sheet-table.ts';

const ROWS = 1000;

/** The log as tables: every time a bolt was tightened, what was inspected and found, daily tool checks, every entry. */
export async function logTables(source: ReportSource): Promise<SheetTable[]> {
  const { fold } = source;
  const names = await readNames(source, ENGLISH_WORDS);
  const works = fold.ids('joint').map((id) => jointWork(fold, id));
  const degrees = (milli: number | undefined) => (milli === undefined ? undefined : milli / 1000);
  return [
    sheetTable(
      label('sheet.work'),
      [
        { head: label('col.joint'), kind: 'text', value: ({ tag }) => tag },
        { head: label('report.col.bolt'), kind: 'number', digits: 0, value: ({ bolt }) => bolt },
        { head: label('report.col.step'), kind: 'text', value: ({ step }) => step },
        { head: label('col.tool'), kind: 'text', value: ({ told }) => told.tool },
        { head: label('col.setting'), kind: 'text', value: ({ told }) => told.setting },
        { head: label('report.col.end'), kind: 'text', value: ({ told }) => told.end },
        { head: `${label('report.col.angle')} [°]`, kind: 'number', digits: 0, value: ({ told }) => degrees(told.angleMilliDegree) },
        { head: label('report.col.by'), kind: 'text', value: ({ told }) => names.person(told.by) },
        { head: label('report.col.when'), kind: 'instant', value: ({ told }) => told.at },
        { head: label('report.how.batch'), kind: 'text', value: ({ told }) => (told.batch ? label('sheet.yes') : undefined) },
        { head: label('sheet.paper'), kind: 'text', value: ({ told }) => told.paper },
      ],
      works.flatMap(({ tag, rows }) => rows.map((row) => ({ tag, ...row }))),
    ),
    sheetTable(
      label('report.inspection'),
      [
        { head: label('col.joint'), kind: 'text', value: ({ tag }) => tag },
        { head: label('report.col.bolt'), kind: 'number', digits: 0, value: ({ position }) => position },
        {
          head: label('report.col.result'),
          kind: 'text',
          value: ({ passed }) => label('report.result', { passed: passed ? 'yes' : 'no' }),
        },
        { head: `${label('report.col.angle')} [°]`, kind: 'number', digits: 1, value: ({ angleMilliDegree }) => degrees(angleMilliDegree) },
        { head: label('report.col.by'), kind: 'text', value: ({ mention }) => names.person(mention.by) },
        { head: label('report.col.when'), kind: 'instant', value: ({ mention }) => mention.at },
      ],
      works.flatMap(({ tag, state }) =>
        [...state.bolts.values()].flatMap(({ position, inspections }) => inspections.map((one) => ({ tag, position, ...one }))),
      ),
    ),
    sheetTable(
      label('sheet.nonconformances'),
      [
        { head: label('col.joint'), kind: 'text', value: ({ joint }) => (joint === undefined ? undefined : names.joint(joint)) },
        { head: label('report.col.what'), kind: 'text', value: (one) => saysOf(one, ENGLISH_WORDS) },
        { head: label('report.col.state'), kind: 'text', value: ({ state }) => label(`report.state.${state}`) },
        { head: label('report.col.settled'), kind: 'text', value: (one) => settledText(one, names, ENGLISH_WORDS) },
      ],
      fold.nonconformances(),
    ),
    sheetTable(
      label('report.checks'),
      [
        { head: label('col.tool'), kind: 'text', value: ({ serial }) => serial },
        {
          head: label('report.col.result'),
          kind: 'text',
          value: ({ passed }) => label('report.result', { passed: passed ? 'yes' : 'no' }),
        },
        {
          head: `${label('report.col.reading')} [N·m]`,
          kind: 'number',
          digits: 0,
          value: ({ readingNewtonMillimetre: reading }) => (reading === undefined ? undefined : reading / 1000),
        },
        { head: label('report.col.by'), kind: 'text', value: ({ mention }) => names.person(mention.by) },
        { head: label('report.col.when'), kind: 'instant', value: ({ mention }) => mention.at },
      ],
      fold.ids('tool').flatMap((id) => fold.state('tool', id).checks.map((one) => ({ serial: id, ...one }))),
    ),
    sheetTable(
      label('sheet.entries'),
      [
        { head: label('report.col.index'), kind: 'number', digits: 0, value: ({ receipt }) => receipt.index },
        { head: label('report.col.arrived'), kind: 'instant', value: ({ receipt }) => receipt.arrived },
        { head: label('report.col.device'), kind: 'text', value: ({ kept }) => names.device(kept.entry.device) },
        {
          head: label('report.col.by'),
          kind: 'text',
          value: ({ kept }) => (kept.entry.by === undefined ? undefined : names.person(kept.entry.by)),
        },
        { head: label('report.col.entry'), kind: 'text', value: ({ kept }) => entryText(kept.entry, names, ENGLISH_WORDS) },
        {
          head: label('sheet.corrected'),
          kind: 'text',
          value: ({ kept }) => (fold.corrections(kept.hash).length > 0 ? label('sheet.yes') : undefined),
        },
        { head: label('report.col.hash'), kind: 'text', value: ({ kept }) => kept.hash },
      ],
      await entriesOf(source),
    ),
  ];
}

async function entriesOf({ size, rows, fold }: ReportSource) {
  const all = [];
  for (let from = 0; from < size; from += ROWS)
    for (const { receipt } of await rows(from, Math.min(ROWS, size - from))) {
      const kept = fold.find(receipt.entry);
      if (kept) all.push({ receipt, kept });
    }
  return all;
}
