import { drawSample } from '@clampwright/core';
import { isFolder } from './job-folder.ts';
import { EXIT, planFolder } from './plan-command.ts';
import { faultsText } from './plan-text.ts';
import { textTable } from './text-table.ts';

export interface DrawOptions {
  readonly seed: string;
  readonly size?: string;
  readonly json?: boolean;
}

/** `clampwright draw FOLDER`: bolts to inspect. Without a size: what the joints' rule sets ask for, joints without a sample left out. */
export function drawCommand(folder: string, { seed, size, json }: DrawOptions): number {
  if (!isFolder(folder)) return refuse(`There is no folder ${folder}.`);
  const { plan, faults } = planFolder(folder);
  if (!plan) return refuse(faultsText(faults, 'metric'));
  const sampled = plan.joints.filter(
    ({ inspection, verdict }) => verdict !== 'stop' && (size !== undefined || (inspection?.sample ?? 0) > 0),
  );
  const asked = size === undefined ? sampled.reduce((sum, { inspection }) => sum + (inspection?.sample ?? 0), 0) : Number(size);
  if (sampled.length === 0) return refuse('No joint asks for a sample. Enter execution-class in job.yaml, or give --size.');
  const drawn = drawSample(
    sampled.map(({ tag, boltCount }) => ({ tag, bolts: boltCount })),
    asked,
    Number(seed),
  );
  if (!drawn.ok) return refuse(faultsText(drawn.notices, 'metric'));
  if (json) process.stdout.write(`${JSON.stringify(drawn.value, null, 2)}\n`);
  else {
    const rows = drawn.value.joints.map(({ tag, bolts }) => [tag, String(bolts.length), bolts.join(' ')]);
    process.stdout.write(`Drawn with seed ${seed}: ${asked} bolts\n\n${textTable(['joint', 'count', 'bolts'], rows)}\n`);
  }
  return EXIT.fine;
}

function refuse(text: string): number {
  process.stderr.write(`${text}\n`);
  return EXIT.unusable;
}
