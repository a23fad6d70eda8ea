import { type FastenerState, inNewtonMetre, type LooseningOfJoint, levelOf, looseningOf } from '@clampwright/core';
import { label, say, type UnitSystem } from '@clampwright/words';
import { EXIT, refuse } from './exit.ts';
import { isFolder } from './job-folder.ts';
import { planFolder } from './plan-command.ts';
import { faultsText } from './plan-text.ts';
import { textTable } from './text-table.ts';

export interface LoosenOptions {
  readonly state: FastenerState;
  readonly joint?: readonly string[];
  readonly releasedBy?: string;
  readonly json?: boolean;
}

/** `clampwright loosen FOLDER`: how the joints are taken apart again. */
export function loosenCommand(folder: string, { state, joint, releasedBy, json }: LoosenOptions): number {
  if (!isFolder(folder)) {
    return refuse(`There is no folder ${folder}.`);
  }
  const { job, plan, faults } = planFolder(folder);
  const unknown = joint?.filter((tag) => !plan?.joints.some((one) => one.tag === tag)) ?? [];
  if (!job || !plan || unknown.length > 0) {
    process.stderr.write(unknown.length > 0 ? `No joint ${unknown.join(', ')} in this job.\n` : `${faultsText(faults, 'metric')}\n`);
    return EXIT.unusable;
  }
  const found = looseningOf(job, plan, { state, ...(releasedBy ? { releasedBy } : {}), ...(joint ? { tags: joint } : {}) });
  process.stdout.write(json ? `${JSON.stringify(found, null, 2)}\n` : `${loosenText(found, state, plan.job.units)}\n`);
  return found.some(({ notices }) => notices.some(({ code }) => levelOf(code) !== 'attention')) ? EXIT.stops : EXIT.fine;
}

function loosenText(found: readonly LooseningOfJoint[], state: FastenerState, units: UnitSystem): string {
  const interval = ({ plan }: LooseningOfJoint) =>
    plan ? `${inNewtonMetre(plan.breakaway.low).toFixed(0)} to ${say({ dimension: 'torque', value: plan.breakaway.high }, units)}` : '';
  const rows = found.map((one) => [
    one.tag,
    String(one.bolts),
    one.size,
    interval(one),
    one.plan?.setting?.text ?? '',
    one.tool ?? '',
    label(`reuse.${one.reuse.reuse}`),
  ]);
  const steps = found.flatMap(({ tag, plan }) =>
    plan
      ? [
          `  ${tag}\n${plan.stages.map(({ name, bolts }, at) => `    ${at + 1} ${label(`release.${name}`)}: ${bolts.join(' ')}`).join('\n')}`,
        ]
      : [],
  );
  const said = found.flatMap(({ tag, notices }) => (notices.length > 0 ? [`  ${tag}\n${faultsText(notices, units)}`] : []));
  return [
    `Fasteners taken as ${state}: an assumption, not a finding. Breakaway is an interval over the torque they were tightened with.`,
    textTable(['joint', 'bolts', 'size', 'breakaway', 'setting', 'tool', 'use again'], rows),
    `Order of release\n${steps.join('\n')}`,
    ...(said.length > 0 ? [`Read first\n${said.join('\n')}`] : []),
    '  Prove isolation before the first nut. Keep every nut on by several turns until the joint is seen to be free. No sledge, no longer arm.',
  ].join('\n\n');
}
