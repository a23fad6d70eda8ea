import { type Notice, planValve, type Tool } from '@clampwright/core';
import type { IssuedValve } from '@clampwright/record';
import type { OpenFile } from './open-file.ts';
import { readValves } from './read-valves.ts';

/** The gate valves of a job folder, each with what a tool may do to it; a faulty one is left out and said. None where there is no valves.yaml. */
export function issuedValves(
  open: OpenFile,
  tools: readonly Tool[],
): { readonly valves: readonly IssuedValve[]; readonly notices: readonly Notice[] } {
  const { valves, notices } = readValves(open, 'valves.yaml', tools);
  const said = notices.filter(({ code }) => code !== 'file-missing');
  const planned = valves.flatMap((task): IssuedValve[] => {
    const plan = planValve(task);
    if (plan.ok) return [{ tag: task.tag, way: task.way, ...(task.opens ? { opens: task.opens } : {}), plan: plan.value }];
    said.push(...plan.notices);
    return [];
  });
  return { valves: planned, notices: said };
}
