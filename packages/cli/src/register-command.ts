import { type Battery, levelOf } from '@clampwright/core';
import { readEquipment } from '@clampwright/papers';
import {
  batteryEntry,
  chartEntry,
  type Fold,
  isBatteryNews,
  isPhotoNews,
  isToolNews,
  openFold,
  photoEntry,
  type ReadTool,
  toolEntry,
  type YardEntry,
} from '@clampwright/record';
import { atDesk, entriesOf, findYard, yardOf } from '@clampwright/server';
import type { Store } from '@clampwright/store';
import { atBooks, type DeskOptions, onlyShown } from './desk-book.ts';
import { EXIT, refuse } from './exit.ts';
import { isFolder, jobFolder } from './job-folder.ts';
import { faultsText } from './plan-text.ts';
import { textTable } from './text-table.ts';

/** What the yard's book does not say yet. */
interface Fresh {
  readonly tools: readonly ReadTool[];
  readonly photos: readonly ReadTool[];
  readonly batteries: readonly Battery[];
}

/** `clampwright register FOLDER`: tools with chart and certificate, and batteries, into the book of the yard; only what is new or has changed. */
export async function registerCommand(folder: string, options: DeskOptions): Promise<number> {
  if (!isFolder(folder)) return refuse(`There is no folder ${folder}.`);
  const read = readEquipment(jobFolder(folder));
  if (read.notices.length > 0) process.stdout.write(`${faultsText(read.notices, 'metric')}\n\n`);
  if (read.notices.some(({ code }) => levelOf(code) === 'fault'))
    return refuse('Nothing was registered: a log cannot be mended afterwards. Correct the files, then register them whole.');
  return atBooks(options, async (store) => {
    const fresh = freshOf(read, await yardState(store));
    const count = fresh.tools.length + fresh.photos.length + fresh.batteries.length;
    if (count === 0) {
      process.stdout.write('The book of the yard says all this already.\n');
      return EXIT.fine;
    }
    process.stdout.write(`${preview(fresh)}\n\n`);
    if (!options.write) return onlyShown('right');
    const entered = await enter(store, fresh);
    if (!entered.ok) return refuse(`Nothing was registered.\n${faultsText(entered.notices, 'metric')}`);
    process.stdout.write(`Registered: ${entered.value} entries in the book of the yard.\n`);
    return EXIT.fine;
  });
}

async function yardState(store: Store): Promise<Fold> {
  const fold = openFold();
  const yard = await findYard(store);
  if (yard) for (const one of await entriesOf(store, yard.id)) fold.add(one);
  return fold;
}

const freshOf = ({ equipment, batteries }: ReturnType<typeof readEquipment>, fold: Fold): Fresh => ({
  tools: equipment.filter((one) => isToolNews(fold, one)),
  photos: equipment.filter((one) => isPhotoNews(fold, one)),
  batteries: batteries.filter((one) => isBatteryNews(fold, one)),
});

const entriesFor = ({ tools, photos, batteries }: Fresh): YardEntry[] => [
  ...tools.flatMap((one) => [toolEntry(one), chartEntry(one.tool)]),
  ...photos.map(({ tool, photo }) => photoEntry(tool, photo!)),
  ...batteries.map(batteryEntry),
];

const enter = async (store: Store, fresh: Fresh) => {
  const { id } = await yardOf(store);
  return atDesk(
    store,
    id,
    () => new Date(),
    async (desk) => {
      for (const { kind, body, attachments } of entriesFor(fresh)) {
        for (const bytes of attachments) await desk.attach(id, bytes);
        await desk.append(id, kind, body);
      }
    },
  );
};

function preview({ tools, photos, batteries }: Fresh): string {
  return textTable(
    ['serial', 'name', 'certificate', 'due', 'file'],
    [
      ...tools.map(({ tool: { serial, name, chart, place } }) => [
        serial,
        name,
        chart.certificate.number,
        chart.certificate.due,
        place?.file ?? '',
      ]),
      ...photos.map(({ tool: { serial, chart }, photo }) => [
        serial,
        'picture of the certificate',
        chart.certificate.number,
        '',
        photo!.file,
      ]),
      ...batteries.map((one) => [one.serial, `battery ${one.volts} V, ${one.ampereHours} A·h`, '', '', '']),
    ],
  );
}
