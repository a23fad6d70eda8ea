import { readFileSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { levelOf, notice } from '@clampwright/core';
import { type KnownJoint, type RecordOptions, readRecords, type TighteningRecord } from '@clampwright/papers';
import { hashOf, type Kept } from '@clampwright/record';
import { atDesk, entriesOf } from '@clampwright/server';
import { atBooks, type DeskOptions, onlyShown } from './desk-book.ts';
import { EXIT, refuse } from './exit.ts';
import { isFile, jobFolder } from './job-folder.ts';
import { meansOf } from './means-of.ts';
import { faultsText } from './plan-text.ts';
import { rememberHeadings } from './remember-headings.ts';
import { textTable } from './text-table.ts';

interface EnterOptions extends DeskOptions, Pick<RecordOptions, 'step' | 'end' | 'done' | 'card'> {
  readonly map?: readonly string[];
}

/** What the cards of a book say of its joints, by tag; the last card of a tag counts. */
function issuedJoints(entries: readonly Kept[]): ReadonlyMap<string, KnownJoint & { readonly id: string; readonly card: string }> {
  const joints = new Map<string, KnownJoint & { readonly id: string; readonly card: string }>();
  for (const { entry } of entries) {
    if (entry.kind !== 'card-issued') continue;
    const { slice } = entry.body as {
      readonly slice: { tag: string; joint: string; card: string; bolts: number; steps: readonly { step: string }[] };
    };
    joints.set(slice.tag, { id: slice.joint, card: slice.card, bolts: slice.bolts, steps: slice.steps.map(({ step }) => step) });
  }
  return joints;
}

/** `clampwright enter JOB FILE`: a filled card, or what a tool kept, becomes entries of the log, marked as entered later, with the file beside them. */
export async function enterCommand(job: string, file: string, options: EnterOptions): Promise<number> {
  if (!isFile(file)) return refuse(`There is no file ${file}.`);
  const means = meansOf(options.map ?? []);
  if (!means) return refuse('--map: write HEADING=MEANING');
  return atBooks(options, async (store) => {
    const entries = await entriesOf(store, job);
    if (entries.length === 0) return refuse(`There is no book ${job}.`);
    const joints = issuedJoints(entries);
    const bytes = new Uint8Array(readFileSync(file));
    const name = basename(file);
    const read = readRecords(jobFolder(dirname(file)), name, joints, { ...options, means });
    const known = entries.some(({ entry }) => entry.kind === 'imported' && entry.body.file === hashOf(bytes));
    const notices = [...read.notices, ...(known ? [notice('records-known', { name }, { file: name })] : [])];
    if (notices.length > 0) process.stdout.write(`${faultsText(notices, 'metric')}\n\n`);
    if (notices.some(({ code }) => levelOf(code) === 'fault') || read.records.length === 0)
      return refuse('Nothing was entered: a log cannot be mended afterwards. Correct the file, then enter it whole.');
    process.stdout.write(`${preview(read.records)}\n\n`);
    const unkept = rememberHeadings(file, read.mapping);
    if (unkept !== undefined) return refuse(unkept);
    if (!options.write) return onlyShown('what the paper says');
    const entered = await atDesk(
      store,
      job,
      () => new Date(),
      async (desk) => {
        const kept = await desk.attach(job, bytes);
        await desk.append(job, 'imported', { file: kept, name: name.slice(0, 120), text: summary(read.records) });
        for (const one of read.records) {
          const joint = joints.get(one.tag)!;
          const told = {
            joint: joint.id,
            step: one.step,
            end: one.end,
            ...(one.tool === undefined ? {} : { tool: one.tool }),
            ...(one.setting === undefined ? {} : { setting: one.setting }),
          };
          const paper = { paper: { done: one.done as string, card: (one.card ?? `file ${name}`).slice(0, 120) } };
          if (one.bolts.length > 1) await desk.append(job, 'batch-tightened', { ...told, bolts: [...one.bolts] }, paper);
          else
            await desk.append(
              job,
              'bolt-tightened',
              {
                ...told,
                bolt: one.bolts[0]!,
                ...(one.angle === undefined ? {} : { angleMilliDegree: Math.round((one.angle * 180_000) / Math.PI) }),
              },
              paper,
            );
        }
      },
    );
    if (!entered.ok) return refuse(`Nothing was entered.\n${faultsText(entered.notices, 'metric')}`);
    process.stdout.write(`Entered: ${entered.value} entries, and ${name} beside them (${hashOf(bytes).slice(0, 12)}…).\n`);
    return EXIT.fine;
  });
}

function preview(records: readonly TighteningRecord[]): string {
  const by = new Map<string, { rows: number; bolts: Set<number>; days: Set<string> }>();
  for (const { tag, step, bolts, done } of records) {
    const key = `${tag}\n${step}`;
    const known = by.get(key) ?? { rows: 0, bolts: new Set<number>(), days: new Set<string>() };
    known.rows += 1;
    for (const bolt of bolts) known.bolts.add(bolt);
    known.days.add(done);
    by.set(key, known);
  }
  return textTable(
    ['joint', 'step', 'rows', 'bolts', 'done'],
    [...by].map(([key, { rows, bolts, days }]) => [...key.split('\n'), String(rows), String(bolts.size), [...days].sort().join(', ')]),
  );
}

/** What the entry of the file says; torques, for which an entry has no place of its own, stand here and in the file. */
function summary(records: readonly TighteningRecord[]): string {
  const torques = records.flatMap(({ torque }) => (torque === undefined ? [] : [torque / 1000]));
  const [low, high] = [Math.min(...torques), Math.max(...torques)].map((torque) => torque.toFixed(0));
  return `${records.length} rows of tightening${torques.length === 0 ? '' : `; torques read ${low} to ${high} N·m`}`;
}
