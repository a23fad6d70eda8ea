import { basename, dirname } from 'node:path';
import { drawForPlan, inspectPlan } from '@clampwright/core';
import { readInspection } from '@clampwright/papers';
import { inspectionText } from '@clampwright/words';
import { EXIT, refuse } from './exit.ts';
import { isFile, isFolder, jobFolder } from './job-folder.ts';
import { planFolder } from './plan-command.ts';
import { faultsText } from './plan-text.ts';
import { textTable } from './text-table.ts';

export interface DrawOptions {
  readonly seed: string;
  readonly size?: string;
  readonly json?: boolean;
}

/** `clampwright draw FOLDER`: bolts to inspect. */
export function drawCommand(folder: string, { seed, size, json }: DrawOptions): number {
  if (!isFolder(folder)) return refuse(`There is no folder ${folder}.`);
  const { plan, faults } = planFolder(folder);
  if (!plan) return refuse(faultsText(faults, 'metric'));
  const drawn = drawForPlan(plan, Number(seed), size === undefined ? undefined : Number(size));
  if (!drawn.ok) return refuse(faultsText(drawn.notices, 'metric'));
  if (json) process.stdout.write(`${JSON.stringify(drawn.value, null, 2)}\n`);
  else {
    const rows = drawn.value.joints.map(({ tag, bolts }) => [tag, String(bolts.length), bolts.join(' ')]);
    process.stdout.write(`Drawn with seed ${seed}: ${drawn.value.size} bolts\n\n${textTable(['joint', 'count', 'bolts'], rows)}\n`);
  }
  return EXIT.fine;
}

/** `clampwright inspect FOLDER FILE`: what the inspector found, held against the draw. */
export function inspectCommand(folder: string, file: string, { json }: { readonly json?: boolean }): number {
  if (!isFolder(folder)) return refuse(`There is no folder ${folder}.`);
  if (!isFile(file)) return refuse(`There is no file ${file}.`);
  const { plan, faults } = planFolder(folder);
  if (!plan) return refuse(faultsText(faults, 'metric'));
  const { inspection, notices } = readInspection(jobFolder(dirname(file)), basename(file));
  if (!inspection) return refuse(faultsText(notices, 'metric'));
  const records = inspectPlan(plan, inspection);
  if (!records.ok) return refuse(faultsText(records.notices, 'metric'));
  process.stdout.write(json ? `${JSON.stringify(records.value, null, 2)}\n` : `${records.value.map(inspectionText).join('\n\n')}\n`);
  return records.value.every(({ verdict }) => verdict === 'accepted') ? EXIT.fine : EXIT.stops;
}
