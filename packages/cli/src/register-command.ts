import { type Battery, levelOf } from '@clampwright/core';
import { type Equipment, readEquipment } from '@clampwright/papers';
import { type Fold, hashOf, openFold, utf8 } from '@clampwright/record';
import { atDesk, entriesOf, findYard, yardOf } from '@clampwright/server';
import type { Store } from '@clampwright/store';
import { atBooks, type DeskOptions, onlyShown } from './desk-book.ts';
import { EXIT, refuse } from './exit.ts';
import { isFolder, jobFolder } from './job-folder.ts';
import { faultsText } from './plan-text.ts';
import { textTable } from './text-table.ts';

/** What the yard's book does not say yet. */
interface Fresh {
  readonly tools: readonly Equipment[];
  readonly photos: readonly Equipment[];
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

/** As long as an entry takes. */
const labelOf = (text: string): string => text.slice(0, 120);
const nameOf = ({ volts, ampereHours }: Battery): string => `${volts} V, ${ampereHours} A·h`;

function freshOf({ equipment, batteries }: ReturnType<typeof readEquipment>, fold: Fold): Fresh {
  const known = new Set(fold.ids('tool'));
  const kept = new Set<string>(fold.state('book', 'book').imports.map(({ file }) => file));
  return {
    tools: equipment.filter(({ tool: { serial, name, chart }, chart: bytes }) => {
      if (!known.has(serial)) return true;
      const there = fold.state('tool', serial);
      const { number, due } = chart.certificate;
      // one that was withdrawn comes back by another certificate only
      return (
        (!there.withdrawn && there.name !== labelOf(name)) ||
        there.certificate !== number ||
        there.due !== due ||
        there.chart !== hashOf(bytes) ||
        there.sheet === undefined
      );
    }),
    photos: equipment.filter(({ photo }) => photo && !kept.has(hashOf(photo.bytes))),
    batteries: batteries.filter((one) => fold.state('battery', one.serial).name !== nameOf(one)),
  };
}

const enter = async (store: Store, { tools, photos, batteries }: Fresh) => {
  const { id } = await yardOf(store);
  return atDesk(
    store,
    id,
    () => new Date(),
    async (desk) => {
      for (const { tool, chart } of tools) {
        const { serial, name, kind } = tool;
        const { number, due } = tool.chart.certificate;
        const bytes = await desk.attach(id, chart);
        await desk.append(id, 'tool-registered', { tool: serial, name: labelOf(name), kind, chart: bytes, certificate: number, due });
        // as read: what a phone without network takes the tool's settings from
        const sheet = await desk.attach(id, utf8(JSON.stringify(tool)));
        await desk.append(id, 'chart-loaded', { tool: serial, certificate: number, sheet });
      }
      for (const { tool, photo } of photos) {
        const file = await desk.attach(id, photo!.bytes);
        const text = `certificate ${tool.chart.certificate.number} of tool ${tool.serial}`;
        await desk.append(id, 'imported', { file, name: photo!.file.slice(-120), text });
      }
      for (const one of batteries)
        await desk.append(id, 'battery-registered', {
          battery: one.serial,
          name: nameOf(one),
          chargeMilliampereHour: Math.round(1000 * one.ampereHours),
        });
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
      ...batteries.map((one) => [one.serial, `battery ${nameOf(one)}`, '', '', '']),
    ],
  );
}
