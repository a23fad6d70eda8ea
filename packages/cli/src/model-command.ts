import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { levelOf } from '@clampwright/core';
import { type ModelJoint, modelJointList, type ReadModel, readModel } from '@clampwright/papers';
import { EXIT, refuse } from './exit.ts';
import { isFile } from './job-folder.ts';
import { faultsText } from './plan-text.ts';
import { textTable } from './text-table.ts';
import { NotOurs, writeOutput } from './write-output.ts';

/** `clampwright read-model FILE`: what was understood of a building model, what not, and why; with `--out` the joint list of it. */
export async function modelCommand(file: string, { out, json }: { readonly out?: string; readonly json?: boolean }): Promise<number> {
  if (!isFile(file)) return refuse(`There is no file ${file}.`);
  const read = await readModel(new Uint8Array(readFileSync(file)), basename(file));
  if (!read.ok) return refuse(`Nothing could be read.\n${faultsText(read.notices, 'metric')}`);
  const { joints, notices } = read.value;
  const written: string[] = [];
  if (out !== undefined && joints.length > 0) {
    try {
      writeOutput(out, { 'joints.csv': modelJointList(joints) });
      written.push(join(out, 'joints.csv'));
    } catch (error) {
      if (!(error instanceof NotOurs)) throw error;
      return refuse(`${error.message}. Choose another folder.`);
    }
  }
  if (json) process.stdout.write(`${JSON.stringify(read.value, null, 1)}\n`);
  else process.stdout.write(`${preview(read.value)}${written.length > 0 ? `\nWritten: ${written.join(', ')}\n` : ''}`);
  return notices.some(({ code }) => levelOf(code) === 'fault') ? EXIT.stops : EXIT.fine;
}

const HELD: Readonly<Record<ModelJoint['held'], string>> = {
  nest: 'nested in one element',
  connection: 'connect the same elements',
  assembly: 'part of one assembly',
  distance: 'by distance alone',
};

function preview({ schema, unit, joints, notices }: ReadModel): string {
  const bolts = joints.reduce((sum, joint) => sum + joint.bolts.length, 0);
  const parts = [`${schema}, unit of length ${figure(unit)} mm: ${bolts} bolts in ${joints.length} joints`];
  if (joints.length > 0)
    parts.push(
      textTable(
        ['joint', 'bolts', 'layout', 'size', 'grade', 'system', 'length mm', 'grip mm', 'held together'],
        joints.map((joint) => [
          joint.tag,
          String(joint.bolts.length),
          layoutText(joint),
          each(joint, ({ size }) => size),
          each(joint, ({ grade }) => grade),
          each(joint, ({ system }) => system),
          each(joint, ({ length }) => (length === undefined ? undefined : figure(length))),
          joint.grip.known ? figure(joint.grip.value) : '?',
          HELD[joint.held],
        ]),
      ),
      `Found in\n${sources(joints)}`,
    );
  if (notices.length > 0) parts.push(`To look at\n${faultsText(notices, 'metric')}`);
  return `${parts.join('\n\n')}\n`;
}

const figure = (value: number) => String(Math.round(value * 100) / 100);

function layoutText({ layout }: ModelJoint): string {
  if (layout.kind === 'spots') return `${layout.spots.length} places`;
  if (layout.kind === 'ring') return `ring, circle ${figure(layout.circle)}`;
  const spacing = [layout.along, layout.across].filter((one) => one !== undefined).map(figure);
  return `${layout.rows}x${layout.columns}${spacing.length > 0 ? ` at ${spacing.join(' × ')}` : ''}`;
}

/** What the bolts of a joint have in common; what differs, with all values; `?` for what was not understood. */
const each = ({ bolts }: ModelJoint, of: (bolt: ModelJoint['bolts'][number]) => string | undefined): string =>
  [...new Set(bolts.map((bolt) => of(bolt) ?? '?'))].join(', ');

/** Where figures came from, with how many bolts say so. */
function sources(joints: readonly ModelJoint[]): string {
  const counts = new Map<string, number>();
  for (const { bolts } of joints)
    for (const { from } of bolts)
      for (const [what, where] of Object.entries(from)) counts.set(`${what}: ${where}`, (counts.get(`${what}: ${where}`) ?? 0) + 1);
  return [...counts].map(([what, count]) => `  ${what} (${count} bolts)`).join('\n');
}
