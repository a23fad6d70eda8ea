import { levelOf, type Notice, planValve, VALVE_CAUTIONS, type ValvePlan } from '@clampwright/core';
import { readJob, readValves } from '@clampwright/papers';
import { label, say } from '@clampwright/words';
import { EXIT, refuse } from './exit.ts';
import { isFolder, jobFolder } from './job-folder.ts';
import { faultsText } from './plan-text.ts';
import { textTable } from './text-table.ts';

/** `clampwright valves FOLDER`: whether a tool may turn the job's gate valves, and how. */
export function valvesCommand(folder: string, { json }: { readonly json?: boolean }): number {
  if (!isFolder(folder)) {
    return refuse(`There is no folder ${folder}.`);
  }
  const open = jobFolder(folder);
  const { job, notices: jobFaults } = readJob(open);
  if (!job) {
    return refuse(faultsText(jobFaults, 'metric'));
  }
  const { valves, notices } = readValves(open, 'valves.yaml', job.tools);
  if (notices.some(({ code }) => code === 'file-missing')) {
    return refuse(faultsText(notices, job.units));
  }
  const faults: Notice[] = [...notices];
  const plans = valves.flatMap((valve) => {
    const plan = planValve(valve);
    if (plan.ok) return [{ tag: valve.tag, way: valve.way, ...plan.value }];
    faults.push(...plan.notices);
    return [];
  });
  if (json) process.stdout.write(`${JSON.stringify({ valves: plans, faults }, null, 2)}\n`);
  else {
    if (faults.length > 0) process.stdout.write(`${faultsText(faults, job.units)}\n\n`);
    process.stdout.write(`${valvesText(plans, job.units)}\n`);
  }
  return faults.length > 0 || plans.some(({ verdict }) => verdict === 'stop') ? EXIT.stops : EXIT.fine;
}

type Named = ValvePlan & { readonly tag: string; readonly way: string };

function valvesText(plans: readonly Named[], units: 'metric' | 'US'): string {
  const rows = plans.map(({ tag, way, verdict, torque, turns, stopAt, setting, work }) => [
    tag,
    way,
    label(`valve.${verdict}`),
    say({ dimension: 'torque', value: torque }, units),
    turns.toFixed(1),
    verdict === 'with the tool' ? `after ${stopAt.toFixed(1)}` : '',
    setting?.text ?? '',
    `${(work / 1000).toFixed(1)} kJ`,
  ]);
  const said = plans.flatMap(({ tag, notices }) => {
    const sorted = [...notices].sort((a, b) => levelOf(a.code).localeCompare(levelOf(b.code)));
    return sorted.length > 0 ? [`  ${tag}\n${faultsText(sorted, units)}`] : [];
  });
  return [
    textTable(['valve', 'way', 'verdict', 'stem torque', 'turns', 'stop', 'setting', 'work'], rows),
    ...(said.length > 0 ? [`Read first\n${said.join('\n')}`] : []),
    VALVE_CAUTIONS.map((code) => `  ${label(`valve.caution.${code}`)}`).join('\n'),
  ].join('\n\n');
}
